import { quoted } from '../../intake/contractCsv'
import { createSlices } from './slices'
import type { TableColumn } from './tableColumn'

/** Rows that become one piece of the file. */
const PIECE = 500

/**
 * The rows as CSV: comma, point, LF; contract names, canonical units, shortest digits. Numbers stay numbers; a text that
 * a spreadsheet would run as a formula goes behind an apostrophe.
 */
export async function exportCsv(columns: readonly TableColumn[], rows: Int32Array): Promise<Blob> {
  const slices = createSlices()
  const encoder = new TextEncoder()
  const parts: Uint8Array<ArrayBuffer>[] = []
  let piece = `${columns.map(({ key, label }) => quoted(headingOf(key, label))).join(',')}\n`
  for (let i = 0; i < rows.length; i++) {
    const sample = rows[i] ?? 0
    piece += `${columns.map((column) => cell(column.written(sample))).join(',')}\n`
    if (i % PIECE === PIECE - 1) {
      parts.push(encoder.encode(piece))
      piece = ''
    }
    if (slices.due()) await slices.pause()
  }
  return new Blob([...parts, encoder.encode(piece)], { type: 'text/csv' })
}

/** As the commands name them: `sample`, `date`, contract names, `notices`; a note keeps its own heading. */
function headingOf(key: string, label: string): string {
  if (key.startsWith('note:')) return label
  return { name: 'sample', remarks: 'notices' }[key] ?? key
}

function cell(value: number | string): string {
  if (typeof value === 'number') return Number.isNaN(value) ? '' : String(value)
  return quoted(value)
}
