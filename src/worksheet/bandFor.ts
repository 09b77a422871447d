import type { Value } from '../functions/define'
import type { Band, Row } from './definition'

/**
 * The band of a row in a scenario: the first whose every condition holds. A condition on something that is not known
 * does not hold.
 * @param values the scenario's values of the quantities that conditions name (`conditionsOf`): choice ids, numbers
 */
export function bandFor(row: Row, values: Readonly<Record<string, Value | undefined>>): Band | undefined {
  return row.target?.find((band) =>
    Object.entries(band.when ?? {}).every(([name, wanted]) => holds(values[name], wanted)),
  )
}

/** The quantities that decide which band of a row holds. */
export function conditionsOf(row: Row): readonly string[] {
  return [...new Set(row.target?.flatMap((band) => Object.keys(band.when ?? {})))]
}

type Wanted = NonNullable<Band['when']>[string]

function holds(value: Value | undefined, wanted: Wanted): boolean {
  if (Array.isArray(wanted)) return typeof value === 'string' && wanted.includes(value)
  if (typeof value !== 'number') return false
  return (wanted.from === undefined || value >= wanted.from) && (wanted.below === undefined || value < wanted.below)
}
