import { locale } from '../words/locale'
import type { Entry } from './parseEntry'
import type { DecimalMark } from './readNumber'

/**
 * The text with which an editor opens on an entry: what was typed, and its unit where a bare number would now be read
 * in another. Read again it gives the same entry, whatever the row shows by now.
 */
export function reopen(
  { entered, unit }: Pick<Entry, 'entered' | 'unit'>,
  displayed: string,
  decimal: DecimalMark = locale().decimal,
): string {
  const figures = entered.replaceAll('.', decimal)
  // a bare fraction is one of the whole, also in a row that is shown in per cent
  if (unit === '%' && entered.includes('/')) return `${figures} %`
  const complete = / [^\d]/.test(entered) || (unit === '1' && entered.includes('/'))
  if (complete || unit === displayed) return figures
  // a plain number has no unit to write: in a row shown in per cent it is given so
  if (unit === '1') return `${String(Number((Number(entered) * 100).toPrecision(15))).replace('.', decimal)} %`
  return `${figures} ${unit.replace(/^1(?=\/)/, '')}`
}
