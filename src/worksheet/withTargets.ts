import { type Problem, problem } from '../words/problem'
import type { Band, Row, TargetSet } from './definition'
import { bandProblems } from './rowProblems'
import type { Source } from './source'

/** The choice by which a scenario says which set of ranges holds. */
export const TARGET_SET = 'target_set'

/** A row with the bands of all sets before its own, each on condition that its set is chosen; `target_set` with every set. */
export function withTargets(row: Row, sets: readonly TargetSet[]): Row {
  if (row.name === TARGET_SET && 'choices' in row) {
    const labels = Object.fromEntries(sets.flatMap(({ id, label }) => (label === undefined ? [] : [[id, label]])))
    return {
      ...row,
      choices: [...new Set([...row.choices, ...sets.map(({ id }) => id)])],
      ...(Object.keys(labels).length === 0 ? {} : { labels: { ...row.labels, ...labels } }),
    }
  }
  const bands = sets.flatMap((set) => bandsOf(set, row.name))
  return bands.length === 0 ? row : { ...row, target: [...bands, ...(row.target ?? [])] }
}

function bandsOf({ id, source, bands }: TargetSet, row: string): readonly Band[] {
  const own = Object.hasOwn(bands, row) ? bands[row] : undefined
  return (own ?? []).map((band) => ({
    ...band,
    source: band.source ?? source,
    when: { [TARGET_SET]: [id], ...band.when },
  }))
}

/** What is wrong with the sets that definitions bring: an id that is there already, rows and choices that are not known. */
export function targetProblems(sources: readonly Source[], rowOf: (name: string) => Row | undefined): Problem[] {
  const first = new Map<string, string>()
  return sources.flatMap(({ definition, file }) =>
    (definition.targets ?? []).flatMap(({ id, bands }, i) => {
      const other = first.get(id)
      first.set(id, other ?? file)
      const twice = other === undefined ? [] : [problem('name_twice', [file, 'targets', i, 'id'], { name: id, other })]
      const ofBands = Object.entries(bands).flatMap(([name, list]) => {
        const path = [file, 'targets', i, 'bands', name]
        if (!rowOf(name)) return [problem('row_not_known', path, { name })]
        return list.flatMap((band, b) => bandProblems(band, [...path, b], rowOf))
      })
      return [...twice, ...ofBands]
    }),
  )
}
