import { Batch } from '../../engine/batch'
import type { Evaluate } from '../../study/evaluate'
import { solveBack } from '../../study/solveBack'
import { sweep } from '../../study/sweep'
import { swings } from '../../study/swings'
import { uncertainty } from '../../study/uncertainty'
import { problem } from '../../words/problem'
import type { Catalog } from '../../worksheet/catalog'
import { catalogFor } from '../../worksheet/catalogFor'
import type { OwnParts, StudyMessage, StudyOrder, StudyRequest } from './studies'

/** Columns that go through together; between them it is seen whether time is up. */
const TOGETHER = 64
/** Milliseconds after which the worker hears what else was asked. */
const TURN = 50
/** Sets of wanted quantities whose formulas are kept at hand. */
const KEPT = 8

/** Answers requests; used by the worker, and by tests and the bench without one. */
export function createStudyJob(post: (message: StudyMessage) => void): (request: StudyRequest) => Promise<void> {
  const running = new Map<number, AbortController>()
  const batchOf = createBatches()

  return async (request) => {
    const { id } = request
    if (request.ask === 'stop') {
      running.get(id)?.abort()
      return
    }
    const control = new AbortController()
    running.set(id, control)
    const evaluate: Evaluate = async (columns, wanted) => {
      const batch = batchOf(request.own, wanted)
      const answers: Awaited<ReturnType<Evaluate>>[number][] = []
      let since = performance.now()
      for (let start = 0; start < columns.length; start += TOGETHER) {
        answers.push(...batch.evaluate(columns.slice(start, start + TOGETHER)))
        if (performance.now() - since < TURN) continue
        await new Promise((next) => setTimeout(next))
        control.signal.throwIfAborted()
        since = performance.now()
      }
      return answers
    }
    try {
      post({ kind: 'done', id, result: await run(request.study, evaluate) })
    } catch (error) {
      if (control.signal.aborted) post({ kind: 'stopped', id })
      else post({ kind: 'failed', id, problem: problem('engine_failed', [], { why: String(error) }) })
    } finally {
      running.delete(id)
    }
  }
}

function run(study: StudyOrder, evaluate: Evaluate) {
  switch (study.kind) {
    case 'sweep':
      return sweep(evaluate, study.order)
    case 'solve':
      return solveBack(evaluate, study.order)
    case 'intervals':
      return uncertainty(evaluate, study.order)
    case 'swings':
      return swings(evaluate, study.order)
  }
}

/** The formulas for sets of wanted quantities, the last ones kept; made anew for a notebook with other worksheets or rows. */
function createBatches(): (own: OwnParts, wanted: readonly string[]) => Batch {
  const batches = new Map<string, Batch>()
  let known = ''
  let catalog: Catalog | null = null

  function drop(key: string): void {
    batches.get(key)?.close()
    batches.delete(key)
  }

  return ({ worksheets, rows }, wanted) => {
    const text = JSON.stringify([worksheets, rows])
    if (catalog === null || text !== known) {
      for (const key of [...batches.keys()]) drop(key)
      catalog = catalogFor(worksheets, rows)
      known = text
    }
    const key = wanted.join(' ')
    const batch = batches.get(key) ?? new Batch(catalog, wanted)
    batches.delete(key)
    batches.set(key, batch)
    const [oldest] = batches.keys()
    if (batches.size > KEPT && oldest !== undefined) drop(oldest)
    return batch
  }
}
