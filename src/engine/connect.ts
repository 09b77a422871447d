import { apply } from '../notebook/apply'
import type { CellPlace } from '../notebook/cellPlace'
import type { Edit } from '../notebook/edit'
import type { Notebook } from '../notebook/notebook'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Change, EngineClient } from './client'
import type { Answer, Request } from './messages'

/** How long an answer may take before the worker counts as run away, in milliseconds. */
const PATIENCE = 10_000
const MOST_RESTARTS = 2

type Part = (changes: readonly Change[]) => void

interface Waiting {
  readonly part: Part
  readonly done: () => void
  readonly timer: ReturnType<typeof setTimeout>
  readonly edits: readonly Edit[]
}

type Ask =
  | { readonly ask: 'open'; readonly notebook: Notebook }
  | { readonly ask: 'edit'; readonly edits: readonly Edit[] }
  | { readonly ask: 'formulas_under'; readonly cells: readonly CellPlace[] }

/**
 * The page's end of the engine. It keeps the document beside the worker: when the worker dies, fails or does not
 * answer in time, a new one is started from the document and every cell is sent again. Where that stops it once more, the
 * edits that began it are taken back first.
 */
export function connectEngine(startWorker: () => Worker, patience = PATIENCE): EngineClient {
  let worker: Worker
  let notebook: Notebook | null = null
  let lastId = 0
  /** restarts in a row without an answer between them: a document that stops every worker must not start them for ever */
  let failures = 0
  const waiting = new Map<number, Waiting>()
  /** what was asked when the first of these restarts came about */
  let suspects: readonly Edit[] = []
  /** between two workers: what is edited then is part of the document that the next one opens */
  let between = false
  let runaway: (edits: readonly Edit[]) => Problem | null = () => null
  const listeners: ((why: Problem, changes: readonly Change[]) => void)[] = []

  function start(): void {
    worker = startWorker()
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      const request = waiting.get(data.id)
      if (!request) return
      if ('problem' in data) return void restart(data.problem)
      request.part(data.changes)
      if (data.more) return
      clearTimeout(request.timer)
      waiting.delete(data.id)
      failures = 0
      request.done()
    }
    worker.onerror = (event) => restart(problem('engine_failed', [], { why: event.message || 'error' }))
  }

  async function ask(request: Ask): Promise<readonly Change[]> {
    const all: Change[] = []
    await inParts(request, (changes) => void all.push(...changes))
    return all
  }

  function inParts(request: Ask, part: Part): Promise<void> {
    const id = ++lastId
    return new Promise((done) => {
      const timer = setTimeout(() => restart(problem('engine_slow', [], { seconds: patience / 1000 })), patience)
      waiting.set(id, { part, done, timer, edits: request.ask === 'edit' ? request.edits : [] })
      worker.postMessage({ id, ...request } satisfies Request)
    })
  }

  function restart(why: Problem): void {
    worker.terminate()
    const unanswered = [...waiting.values()]
    waiting.clear()
    for (const request of unanswered) clearTimeout(request.timer)
    if (failures === 0) suspects = unanswered[0]?.edits ?? []
    start()
    // The requests that were under way are part of the document that is opened now.
    for (const request of unanswered) request.done()
    if (!notebook) return
    if (++failures > MOST_RESTARTS) {
      for (const listener of listeners) listener(problem('engine_gave_up', [], { ...why.facts }), [])
      return
    }
    const said = failures > 1 && suspects.length > 0 ? withoutSuspects() : null
    void inParts({ ask: 'open', notebook }, (changes) => {
      for (const listener of listeners) listener(said ?? why, changes)
    })
  }

  function withoutSuspects(): Problem | null {
    between = true
    const said = runaway(suspects)
    between = false
    suspects = []
    return said
  }

  start()
  return {
    open(next, part) {
      notebook = next
      return inParts({ ask: 'open', notebook: next }, part)
    },
    edit(edits) {
      // Asked first: the worker is at work while this end follows.
      const answer = between ? Promise.resolve([]) : ask({ ask: 'edit', edits })
      for (const edit of edits) {
        if (!notebook) break
        const applied = apply(notebook, edit)
        if (!isProblem(applied)) notebook = applied.notebook
      }
      return answer
    },
    formulasUnder: (cells) => ask({ ask: 'formulas_under', cells }),
    onRestart(listener) {
      listeners.push(listener)
    },
    onRunaway(listener) {
      runaway = listener
    },
    close() {
      worker.terminate()
      for (const request of waiting.values()) clearTimeout(request.timer)
      waiting.clear()
    },
  }
}

/** The engine in its module worker. */
export function createEngineClient(): EngineClient {
  return connectEngine(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'engine' }))
}
