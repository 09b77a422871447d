import type { Edit } from '../../notebook/edit'
import type { Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { forget, usersOf } from '../../notebook/rowCommands'
import { together } from '../../notebook/together'
import { type Problem, problem } from '../../words/problem'
import { hasWords, say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'
import { copyWorksheet } from '../../worksheet/copyWorksheet'
import type { Definition } from '../../worksheet/definition'
import { worksheetLabel } from '../grid/worksheetLabel'
import { helpOf, labelOf } from '../labelOf'

/** A copy of any worksheet, with the words that the page has for it and rows under names of its own. */
export function copied(original: Definition, catalog: Outline): Definition {
  const words = (key: string) => (hasWords(key) ? say(key) : '')
  const group = (id: string) => {
    const label = original.groups.find((one) => one.id === id)?.label
    return label ?? (words(`group.${original.id}.${id}`) || id.replaceAll('_', ' '))
  }
  return copyWorksheet(
    original,
    {
      label: copyLabel(worksheetLabel(original), catalog),
      help: original.help ?? words(`worksheet.${original.id}.help`),
      labelOf: (row) => labelOf(row.name, row),
      helpOf: (row) => helpOf(row.name, row),
      groupLabel: group,
    },
    isTaken(catalog),
  )
}

/** Two copies of one worksheet are told apart by a number. */
function copyLabel(name: string, catalog: Outline): string {
  const taken = new Set(catalog.worksheets.map(worksheetLabel))
  let label = say('sheets.copy_of', { name })
  for (let number = 2; taken.has(label); number++) label = say('sheets.copy_of_more', { name, number })
  return label
}

/** A worksheet with nothing in it yet; its first row is added from the menu of the page's other rows. */
export function emptyWorksheet(catalog: Outline, label: string): Definition {
  const taken = isTaken(catalog)
  let id = 'my_worksheet'
  for (let number = 2; taken(id); number++) id = `my_worksheet_${number}`
  return {
    format: 'basinbook-worksheet',
    version: 1,
    id,
    edition: 1,
    label,
    takes: [],
    groups: [{ id: 'rows', label: say('sheets.rows'), rows: [] }],
  }
}

/** A worksheet of one's own taken out with what was typed in its rows; refused while formulas elsewhere read them. */
export function removeWorksheet(notebook: Notebook, catalog: Outline, id: string): Edit | Problem {
  const names = [...catalog.quantities.values()].flatMap(({ name, worksheet, own: row }) =>
    worksheet === id && row === undefined ? [name] : [],
  )
  const inside = new Set(names)
  const users = [...new Set(names.flatMap((name) => usersOf(notebook, catalog, name)))].filter(
    (user) => !inside.has(user),
  )
  if (users.length > 0) return problem('worksheet_in_use', [], { id, users })
  return together(...names.flatMap((name) => forget(notebook, name)), { type: 'remove_worksheet', id })
}

/** One place up (-1) or down (1) among the worksheets of one's own; null at the end. */
export function moveWorksheet({ worksheets }: Notebook, id: string, by: -1 | 1): Edit | null {
  const ids = Object.keys(worksheets)
  const left = ids.filter((other) => other !== id)
  const at = ids.indexOf(id) + by
  if (at < 0 || at > left.length) return null
  const before = left[at]
  const put: Edit = {
    type: 'put_worksheet',
    id,
    definition: own(worksheets, id),
    ...(before !== undefined && { before }),
  }
  return together({ type: 'remove_worksheet', id }, put)
}

function isTaken({ quantities, solves, worksheets }: Outline): (name: string) => boolean {
  const ids = new Set(worksheets.map(({ id }) => id))
  return (name) => quantities.has(name) || solves.has(name) || ids.has(name)
}
