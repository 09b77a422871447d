import { type Problem, problem } from '../words/problem'
import type { BatchMessage, BatchOrder, BatchRequest } from './batchJob'
import type { Results } from './results'

/** The page's view of the worker for long runs of columns. */
export interface BatchClient {
  /** null when it was cancelled: then nothing is left of it. `progress` is told how many samples are done. */
  evaluate(order: BatchOrder, progress: (done: number) => void, cancel: AbortSignal): Promise<Results | null | Problem>
  close(): void
}

/** The worker is started with the first order. */
export function createBatchClient(
  startWorker = () => new Worker(new URL('./batchWorker.ts', import.meta.url), { type: 'module', name: 'batch' }),
): BatchClient {
  const waiting = new Map<number, (message: BatchMessage) => void>()
  let worker: Worker | null = null
  let last = 0

  function started(): Worker {
    if (worker) return worker
    const fresh = startWorker()
    fresh.onmessage = ({ data }: MessageEvent<BatchMessage>) => waiting.get(data.id)?.(data)
    fresh.onerror = ({ message }) => {
      fresh.terminate()
      worker = null
      const why = problem('engine_failed', [], { why: message || 'error' })
      for (const [id, tell] of waiting) tell({ kind: 'failed', id, problem: why })
    }
    worker = fresh
    return fresh
  }

  return {
    evaluate: (order, progress, cancel) =>
      new Promise((done) => {
        if (cancel.aborted) return done(null)
        const id = ++last
        const to = started()
        const ask = (request: BatchRequest) => to.postMessage(request)
        const stop = () => ask({ kind: 'cancel', id })
        const settle = (answer: Results | null | Problem) => {
          waiting.delete(id)
          cancel.removeEventListener('abort', stop)
          done(answer)
        }
        cancel.addEventListener('abort', stop)
        waiting.set(id, (message) => {
          if (message.kind === 'progress') progress(message.done)
          else if (message.kind === 'evaluated') settle(cancel.aborted ? null : message.results)
          else settle(message.kind === 'failed' ? message.problem : null)
        })
        ask({ kind: 'evaluate', id, order })
      }),
    close() {
      worker?.terminate()
      worker = null
    },
  }
}
