import type { Forgetting } from '../../storage/forget'
import { blankRows } from '../lab/blankRows'
import type { TakenFrom } from './leftBehind'

/** What is done with the rows of a lab file. */
export type Wish = 'blank' | 'remove' | 'leave'

/**
 * What the store is told to do with lab files. Where rows go blank, the rows that were refused go too, since nobody can tell
 * whose they are.
 */
export function forgettingOf(imports: readonly TakenFrom[], wishOf: (id: string) => Wish): Forgetting {
  const chosen = (wish: Wish) => imports.filter(({ head }) => wishOf(head.id) === wish)
  return {
    removeImports: chosen('remove').map(({ head }) => head.id),
    blankImports: chosen('blank').map(({ head, body, rows }) => ({
      id: head.id,
      head,
      body: { columns: blankRows(body.columns, rows), refusedCsv: '' },
    })),
  }
}
