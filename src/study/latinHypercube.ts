import { random } from './random'

/**
 * A Latin hypercube (McKay, Beckman and Conover, Technometrics 21, 1979): along each of the dimensions, one point in the middle of
 * each of `count` equal strata, in an order of its own. Far fewer points than by chance alone give a mean and its ends.
 * @returns by dimension, the shares from 0 to 1
 */
export function latinHypercube(dimensions: number, count: number, seed: number): readonly Float64Array[] {
  const next = random(seed)
  return Array.from({ length: dimensions }, () => {
    const shares = Float64Array.from({ length: count }, (_, i) => (i + 0.5) / count)
    for (let i = count - 1; i > 0; i--) {
      const j = Math.floor(next() * (i + 1))
      const held = shares[i] ?? 0
      shares[i] = shares[j] ?? 0
      shares[j] = held
    }
    return shares
  })
}
