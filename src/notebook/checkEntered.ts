import { convert } from '../units/convert'
import { parseEntry } from '../units/parseEntry'
import { unit as unitOf } from '../units/unit'
import { isProblem, type Problem, problem } from '../words/problem'
import type { OutlineQuantity } from '../worksheet/catalog'
import type { Cell, Reading } from './notebook'

/** Figures that tell nothing: what conversions there and back leave of rounding. */
const RELATIVE = 1e-6
/** And beside nothing at all: 32 °F is 0 °C but for the last digits of the machine. */
const NOISE = 1e-9
/** Of as many figures an entry may be the rounding of the value beside it; with fewer it would be another value. */
const FIGURES = 4

/**
 * Whether a cell from outside says the same twice: what was entered is shown, `canonical` is reckoned with, and where they
 * differ a reader sees one water and the plan is for another. Null where they agree.
 */
export function checkEntered({ name, row }: OutlineQuantity, cell: Cell | Reading): Problem | null {
  if (cell.kind !== 'value' && cell.kind !== 'limit') return null
  const { entered, unit, canonical } = cell
  const symbol = unitOf(unit)?.symbol ?? unit
  const facts = { found: entered, unit: symbol === '' ? '' : ` ${symbol}` }
  const figures = cell.kind === 'limit' ? entered.replace(SIGN, '') : entered
  // a bare fraction is one of the whole; of per cent it has to say so
  const text = unit === '%' && figures.includes('/') ? `${figures} %` : figures
  // a file has a point for decimals, whatever its reader writes
  const read = parseEntry(text, row.unit, { profile: 'metric', decimal: '.', displayed: unit, quantity: name })
  if (read === null || read === 'not_taken' || isProblem(read)) {
    return problem('entered_unreadable', [], { ...facts, canonical: exactly(canonical) })
  }
  if (near(read.canonical, canonical) || isRounding(figures, canonical, row.unit, unit)) return null
  const own = unitOf(row.unit)?.symbol ?? row.unit
  return problem('entered_other', [], {
    ...facts,
    read: exactly(read.canonical),
    canonical: exactly(canonical),
    own: own === '' ? '' : ` ${own}`,
  })
}

const SIGN = /^\s*[<>≤≥]=?\s*/

function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= RELATIVE * Math.max(Math.abs(a), Math.abs(b)) + NOISE
}

/** Whether an entry of several figures is the value in its unit, rounded to as many decimals. */
function isRounding(entered: string, canonical: number, own: string, unit: string): boolean {
  const parts = /^-?0*(\d*)(?:\.(\d+))?$/.exec(entered)
  const value = convert(canonical, own, unit)
  if (parts === null || isProblem(value)) return false
  const [, whole = '', decimals = ''] = parts
  const told = whole === '' ? decimals.replace(/^0+/, '') : whole + decimals
  return told.length >= FIGURES && Math.abs(value - Number(entered)) <= 0.500001 * 10 ** -decimals.length
}

/** All the digits: a sentence rounds numbers, and the two could look alike. */
function exactly(value: number): string {
  return String(Number(value.toPrecision(12)))
}
