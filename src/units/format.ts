import { locale } from '../words/locale'
import { isProblem } from '../words/problem'
import { convert, convertDifference } from './convert'
import type { DecimalMark } from './readNumber'
import { unit as unitOf } from './unit'

/**
 * A canonical value as a figure in `unit`, without the unit: true minus sign, groups of three from 10 000 up.
 *
 * `decimals` is the resolution in the canonical unit; where it is not said, four significant figures are
 * given. In another unit the figure is given to the coarsest power of ten that still tells apart what the canonical unit
 * does: 0.1 °C becomes 0.1 °F, 0.1 m³ becomes 10 US gal. A `unit` that can't hold the value is not used: the figure then is
 * the canonical one with its own unit written after it. Empty for NaN and the infinities.
 */
export function formatValue(
  canonical: number,
  canonicalUnit: string,
  unit: string,
  decimals: number | undefined,
  decimal: DecimalMark = locale().decimal,
): string {
  const value = convert(canonical, canonicalUnit, unit)
  if (isProblem(value)) return inCanonical(canonical, canonicalUnit, decimals, decimal)
  return withMinus(value, places(value, canonicalUnit, unit, decimals), decimal)
}

/** A difference of canonical values, signed: `+0.3`, `−0.3`, `0.0`. A difference of temperatures has no offset. */
export function formatDifference(
  difference: number,
  canonicalUnit: string,
  unit: string,
  decimals: number | undefined,
  decimal: DecimalMark = locale().decimal,
): string {
  const value = convertDifference(difference, canonicalUnit, unit)
  const figure = isProblem(value)
    ? inCanonical(difference, canonicalUnit, decimals, decimal)
    : withMinus(value, places(value, canonicalUnit, unit, decimals), decimal)
  return difference > 0 && /[1-9]/.test(figure) ? `+${figure}` : figure
}

/** Decimal places in `unit` for a resolution of `decimals` places in the canonical unit; negative: tens, hundreds. */
function places(value: number, canonicalUnit: string, unit: string, decimals: number | undefined): number {
  if (decimals === undefined) return fourFigures(value)
  const step = convertDifference(10 ** -decimals, canonicalUnit, unit)
  // a hair off, so that an exact power of ten does not gain a place by rounding of its logarithm
  return isProblem(step) ? decimals : Math.ceil(-Math.log10(step) - 1e-9)
}

function fourFigures(value: number): number {
  return value === 0 ? 0 : Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value))))
}

function inCanonical(value: number, canonicalUnit: string, decimals: number | undefined, decimal: DecimalMark): string {
  if (!Number.isFinite(value)) return ''
  const symbol = unitOf(canonicalUnit)?.symbol ?? canonicalUnit
  return `${withMinus(value, decimals ?? fourFigures(value), decimal)} ${symbol}`.trimEnd()
}

function withMinus(value: number, decimals: number, decimal: DecimalMark): string {
  const step = 10 ** -decimals
  const size = step > 1 ? Math.round(Math.abs(value) / step) * step : Math.abs(value)
  const figure = formatter(decimal, Math.min(Math.max(0, decimals), MOST_DECIMALS)).format(size)
  return value < 0 && /[1-9]/.test(figure) ? `−${figure}` : figure
}

const MOST_DECIMALS = 20
const made = new Map<string, Intl.NumberFormat>()

/** Kept: making one costs a hundred times its use. The marks are those that `parseEntry` reads back. */
function formatter(decimal: DecimalMark, decimals: number): Intl.NumberFormat {
  const key = `${decimal}${decimals}`
  const known = made.get(key)
  if (known !== undefined) return known
  const fresh = new Intl.NumberFormat(decimal === ',' ? 'de' : 'en', {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: 'min2',
  })
  made.set(key, fresh)
  return fresh
}
