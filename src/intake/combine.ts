import type { LabReading } from './reading'
import type { Understanding } from './understanding'

/** The readings of one sample while they come in. */
export interface Gathered {
  readonly readings: Record<string, LabReading>
  /** by quantity: how many values a mean is of, or how many times it was read where each time is kept */
  readonly counts: Record<string, number>
}

export type Combine = (sample: Gathered, quantity: string, reading: LabReading) => void

/**
 * The rule for repeated readings where they go into one sample. A reading limited by the method has no mean: the earlier
 * reading stands.
 */
export function createCombine({ answers, known }: Understanding): Combine {
  const rule = answers.replicates ?? 'keep'
  const units = new Map(known.map(({ name, unit }) => [name, unit]))
  return ({ readings, counts }, quantity, reading) => {
    const before = readings[quantity]
    if (before === undefined || rule === 'last') {
      readings[quantity] = reading
      return
    }
    if (rule === 'first' || before.kind !== 'value' || reading.kind !== 'value') return
    const count = (counts[quantity] ?? 1) + 1
    counts[quantity] = count
    const mean = before.canonical + (reading.canonical - before.canonical) / count
    const unit = units.get(quantity) ?? ''
    readings[quantity] = { kind: 'value', entered: String(mean), unit, canonical: mean, mark: 'mean' }
  }
}
