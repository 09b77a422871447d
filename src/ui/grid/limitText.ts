import type { Cell } from '../../notebook/notebook'
import { convert } from '../../units/convert'
import { formatValue } from '../../units/format'
import type { Row } from '../../worksheet/definition'
import { decimalsOf } from '../decimalsOf'
import { decimalsWritten } from './figures'

export type Limit = Extract<Cell, { kind: 'limit' }>

/**
 * `> 100`: a limit of a test, in the unit in which the row is shown. It has the decimals that a person wrote, never those of the row:
 * rounded, `<0.05` would be another limit. In another unit it has figures enough not to be one.
 */
export function limitText(limit: Limit, row: Row, unit: string): string {
  return `${limitSign(limit)} ${figure(limit, row, unit)}`
}

export function limitSign({ side }: Limit): string {
  return side === 'above' ? '>' : '<'
}

/** Figures that tell a limit apart from the next one that a test has. */
const FIGURES = 3
/** More decimals than a person writes. */
const MACHINE = 7

function figure({ canonical, entered, unit: own }: Limit, row: Row, unit: string): string {
  const shown = convert(canonical, row.unit, unit)
  if (typeof shown !== 'number') return formatValue(canonical, row.unit, unit, decimalsOf(row))
  const decimals = own === unit ? decimalsWritten(entered.replace(/^\s*[<>≤≥]=?/, '')) : null
  return formatValue(shown, unit, unit, decimals !== null && decimals < MACHINE ? decimals : decimalsFor(shown))
}

/** Decimals for so many figures, without the zeros that would end them. */
function decimalsFor(shown: number): number {
  const [, fraction = ''] = Number(shown.toPrecision(Math.max(FIGURES, String(Math.trunc(Math.abs(shown))).length)))
    .toFixed(12)
    .split('.')
  return fraction.replace(/0+$/, '').length
}
