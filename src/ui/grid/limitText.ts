import type { Cell } from '../../notebook/notebook'
import { formatValue } from '../../units/format'
import type { Row } from '../../worksheet/definition'
import { decimalsOf } from '../decimalsOf'

/** `> 100`: a limit of a test, in the unit in which the row is shown. */
export function limitText({ side, canonical }: Extract<Cell, { kind: 'limit' }>, row: Row, unit: string): string {
  return `${side === 'above' ? '>' : '<'} ${formatValue(canonical, row.unit, unit, decimalsOf(row))}`
}
