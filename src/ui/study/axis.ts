import { convert, convertDifference } from '../../units/convert'
import { formatValue } from '../../units/format'
import type { Row } from '../../worksheet/definition'
import { decimalsOf } from '../decimalsOf'
import { labelOf } from '../labelOf'
import type { Book } from '../shell/book'
import { unitWords } from '../unitWords'

/** A quantity as the reader sees it: its name, and canonical values in the unit that it is shown in. */
export interface Axis {
  readonly quantity: string
  readonly label: string
  /** code of the unit; and as it is written beside a figure, empty where there is none */
  readonly unit: string
  readonly canonical: string
  readonly symbol: string
  /** the smallest difference that its figures tell apart, as it is shown */
  readonly step: number
  shown(value: number): number
  /** the figure alone; and with its unit */
  figure(value: number): string
  text(value: number): string
}

/** Tracked. */
export function axisOf(book: Book, quantity: string): Axis {
  const row = book.catalog().quantities.get(quantity)?.row
  return axisFor(quantity, row, book.unit(quantity))
}

export function axisFor(quantity: string, row: Row | undefined, unit: string): Axis {
  const canonical = row?.unit ?? unit
  const decimals = row ? decimalsOf(row) : undefined
  const symbol = unitWords(unit)
  const figure = (value: number) => formatValue(value, canonical, unit, decimals)
  return {
    quantity,
    label: labelOf(quantity, row),
    unit,
    canonical,
    symbol,
    step: stepOf(canonical, unit, decimals ?? 2),
    shown(value) {
      const shown = convert(value, canonical, unit)
      return typeof shown === 'number' ? shown : value
    },
    figure,
    text: (value) => `${figure(value)} ${symbol}`.trim(),
  }
}

function stepOf(canonical: string, unit: string, decimals: number): number {
  const step = convertDifference(10 ** -decimals, canonical, unit)
  return typeof step === 'number' ? step : 10 ** -decimals
}

/** The name with its unit, as it stands over a chart. */
export function titleOf({ label, symbol }: Axis): string {
  return symbol === '' ? label : `${label}, ${symbol}`
}
