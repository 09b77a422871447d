import { batch } from 'solid-js'
import type { Change } from '../../engine/client'
import type { Outcome } from '../../engine/outcome'
import { cellKey } from '../../notebook/notebook'
import { createCells } from './cells'
import { createInflow } from './inflow'

/** What the cells of a notebook hold, as one part of the page knows it. */
export interface Values {
  /** tracked */
  outcome(scenario: string, quantity: string): Outcome | undefined
  /** tracked: where the value comes from may be another than before, whenever this changes */
  trackSource(scenario: string, quantity: string): void
  /** takes in what the engine says */
  follow(changes: readonly Change[]): void
  /** the cells, by key, whose source may have changed */
  touch(cells: readonly string[] | 'all'): void
}

export function createValues(): Values {
  const outcomes = createCells<Outcome>()
  const sources = createCells<true>()
  const inflow = createInflow<Change>(({ scenario, quantity, outcome }) => {
    outcomes.write(cellKey(scenario, quantity), outcome)
  })
  return {
    outcome: (scenario, quantity) => outcomes.read(cellKey(scenario, quantity)),
    trackSource: (scenario, quantity) => void sources.read(cellKey(scenario, quantity)),
    follow: inflow.put,
    touch(cells) {
      batch(() => {
        if (cells === 'all') sources.clear()
        else for (const key of cells) sources.write(key, true)
      })
    },
  }
}
