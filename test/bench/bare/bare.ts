import { bareEdits } from '../editRuns'

/** Edits before those that are measured, as on the page. */
const WARM = 5

/**
 * The times of setting pH in one column of the bare engine, on the page's own thread, in milliseconds: at a person's
 * pace, each edit a task of its own with a frame before it, as on the page that is held against it.
 */
async function timeEdits(scenarios: number, column: 'baseline' | 'last', edits: number): Promise<number[]> {
  const run = bareEdits(scenarios, column)
  const times: number[] = []
  for (let i = -WARM; i < edits; i++) {
    await new Promise(requestAnimationFrame)
    await new Promise((done) => setTimeout(done))
    const start = performance.now()
    run(i + WARM)
    if (i >= 0) times.push(performance.now() - start)
  }
  return times
}

/** The times of a small message to a worker and back, at the same pace: this machine's share in every edit that the engine's worker answers. */
async function timeEcho(edits: number): Promise<number[]> {
  const worker = new Worker(new URL('./echo.ts', import.meta.url), { type: 'module' })
  const times: number[] = []
  for (let i = -WARM; i < edits; i++) {
    await new Promise(requestAnimationFrame)
    await new Promise((done) => setTimeout(done))
    const start = performance.now()
    const answered = new Promise((done) => {
      worker.onmessage = done
    })
    worker.postMessage({ i })
    await answered
    if (i >= 0) times.push(performance.now() - start)
  }
  worker.terminate()
  return times
}

/** The time of building the bare engine with all cells of so many scenarios, in milliseconds. */
function build(scenarios: number): number {
  const start = performance.now()
  bareEdits(scenarios)
  return performance.now() - start
}

Object.assign(globalThis, { timeEdits, timeEcho, build })
