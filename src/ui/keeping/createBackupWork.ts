import { type Accessor, createSignal, onCleanup } from 'solid-js'
import { type Problem, problem } from '../../words/problem'
import type { BackupAsked, BackupTold } from './backupWorker'

/** Work on a backup, off the page: how far it is, and the way to stop it. */
export interface BackupWork {
  /** of 1; null while nothing runs */
  readonly at: Accessor<number | null>
  /** one after another: the next waits until this one has answered */
  ask<Result>(asked: Exclude<BackupAsked, { readonly do: 'stop' }>): Promise<Result | Problem>
  stop(): void
}

export function createBackupWork(): BackupWork {
  const [at, setAt] = createSignal<number | null>(null)
  let worker: Worker | null = null
  onCleanup(() => worker?.terminate())

  return {
    at,
    ask<Result>(asked: Exclude<BackupAsked, { readonly do: 'stop' }>) {
      worker ??= new Worker(new URL('./backupWorker.ts', import.meta.url), { type: 'module', name: 'backup' })
      const running = worker
      setAt(0)
      return new Promise<Result | Problem>((resolve) => {
        const end = (result: Result | Problem) => {
          setAt(null)
          resolve(result)
        }
        running.onmessage = ({ data }: MessageEvent<BackupTold>) => {
          if ('at' in data) setAt(data.at)
          else end(data.result as Result)
        }
        running.onerror = (event) => {
          running.terminate()
          worker = null
          end(problem('storage_failed', [], { why: event.message || 'error' }))
        }
        running.postMessage(asked)
      })
    },
    stop: () => worker?.postMessage({ do: 'stop' } satisfies BackupAsked),
  }
}
