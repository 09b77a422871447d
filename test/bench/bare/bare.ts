import { bareEdits } from '../editRuns'

/** The mean time of setting pH in one column of the bare engine, on the page's own thread, in milliseconds. */
function meanEdit(scenarios: number, column: 'baseline' | 'last', edits: number): number {
  const run = bareEdits(scenarios, column)
  const start = performance.now()
  run(edits)
  return (performance.now() - start) / edits
}

/** The time of building the bare engine with all cells of so many scenarios, in milliseconds. */
function build(scenarios: number): number {
  const start = performance.now()
  bareEdits(scenarios)
  return performance.now() - start
}

Object.assign(globalThis, { meanEdit, build })
