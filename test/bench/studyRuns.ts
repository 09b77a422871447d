import { HyperFormula } from 'hyperformula'
import { CONFIG } from '../../src/engine/columns'
import { layoutFor } from '../../src/engine/layout'
import { NoticeBoard } from '../../src/engine/notices'
import { registerFunctions } from '../../src/engine/plugin'
import { type Content, createWriter } from '../../src/engine/sheets'
import type { Column } from '../../src/study/evaluate'
import { spanPoints } from '../../src/study/spanPoints'
import type { StudyOrder } from '../../src/ui/study/studies'
import { createStudyJob } from '../../src/ui/study/studyJob'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { waters } from './waters'

export const SPAN = spanPoints(6.8, 8.4, 200)
const OUTPUTS = ['lsi', 'hocl']
/** readings behind the outputs, with half widths of the usual tests */
const HALVES: Readonly<Record<string, number>> = {
  ph: 0.13,
  temperature: 0.5,
  free_chlorine: 0.5,
  total_alkalinity: 10,
  calcium_hardness: 10,
  cyanuric_acid: 15,
  salt: 200,
}

export function sweepOf(scenarios: number): StudyOrder {
  return { kind: 'sweep', order: { columns: waters(scenarios), input: 'ph', values: SPAN, outputs: OUTPUTS } }
}

export function intervalOf(count: number): StudyOrder {
  const [column = new Map()] = waters(1)
  const doubts = Object.entries(HALVES).map(([quantity, half]) => {
    const value = Number(column.get(quantity))
    return { quantity, value, half, distribution: 'rectangular' as const, least: 0, most: 45_000 }
  })
  return { kind: 'intervals', order: { column, doubts, outputs: OUTPUTS, count } }
}

/** Studies as the worker makes them, the same formulas kept at hand. */
export function studies(): (study: StudyOrder) => Promise<void> {
  const job = createStudyJob(({ kind }) => {
    if (kind !== 'done') throw new Error(`the study is ${kind}`)
  })
  let id = 0
  return (study) => job({ ask: 'study', id: ++id, study, own: { worksheets: {}, rows: {} } })
}

/** Columns of the engine that hold together; more cost more than they save. */
const TOGETHER = 32

/** HyperFormula alone on the same cells: refilled with what differs from column to column, so many columns at a time. */
export function bareRefills(): (columns: readonly Column[], refilled: readonly string[]) => void {
  registerFunctions()
  const catalog = shippedCatalog()
  const layout = layoutFor(catalog, OUTPUTS)
  const [first] = waters(1)
  const content = (quantity: string): Content => {
    const value = first?.get(quantity)
    const row = catalog.quantities.get(quantity)?.row
    if (value !== undefined) return { kind: 'value', value }
    if (row && 'formula' in row) return { kind: 'own' }
    return row?.default === undefined ? { kind: 'missing' } : { kind: 'value', value: row.default }
  }
  const hf = HyperFormula.buildFromSheets(
    createWriter(layout, () => undefined, null).sheets(Array.from({ length: TOGETHER }, () => content)),
    { ...CONFIG, context: new NoticeBoard() },
  )
  const rowOf = (quantity: string) => layout.rowOf.get(quantity) ?? 0
  return (columns, refilled) => {
    for (let start = 0; start < columns.length; start += TOGETHER) {
      hf.suspendEvaluation()
      for (let col = 0; col < TOGETHER; col++) {
        for (const quantity of refilled) {
          const value = columns[start + col]?.get(quantity)
          if (typeof value === 'number') hf.setCellContents({ sheet: 0, row: rowOf(quantity), col }, value)
        }
      }
      hf.resumeEvaluation()
      for (let col = 0; col < TOGETHER; col++)
        for (const output of OUTPUTS) hf.getCellValue({ sheet: 0, row: rowOf(output), col })
    }
  }
}

export const READINGS = Object.keys(HALVES)
