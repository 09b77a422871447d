import { bareEdits } from '../editRuns'

/** The mean time of setting pH in one column of the bare engine, on the page's own thread, in milliseconds. */
function meanEdit(scenarios: number, column: 'baseline' | 'last', edits: number): number {
  const run = bareEdits(scenarios, column)
  const start = performance.now()
  run(edits)
  return (performance.now() - start) / edits
}

Object.assign(globalThis, { meanEdit })
