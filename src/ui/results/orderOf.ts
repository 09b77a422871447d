import type { BatchOrder, GivenColumn } from '../../engine/batchJob'
import { type ImportedColumn, STATE } from '../../intake/columnar'
import type { Notebook } from '../../notebook/notebook'
import type { LabImport } from '../lab/labImport'
import type { Censored } from '../lab/takeIn'

/**
 * What the long run is asked for: the import's readings, a limit such as <0.2 by the rule that was chosen, and the
 * settings that all samples share. A reading stands before a setting.
 */
export function orderOf(
  { head, columns }: LabImport,
  wanted: readonly string[],
  censored: Censored,
  settings: BatchOrder['constant'],
  { worksheets, rows }: Pick<Notebook, 'worksheets' | 'rows'>,
): BatchOrder {
  return {
    count: columns.count,
    columns: columns.quantities.map((column) => {
      const given = givenColumn(column, censored)
      const choices = head.choices[column.quantity]
      return choices ? { ...given, choices } : given
    }),
    constant: settings,
    wanted,
    worksheets,
    rows,
  }
}

function givenColumn({ quantity, values, states }: ImportedColumn, censored: Censored): GivenColumn {
  const taken = new Uint8Array(values.length)
  const given = censored === 'half' && states.includes(STATE.below) ? values.slice() : values
  for (let i = 0; i < states.length; i++) {
    const state = states[i] ?? STATE.notTaken
    if (state === STATE.below || state === STATE.above) {
      if (censored === 'leave_out') continue
      // Half the limit speaks of what is too little to tell; of what is too much the limit is the least that it can be.
      if (censored === 'half' && state === STATE.below) given[i] = (values[i] ?? 0) / 2
      taken[i] = 1
    } else if (TAKEN.has(state)) taken[i] = 1
  }
  return { quantity, values: given, taken }
}

const TAKEN: ReadonlySet<number> = new Set([STATE.value, STATE.estimated, STATE.unlikely, STATE.mean])
