import type { Edit, SimpleEdit } from './edit'

/** Several edits as one step of history. */
export function together(...edits: readonly Edit[]): Edit {
  const simple = edits.flatMap((edit): readonly SimpleEdit[] => (edit.type === 'together' ? edit.edits : [edit]))
  const [only] = simple
  return simple.length === 1 && only !== undefined ? only : { type: 'together', edits: simple }
}
