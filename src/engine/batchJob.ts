import type { Value } from '../functions/define'
import type { Notebook } from '../notebook/notebook'
import { type Problem, problem } from '../words/problem'
import { catalogFor } from '../worksheet/catalogFor'
import { Batch } from './batch'
import { createResults, type Results } from './results'

/** One given quantity over all samples. */
export interface GivenColumn {
  readonly quantity: string
  /** canonical values; of a choice, places in `choices` */
  readonly values: Float64Array
  /** 1 where the sample has it */
  readonly taken: Uint8Array
  readonly choices?: readonly string[]
}

/** What a long run is asked to work out. */
export interface BatchOrder {
  readonly count: number
  readonly columns: readonly GivenColumn[]
  /** given alike for every sample that has no reading of its own of it */
  readonly constant: readonly (readonly [quantity: string, value: Value])[]
  readonly wanted: readonly string[]
  /** the notebook's own worksheets */
  readonly worksheets: Notebook['worksheets']
  /** the notebook's own rows */
  readonly rows: Notebook['rows']
}

export type BatchRequest =
  | { readonly kind: 'evaluate'; readonly id: number; readonly order: BatchOrder }
  | { readonly kind: 'cancel'; readonly id: number }

export type BatchMessage =
  | { readonly kind: 'progress'; readonly id: number; readonly done: number }
  | { readonly kind: 'evaluated'; readonly id: number; readonly results: Results }
  /** nothing of the run is left */
  | { readonly kind: 'cancelled'; readonly id: number }
  | { readonly kind: 'failed'; readonly id: number; readonly problem: Problem }

/** Samples that go through together; between them it is seen whether time is up. */
const TOGETHER = 64
/** Milliseconds after which the worker hears what else was asked, and says how far it is. */
const TURN = 100

/** Answers requests; used by the worker, and by tests without one. */
export function createBatchJob(post: (message: BatchMessage) => void): (request: BatchRequest) => Promise<void> {
  const cancelled = new Set<number>()
  const running = new Set<number>()
  return async (request) => {
    const { id } = request
    if (request.kind === 'cancel') {
      if (running.has(id)) cancelled.add(id)
      return
    }
    running.add(id)
    try {
      const results = await evaluate(
        request.order,
        (done) => post({ kind: 'progress', id, done }),
        () => cancelled.has(id),
      )
      post(results ? { kind: 'evaluated', id, results } : { kind: 'cancelled', id })
    } catch (error) {
      post({ kind: 'failed', id, problem: problem('engine_failed', [], { why: String(error) }) })
    } finally {
      running.delete(id)
      cancelled.delete(id)
    }
  }
}

/** All samples in turns; null when it was cancelled on the way. */
async function evaluate(
  { count, columns, constant, wanted, worksheets, rows }: BatchOrder,
  progress: (done: number) => void,
  cancelled: () => boolean,
): Promise<Results | null> {
  const batch = new Batch(catalogFor(worksheets, rows), wanted)
  try {
    const results = createResults(count, wanted)
    let since = performance.now()
    for (let start = 0; start < count; start += TOGETHER) {
      const samples = Array.from({ length: Math.min(TOGETHER, count - start) }, (_, i) => start + i)
      const outcomes = batch.evaluate(samples.map((sample) => givenOf(sample, columns, constant)))
      samples.forEach((sample, i) => {
        results.put(sample, outcomes[i] ?? [], batch.notices(i))
      })
      if (performance.now() - since < TURN) continue
      progress(start + samples.length)
      await new Promise((next) => setTimeout(next))
      if (cancelled()) return null
      since = performance.now()
    }
    return results.finish()
  } finally {
    batch.close()
  }
}

function givenOf(
  sample: number,
  columns: readonly GivenColumn[],
  constant: BatchOrder['constant'],
): Map<string, Value> {
  const given = new Map(constant)
  for (const { quantity, values, taken, choices } of columns) {
    if (taken[sample] !== 1) continue
    const value = values[sample] ?? Number.NaN
    const chosen = choices?.[value]
    if (!choices) given.set(quantity, value)
    else if (chosen !== undefined) given.set(quantity, chosen)
  }
  return given
}
