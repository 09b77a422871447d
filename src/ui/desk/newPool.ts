import { newNotebook } from '../../notebook/create'
import { type Cell, cellKey, type Notebook, type Profile } from '../../notebook/notebook'
import { baselineOf } from '../../notebook/order'
import { say } from '../../words/say'

/** What most pools at this desk are, in the form to be seen and changed: never a reading, never a size. */
const USUAL: Readonly<Record<string, string>> = {
  water_body: 'pool',
  use: 'private',
  sanitizer: 'chlorine',
  target_set: 'salt_cell_private',
}

/** A pool with this name. */
export function newPool(name: string, profile: Profile): Notebook {
  const notebook = newNotebook(name, say('page.notebooks.baseline_name'), profile)
  const { id } = baselineOf(notebook)
  const cells = Object.entries(USUAL).map(([quantity, choice]): [string, Cell] => [
    cellKey(id, quantity),
    { kind: 'choice', id: choice },
  ])
  return { ...notebook, cells: Object.fromEntries(cells) }
}
