import { createSignal } from 'solid-js'
import type { Problem } from '../../words/problem'
import type { LabImport } from './labImport'
import { withLabStore } from './labStore'

/** Whether a lab file is kept in this browser, and the way to have it so. */
export interface Keeping {
  kept(): boolean
  /** once it is under way: a second wish waits for the first */
  keep(): Promise<undefined | Problem>
}

/** Of a file that has just been read: its samples as columns, what was refused, and the file as it came. */
export function createKeeping({ head, columns, refusedCsv }: LabImport, file: Blob): Keeping {
  const [kept, setKept] = createSignal(false)
  let keeping: Promise<undefined | Problem> | null = null

  async function put(): Promise<undefined | Problem> {
    const trouble = await withLabStore((store) => store.put(head, { columns, refusedCsv }, file))
    setKept(!trouble)
    if (trouble) keeping = null
    return trouble
  }

  return {
    kept,
    keep() {
      keeping ??= put()
      return keeping
    },
  }
}

/** Of one that was opened from what is kept. */
export const KEPT: Keeping = { kept: () => true, keep: () => Promise.resolve(undefined) }
