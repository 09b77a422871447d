import { formatValue } from '../../units/format'
import { say } from '../../words/say'
import { unitWords } from '../unitWords'

/** "7.2 to 7.8", "at least 7.2", "at most 7.8", in the reader's unit; empty where there is no limit. */
export function spanText(
  low: number | undefined,
  high: number | undefined,
  canonical: string,
  unit: string,
  decimals: number,
): string {
  const written = (value: number) => formatValue(value, canonical, unit, decimals)
  const words = unitWords(unit)
  const after = words === '' ? '' : ` ${words}`
  if (low !== undefined && high !== undefined)
    return say('page.span', { low: written(low), high: written(high) }) + after
  if (low !== undefined) return say('page.at_least', { low: written(low) }) + after
  return high === undefined ? '' : say('page.at_most', { high: written(high) }) + after
}
