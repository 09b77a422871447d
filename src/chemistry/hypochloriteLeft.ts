import { type Failure, isFailure } from './failure'
import { outside } from './outside'
import { productContent } from './productContent'
import { PRODUCTS, type StrengthBasis } from './products'

/** Mass percent of NaOCl and days to half of it at 25 °C in the dark: handbook table, from memory. */
const HALF_LIFE: readonly (readonly [percent: number, days: number])[] = [
  [2.5, 1_800],
  [5, 790],
  [10, 220],
  [15, 100],
]

/**
 * Share of a stored hypochlorite solution's strength that is left after `days` (0 to 365) at about 25 °C.
 *
 * The loss is of second order in hypochlorite (Gordon, Adam & Bubnis, J. AWWA, Minimizing chlorate ion formation, abstract), so
 * a half-life t leaves 1 / (1 + days / t); half-lives by strength, straight lines in logarithms between the rows and on
 * beyond them. Each 10 °C warmer goes three to four times as fast. Errors: those of the label, an age out of range: after a year
 * only a titration tells.
 */
export function hypochloriteLeft(strength: number, basis: StrengthBasis | undefined, days: number): number | Failure {
  const content = productContent('sodium_hypochlorite', strength, basis, 'chlorine_strength')
  if (isFailure(content)) return content
  const percent = (content.moles * PRODUCTS.sodium_hypochlorite.molarMass) / 10
  return outside('product_age', days, 0, 365) ?? 1 / (1 + days / halfLife(percent))
}

function halfLife(percent: number): number {
  const above = HALF_LIFE.findIndex(([row]) => row >= percent)
  const upper = Math.max(1, above < 0 ? HALF_LIFE.length - 1 : above)
  const [lowPercent = 1, lowDays = 1] = HALF_LIFE[upper - 1] ?? []
  const [highPercent = 1, highDays = 1] = HALF_LIFE[upper] ?? []
  const slope = Math.log(highDays / lowDays) / Math.log(highPercent / lowPercent)
  return lowDays * (percent / lowPercent) ** slope
}
