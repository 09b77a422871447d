import { type Failure, fail } from './failure'
import { outside } from './outside'

/**
 * Within what a volume lies, m³, in which a mass between `least` and `most` kg raised a reading from `before` to `after` mg/L,
 * the rise within `error` of the truth: least / (rise + error) to most / (rise - error), times 1000. The upper end is infinite
 * where the rise is no larger than its error.
 *
 * Masses over 0 to 100 000 kg, readings 0 to 100 000 mg/L, error 0 to 10 000 mg/L. Everything has to be dissolved and mixed, and
 * no water lost or added in between. Errors: `out_of_range`; `no_such_water` where even the largest rise that the readings allow is
 * none. Mass balance with interval arithmetic (Moore, Interval Analysis, 1966).
 */
export function volumeFromRise(
  quantity: string,
  [least, most]: readonly [number, number],
  before: number,
  after: number,
  error: number,
): readonly [low: number, high: number] | Failure {
  const refused =
    outside('mass', least, 1e-9, 100_000) ??
    outside('mass', most, least, 100_000) ??
    outside(quantity, before, 0, 100_000) ??
    outside(quantity, after, 0, 100_000) ??
    outside(`${quantity}_test_error`, error, 0, 10_000)
  if (refused) return refused
  const rise = after - before
  const largest = rise + error
  const smallest = rise - error
  if (largest <= 0) return fail('no_such_water', quantity, { rise, error })
  return [(1_000 * least) / largest, smallest > 0 ? (1_000 * most) / smallest : Number.POSITIVE_INFINITY]
}
