import { convert } from '../units/convert'
import { say } from '../words/say'
import { unitWords } from './unitWords'

/**
 * In which unit what a formula gives is counted, where the row shows another; empty where nothing can be taken for another
 * number: mg/L and ppm, as this notebook has them, are one.
 */
export function countsIn(unit: string, shown: string): string {
  if (unit === shown || [0, 1].every((one) => convert(one, unit, shown) === one)) return ''
  return say('page.counts_in', { unit: unitWords(unit), shown: unitWords(shown) })
}
