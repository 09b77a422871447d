import type { Accessor } from 'solid-js'
import type { Edit } from '../../notebook/edit'
import type { Problem } from '../../words/problem'
import { isProblem, problem } from '../../words/problem'
import { createHeld } from './held'

/** What the page may say of the last edit. `saved` only after the store has confirmed it on the disk. */
export type Saving =
  | { readonly state: 'saved' }
  | { readonly state: 'saving' }
  | { readonly state: 'failed'; readonly why: Problem }
  /** there is nowhere to keep it: storage is blocked, or this tab only reads */
  | { readonly state: 'not_kept' }

export interface Saver {
  readonly saving: Accessor<Saving>
  /** that they are being kept is told at once, and shown with the next change or by `show` */
  put(edits: readonly Edit[]): void
  show(): void
  again(): void
  /** resolves when nothing waits any more, or saving has failed */
  settled(): Promise<void>
}

/**
 * Hands edits to `append` one batch after another, in order. A batch that failed stays in front of the queue, so that
 * trying again keeps the log without a gap.
 * @param ready resolves when the page has a moment for the first of them
 */
export function createSaver(
  append: (edits: readonly Edit[]) => Promise<undefined | Problem>,
  ready?: () => Promise<unknown>,
): Saver {
  const saving = createHeld<Saving>({ state: 'saved' })
  const waiting: Edit[] = []
  let running: Promise<void> | null = null

  async function run(): Promise<void> {
    saving.set({ state: 'saving' })
    if (ready) await ready()
    while (waiting.length > 0) {
      const batch = waiting.slice()
      const trouble = await append(batch).catch(unexpected)
      if (isProblem(trouble)) {
        saving.set({ state: 'failed', why: trouble })
        saving.show()
        return
      }
      waiting.splice(0, batch.length)
    }
    saving.set({ state: 'saved' })
    saving.show()
  }

  function start(): void {
    running ??= run().finally(() => {
      running = null
    })
  }

  return {
    saving: saving.read,
    put(edits) {
      waiting.push(...edits)
      start()
    },
    show: saving.show,
    again() {
      start()
      saving.show()
    },
    settled: () => running ?? Promise.resolve(),
  }
}

function unexpected(error: unknown): Problem {
  return problem('not_saved', [], { why: error instanceof Error ? error.message : String(error) })
}
