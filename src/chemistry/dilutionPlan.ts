import { afterDilution, drainFraction } from './dilution'
import { type Failure, fail, isFailure } from './failure'

/** One quantity of a dilution: what it reads, in the fill water, and at most afterwards; undefined is not taken. */
export interface DilutedQuantity {
  readonly quantity: string
  readonly now: number | undefined
  readonly fill: number | undefined
  readonly most: number | undefined
}

/**
 * The single drain that brings every quantity with a limit within it, and which quantity asks for it; 'none' where all
 * are within theirs. A limit whose reading is missing, or a quantity with a limit whose fill value is missing although something
 * has to be drained, is named: not taken is not 0. `unreachable` names what the fill water holds at its limit, or would take
 * over it. Without any limit there is nothing to answer.
 */
export function dilutionPlan(
  quantities: readonly DilutedQuantity[],
): { readonly fraction: number; readonly governs: string } | Failure {
  const limited = quantities.filter(({ most }) => most !== undefined)
  if (limited.length === 0) return fail('missing', quantities.map(({ quantity }) => `most_${quantity}`).join('|'))
  let fraction = 0
  let governs = 'none'
  for (const { quantity, now, fill, most = 0 } of limited) {
    if (now === undefined) return fail('missing', quantity)
    if (fill === undefined && now > most) return fail('missing', `fill_${quantity}`)
    const needed = drainFraction(quantity, now, most, fill ?? 0)
    if (isFailure(needed)) return needed
    if (needed > fraction) {
      fraction = needed
      governs = quantity
    }
  }
  const spoilt = fraction > 0 ? limited.map((quantity) => spoiltBy(fraction, quantity)).find(isFailure) : undefined
  return spoilt ?? { fraction, governs }
}

/** A quantity within its limit that so large a drain takes over it, or whose fill value is not known. */
function spoiltBy(fraction: number, { quantity, now = 0, fill, most = 0 }: DilutedQuantity): Failure | undefined {
  if (fill === undefined) return fail('missing', `fill_${quantity}`)
  const after = afterDilution(quantity, now, fill, fraction)
  if (isFailure(after)) return after
  // what governs lands on its limit to within rounding
  return fill > most && after > most * (1 + 1e-12) ? fail('unreachable', quantity, { wanted: most, fill }) : undefined
}
