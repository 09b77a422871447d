import type { Edit } from '../../notebook/edit'
import type { Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'
import { labelOf } from '../labelOf'

/** What an edit changed, in a few words for a sentence; of several at once, the first that can be named. */
export function editWords(edit: Edit, notebook: Notebook, { quantities }: Outline): string {
  const named = edit.type === 'together' ? edit.edits : [edit]
  for (const one of named) {
    if (one.type === 'set_cell')
      return say('engine.what.cell', {
        quantity: labelOf(one.quantity, quantities.get(one.quantity)?.row),
        scenario: own(notebook.scenarios, one.scenario)?.name ?? '',
      })
    if (one.type === 'put_row') return say('engine.what.row', { name: one.row.row.label ?? one.row.row.name })
    if (one.type === 'put_worksheet') return say('engine.what.worksheet', { name: one.id })
  }
  return say('engine.what.other')
}
