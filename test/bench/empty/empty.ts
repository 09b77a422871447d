import { HyperFormula } from 'hyperformula'
import Papa from 'papaparse'
import { createSignal } from 'solid-js'
import { insert } from 'solid-js/web'
import { z } from 'zod'

/** A page with nothing in it but the libraries that the notebook is made of, each used once: one number, worked out and shown. */
const { data } = Papa.parse<string[]>('7.4')
const [value] = createSignal(z.coerce.number().parse(data[0]?.[0]))
const engine = HyperFormula.buildFromArray([[value(), '=A1+1']], { licenseKey: 'gpl-v3' })
const root = document.getElementById('root')
if (root) insert(root, () => String(engine.getCellValue({ sheet: 0, row: 0, col: 1 })))
Object.assign(globalThis, { numbersShown: performance.timeOrigin + performance.now() })
