import type { Definition } from '../worksheet/definition'

/** A quantity that a file may hold: what matching, conversion and flags need to know of it. Plain data, so that it crosses to a worker. */
export interface Known {
  readonly name: string
  /** canonical unit code; 'choice' for a closed list */
  readonly unit: string
  readonly choices?: readonly string[]
  /** outside: refused. In the canonical unit. */
  readonly accept?: readonly [number, number]
  /** outside: kept and flagged */
  readonly plausible?: readonly [number, number]
}

/** The quantities of these worksheets in contract order, entered ones and worked-out ones (a file may give either). */
export function knownQuantities(definitions: readonly Definition[]): readonly Known[] {
  return definitions.flatMap((definition) =>
    definition.groups.flatMap((group) =>
      group.rows.flatMap((row): Known[] => {
        if (typeof row === 'string') return []
        if (!('input' in row)) return [{ name: row.name, unit: row.unit }]
        if (row.input === 'choice') return [{ name: row.name, unit: row.unit, choices: row.choices }]
        const known = { name: row.name, unit: row.unit, accept: row.accept }
        return [row.plausible === undefined ? known : { ...known, plausible: row.plausible }]
      }),
    ),
  )
}
