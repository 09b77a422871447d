import type { Band, Row, TargetSet } from './definition'

/** The choice by which a scenario says which set of ranges holds. */
export const TARGET_SET = 'target_set'

/** A row with the bands of all sets before its own, each on condition that its set is chosen; `target_set` with every set. */
export function withTargets(row: Row, sets: readonly TargetSet[]): Row {
  if (row.name === TARGET_SET && 'choices' in row) {
    return { ...row, choices: [...new Set([...row.choices, ...sets.map(({ id }) => id)])] }
  }
  const bands = sets.flatMap((set) => bandsOf(set, row.name))
  return bands.length === 0 ? row : { ...row, target: [...bands, ...(row.target ?? [])] }
}

function bandsOf({ id, source, bands }: TargetSet, row: string): readonly Band[] {
  const own = Object.hasOwn(bands, row) ? bands[row] : undefined
  return (own ?? []).map((band) => ({ source, ...band, when: { [TARGET_SET]: [id], ...band.when } }))
}
