import { drainFraction } from './dilution'
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
 * are within theirs. A limit whose reading is missing, or a quantity over its limit whose fill value is missing, is named: not
 * taken is not 0. Without any limit there is nothing to answer.
 */
export function dilutionPlan(
  quantities: readonly DilutedQuantity[],
): { readonly fraction: number; readonly governs: string } | Failure {
  let fraction = 0
  let governs = 'none'
  let limits = 0
  for (const { quantity, now, fill, most } of quantities) {
    if (most === undefined) continue
    limits++
    if (now === undefined) return fail('missing', quantity)
    if (fill === undefined && now > most) return fail('missing', `fill_${quantity}`)
    const needed = drainFraction(quantity, now, most, fill ?? 0)
    if (isFailure(needed)) return needed
    if (needed > fraction) {
      fraction = needed
      governs = quantity
    }
  }
  return limits === 0
    ? fail('missing', quantities.map(({ quantity }) => `most_${quantity}`).join('|'))
    : { fraction, governs }
}
