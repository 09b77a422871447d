import type { Value } from '../functions/define'
import { FORETOLD } from './bench'
import { type Draft, look, numberIn, numberOf } from './draft'

/** What the readings are after a step: those that were there before, as far as they can be foretold; none is invented. */
export type Readings = Readonly<Record<string, Value | undefined>>

/** mg/L; far under what any test tells. */
const HAIR = 1e-9

export interface StepInputs {
  readonly step_product?: string | undefined
  readonly step_strength?: number | undefined
  readonly step_strength_basis?: string | undefined
  readonly step_mass?: number | undefined
  readonly step_volume?: number | undefined
  readonly step_chlorine_used?: number | undefined
}

/** The readings after a step, by one more column. */
export function foretell(draft: Draft, step: StepInputs): Readings {
  const after = look(draft, { ...step })
  const readings: Record<string, Value | undefined> = {}
  for (const [reading, from] of Object.entries(FORETOLD)) {
    if (draft.column.has(reading)) readings[reading] = noneAtLeast(numberIn(after, from))
  }
  const total = withTotal(draft, noneAtLeast(numberIn(after, FORETOLD.free_chlorine)))
  return {
    ...readings,
    ...total,
    tds: undefined,
    ...(step.step_product === 'salt' ? { cell_salt_reading: undefined } : {}),
  }
}

/** What is used up to the last leaves a rest of the arithmetic, which is no reading: a hair under nothing is nothing. */
function noneAtLeast(value: number | undefined): number | undefined {
  return value !== undefined && value < 0 && value > -HAIR ? 0 : value
}

/** Combined chlorine stays as it is, so total chlorine follows the free. */
export function withTotal(draft: Draft, free: number | undefined): Readings {
  if (!draft.column.has('total_chlorine')) return {}
  const combined = numberOf(draft, 'combined_chlorine')
  return { total_chlorine: free === undefined || combined === undefined ? undefined : free + combined }
}
