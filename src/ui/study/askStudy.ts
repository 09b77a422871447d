import { type Problem, problem } from '../../words/problem'
import type { OwnParts, Studies, Study, StudyMessage, StudyOrder, StudyRequest } from './studies'

const waiting = new Map<number, (message: StudyMessage) => void>()
let worker: Worker | null = null
let last = 0

/** One worker for the whole page, started with the first study. */
function started(): Worker {
  if (worker) return worker
  const fresh = new Worker(new URL('./studyWorker.ts', import.meta.url), { type: 'module', name: 'study' })
  fresh.onmessage = ({ data }: MessageEvent<StudyMessage>) => waiting.get(data.id)?.(data)
  fresh.onerror = ({ message }) => {
    fresh.terminate()
    worker = null
    const why = problem('engine_failed', [], { why: message || 'error' })
    for (const [id, tell] of waiting) tell({ kind: 'failed', id, problem: why })
  }
  worker = fresh
  return fresh
}

/** Has a study made; null when it was given up. */
export function askStudy<K extends Study>(
  kind: K,
  order: Studies[K]['order'],
  own: OwnParts,
  giveUp: AbortSignal,
): Promise<Studies[K]['result'] | null | Problem> {
  return new Promise((done) => {
    if (giveUp.aborted) return done(null)
    const id = ++last
    const to = started()
    const ask = (request: StudyRequest) => to.postMessage(request)
    const stop = () => {
      ask({ ask: 'stop', id })
      settle(null)
    }
    const settle = (answer: Studies[K]['result'] | null | Problem) => {
      waiting.delete(id)
      giveUp.removeEventListener('abort', stop)
      done(answer)
    }
    giveUp.addEventListener('abort', stop)
    waiting.set(id, (message) => {
      if (message.kind === 'done') settle(message.result as Studies[K]['result'])
      else settle(message.kind === 'failed' ? message.problem : null)
    })
    ask({ ask: 'study', id, study: { kind, order } as StudyOrder, own })
  })
}
