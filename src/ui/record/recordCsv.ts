import { quoted } from '../../intake/contractCsv'
import type { Notebook, Reading } from '../../notebook/notebook'
import { instant } from '../../record/instant'

/**
 * Samples and additions of a pool as CSV, the first first: comma, point, LF, contract names and canonical units. A text that a
 * spreadsheet would run as a formula goes behind an apostrophe; a reading that is only a limit keeps its sign.
 */
export function recordCsv({ samples, additions }: Pick<Notebook, 'samples' | 'additions'>): string {
  const own = Object.values(samples).filter(({ elsewhere }) => !elsewhere)
  const quantities = [...new Set(own.flatMap(({ readings }) => Object.keys(readings)))].sort()
  const heading = ['date', 'sample', 'product', 'amount', 'unit', 'strength', 'basis', 'note', ...quantities]
  const rows = [
    ...own.map(({ date, name, readings }) => ({
      date,
      cells: [date, name, '', '', '', '', '', '', ...quantities.map((quantity) => written(readings[quantity]))],
    })),
    ...Object.values(additions).map(({ date, product, amount, unit, strength, basis, note }) => ({
      date,
      cells: [
        date,
        '',
        product,
        String(amount),
        unit,
        strength === undefined ? '' : String(strength),
        basis ?? '',
        note,
      ],
    })),
  ]
  rows.sort((a, b) => (instant(a.date) || 0) - (instant(b.date) || 0))
  const lines = rows.map(({ cells }) => heading.map((_, i) => cellOf(cells[i] ?? '')).join(','))
  return `${[heading.map(quoted).join(','), ...lines].join('\n')}\n`
}

function written(reading: Reading | undefined): string {
  if (reading === undefined) return ''
  if (reading.kind === 'choice') return reading.id
  const figure = String(reading.canonical)
  return reading.kind === 'limit' ? `${reading.side === 'above' ? '>' : '<'}${figure}` : figure
}

/** A plain figure stays one, also where it begins with a minus sign. */
function cellOf(text: string): string {
  return /^-?\d+(\.\d+)?(e[+-]?\d+)?$/.test(text) ? text : quoted(text)
}
