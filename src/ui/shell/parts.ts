import { type Accessor, createSignal } from 'solid-js'
import type { Notebook } from '../../notebook/notebook'
import { inOrder } from '../../notebook/order'
import { sameList } from './sameList'

/** The parts of a notebook that many places on the page read, each with a signal of its own. */
export interface Parts {
  readonly worksheets: Accessor<Notebook['worksheets']>
  readonly rows: Accessor<Notebook['rows']>
  readonly scenarios: Accessor<Notebook['scenarios']>
  readonly samples: Accessor<Notebook['samples']>
  readonly units: Accessor<Notebook['units']>
  readonly profile: Accessor<Notebook['profile']>
  /** ids of the scenarios, in order */
  readonly order: Accessor<readonly string[]>
  follow(next: Notebook): void
}

/**
 * They are written, not derived: an edit shares what it does not touch, and writing the same part again wakes nobody,
 * whereas memos over the notebook would have every cell of the page asked at each edit whether it is still right.
 */
export function createParts(first: Notebook): Parts {
  const [worksheets, setWorksheets] = createSignal(first.worksheets)
  const [rows, setRows] = createSignal(first.rows)
  const [scenarios, setScenarios] = createSignal(first.scenarios)
  const [samples, setSamples] = createSignal(first.samples)
  const [units, setUnits] = createSignal(first.units)
  const [profile, setProfile] = createSignal(first.profile)
  const [order, setOrder] = createSignal(idsOf(first), { equals: sameList })
  return {
    worksheets,
    rows,
    scenarios,
    samples,
    units,
    profile,
    order,
    follow(next) {
      setWorksheets(next.worksheets)
      setRows(next.rows)
      setScenarios(next.scenarios)
      setSamples(next.samples)
      setUnits(next.units)
      setProfile(next.profile)
      setOrder(idsOf(next))
    },
  }
}

function idsOf(notebook: Notebook): readonly string[] {
  return inOrder(notebook).map(({ id }) => id)
}
