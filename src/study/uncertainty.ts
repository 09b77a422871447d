import type { Problem } from '../words/problem'
import { type Doubt, quantileOf } from './doubt'
import { type Column, type Evaluate, numberIn } from './evaluate'
import { latinHypercube } from './latinHypercube'

export interface UncertaintyOrder {
  readonly column: Column
  /** of readings and the like, taken as independent of each other */
  readonly doubts: readonly Doubt[]
  readonly outputs: readonly string[]
  /** columns; left out: 1000 */
  readonly count?: number
  readonly seed?: number
}

/** Where an output lies, given how exact the readings are. In its canonical unit. */
export interface Interval {
  readonly output: string
  /** ends of the 95 % coverage interval, as much outside on either side (JCGM 101:2008, 7.7); null where nothing has an answer */
  readonly ends: readonly [low: number, high: number] | null
  /** the standard deviation of the output; null as above */
  readonly deviation: number | null
  /** columns that have no answer, and the first reason; the ends are those of the others */
  readonly refused: number
  readonly why: Problem | null
  readonly count: number
}

export const COLUMNS = 1_000
const OUTSIDE = 0.05

/**
 * Propagates the readings' doubts to the outputs by many columns, as JCGM 101:2008 does, drawn as a Latin hypercube from a fixed seed:
 * the same water always has the same interval.
 */
export async function uncertainty(evaluate: Evaluate, order: UncertaintyOrder): Promise<readonly Interval[]> {
  const { column, doubts, outputs, count = COLUMNS, seed = 1 } = order
  const shares = latinHypercube(doubts.length, count, seed)
  const columns = Array.from({ length: count }, (_, i) => {
    const drawn = new Map(column)
    doubts.forEach((doubt, d) => void drawn.set(doubt.quantity, quantileOf(doubt, shares[d]?.[i] ?? 0.5)))
    return drawn
  })
  const answers = await evaluate(columns, outputs)
  return outputs.map((output, o) => {
    const values = Float64Array.from(answers.flatMap((answer) => numberIn(answer[o]) ?? []))
    const silent = answers.find((answer) => numberIn(answer[o]) === null)?.[o]
    return {
      output,
      ends: values.length === 0 ? null : middleOf(values.sort()),
      deviation: values.length === 0 ? null : deviationOf(values),
      refused: count - values.length,
      why: silent && 'problem' in silent ? silent.problem : null,
      count,
    }
  })
}

/** @param sorted ascending, at least one */
function middleOf(sorted: Float64Array): readonly [number, number] {
  return [quantile(sorted, OUTSIDE / 2), quantile(sorted, 1 - OUTSIDE / 2)]
}

/** Between the values, in a straight line; the i-th of n stands for the share (i + 0.5) / n. */
function quantile(sorted: Float64Array, share: number): number {
  const at = Math.min(Math.max(share * sorted.length - 0.5, 0), sorted.length - 1)
  const [low, high] = [sorted[Math.floor(at)] ?? Number.NaN, sorted[Math.ceil(at)] ?? Number.NaN]
  return low + (high - low) * (at - Math.floor(at))
}

function deviationOf(values: Float64Array): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length)
}
