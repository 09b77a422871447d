import type { Cell } from './notebook'
import { planOf } from './planLink'

/** Whether two cells hold the very same thing: as it was entered, not just as it counts. */
export function sameCell(a: Cell | null | undefined, b: Cell | null | undefined): boolean {
  if (!a || !b) return !a && !b
  if (a.kind !== b.kind || planOf(a) !== planOf(b)) return false
  switch (a.kind) {
    case 'value':
      return b.kind === 'value' && sameEntry(a, b)
    case 'limit':
      return b.kind === 'limit' && a.side === b.side && sameEntry(a, b)
    case 'choice':
      return b.kind === 'choice' && a.id === b.id
    case 'formula':
      return b.kind === 'formula' && a.text === b.text
    case 'not_taken':
      return true
  }
}

type Entered = Extract<Cell, { kind: 'value' | 'limit' }>

function sameEntry(a: Entered, b: Entered): boolean {
  return a.entered === b.entered && a.unit === b.unit && a.canonical === b.canonical && a.method === b.method
}
