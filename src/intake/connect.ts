import { type Problem, problem } from '../words/problem'
import type { Imported, IntakeMessage, IntakeRequest } from './job'
import type { Known } from './known'
import type { Answers, Understanding } from './understanding'

export interface Progress {
  readonly bytes: number
  readonly total: number
  readonly rows: number
}

/** The page's view of the worker that reads laboratory files. */
export interface IntakeClient {
  understand(file: Blob, known: readonly Known[], answers: Answers): Promise<Understanding | Problem>
  /** null when it was cancelled: then nothing is left of it */
  import(
    file: Blob,
    understanding: Understanding,
    progress: (now: Progress) => void,
    cancel?: AbortSignal,
  ): Promise<Imported | null | Problem>
  close(): void
}

export function createIntakeClient(): IntakeClient {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  const waiting = new Map<number, (message: IntakeMessage) => void>()
  let last = 0
  worker.addEventListener('message', ({ data }: MessageEvent<IntakeMessage>) => waiting.get(data.id)?.(data))
  worker.addEventListener('error', ({ message }) => {
    for (const [id, tell] of waiting)
      tell({ kind: 'failed', id, problem: problem('lab_file_gone', [], { why: message }) })
  })

  function ask(request: (id: number) => IntakeRequest, heard: (message: IntakeMessage) => boolean): void {
    const id = ++last
    waiting.set(id, (message) => {
      if (heard(message)) waiting.delete(id)
    })
    worker.postMessage(request(id))
  }

  return {
    understand: (file, known, answers) =>
      new Promise((done) => {
        ask(
          (id) => ({ kind: 'understand', id, file, known, answers }),
          (message) => {
            if (message.kind === 'understood') done(message.understanding)
            if (message.kind === 'failed') done(message.problem)
            return message.kind !== 'progress'
          },
        )
      }),
    import: (file, understanding, progress, cancel) =>
      new Promise((done) => {
        ask(
          (id) => {
            cancel?.addEventListener('abort', () => worker.postMessage({ kind: 'cancel', id } satisfies IntakeRequest))
            return { kind: 'import', id, file, understanding }
          },
          (message) => {
            if (message.kind === 'progress') progress(message)
            if (message.kind === 'imported') done(message.imported)
            if (message.kind === 'cancelled') done(null)
            if (message.kind === 'failed') done(message.problem)
            return message.kind !== 'progress'
          },
        )
      }),
    close: () => worker.terminate(),
  }
}
