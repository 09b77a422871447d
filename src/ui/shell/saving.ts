import { type Accessor, createSignal } from 'solid-js'
import type { Edit } from '../../notebook/edit'
import type { Problem } from '../../words/problem'
import { isProblem, problem } from '../../words/problem'

/** What the page may say of the last edit. `saved` only after the store has confirmed it on the disk. */
export type Saving =
  | { readonly state: 'saved' }
  | { readonly state: 'saving' }
  | { readonly state: 'failed'; readonly why: Problem }
  /** there is nowhere to keep it: storage is blocked, or this tab only reads */
  | { readonly state: 'not_kept' }

export interface Saver {
  readonly saving: Accessor<Saving>
  put(edits: readonly Edit[]): void
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
  const [saving, setSaving] = createSignal<Saving>({ state: 'saved' })
  const waiting: Edit[] = []
  let running: Promise<void> | null = null

  async function run(): Promise<void> {
    setSaving({ state: 'saving' })
    if (ready) await ready()
    while (waiting.length > 0) {
      const batch = waiting.slice()
      const trouble = await append(batch).catch(unexpected)
      if (isProblem(trouble)) {
        setSaving({ state: 'failed', why: trouble })
        return
      }
      waiting.splice(0, batch.length)
    }
    setSaving({ state: 'saved' })
  }

  function start(): void {
    running ??= run().finally(() => {
      running = null
    })
  }

  return {
    saving,
    put(edits) {
      waiting.push(...edits)
      start()
    },
    again: start,
    settled: () => running ?? Promise.resolve(),
  }
}

function unexpected(error: unknown): Problem {
  return problem('not_saved', [], { why: error instanceof Error ? error.message : String(error) })
}
