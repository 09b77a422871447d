import type { Edit } from '../../notebook/edit'
import { own } from '../../notebook/own'
import { rows as words } from '../../words/en/rows'
import { isProblem, type Problem } from '../../words/problem'
import { addWords, say, sentence } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import type { GridRow } from '../grid/gridRow'
import { openOver } from '../grid/opened'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import type { MenuItem } from '../shell/Menu'

addWords(words)

/** What a reader can do with rows of their own, for the menu of the selected cells; what does it comes when it is chosen. */
export function rowItems(book: Book, row: GridRow): readonly MenuItem[] {
  const disabled = !book.writable()
  const act = (label: string, run: () => void): MenuItem => ({ kind: 'act', label, act: run, disabled })
  const add = act(say('rows.add_short'), () => openOver({ what: 'row', row, act: 'add' }))
  const isMine = row.quantity.own !== undefined
  const inOwn = own(book.notebook().worksheets, row.worksheet) !== undefined && row.quantity.worksheet === row.worksheet
  if (!isMine && !inOwn) return [{ kind: 'heading', label: say('rows.heading') }, add]
  return [
    { kind: 'heading', label: say('rows.heading') },
    add,
    act(say('rows.change_short'), () => openOver({ what: 'row', row, act: 'change' })),
    act(say('rows.up'), () => void move(book, row, -1)),
    act(say('rows.down'), () => void move(book, row, 1)),
    act(say('rows.remove'), () => void remove(book, row)),
  ]
}

async function move(book: Book, row: GridRow, by: -1 | 1): Promise<void> {
  const { moveRow } = await import('../../notebook/rowCommands')
  const { name, own: id } = row.quantity
  if (id !== undefined) {
    const names = book.rows().flatMap((one) => (one.worksheet === row.worksheet ? [one.quantity.name] : []))
    send(book, moveRow(book.notebook(), id, names, by))
    return
  }
  const { withMovedRow } = await import('../../worksheet/changedDefinition')
  await change(book, row, (definition) => withMovedRow(definition, name, by))
}

async function remove(book: Book, row: GridRow): Promise<void> {
  const { removeRow, forget, usersOf } = await import('../../notebook/rowCommands')
  const { name, own: id } = row.quantity
  if (id !== undefined) {
    if (send(book, removeRow(book.notebook(), book.catalog(), id))) announce(say('rows.removed', { name }))
    return
  }
  const [{ withoutRow }, { together }, { problem }, { tried }, { ownDefinition }] = await Promise.all([
    import('../../worksheet/changedDefinition'),
    import('../../notebook/together'),
    import('../../words/problem'),
    import('./tried'),
    import('./ownDefinition'),
  ])
  const users = usersOf(book.notebook(), book.catalog(), name)
  const definition = ownDefinition(book.notebook(), row.worksheet)
  if (users.length > 0 || !definition) {
    send(book, problem('row_in_use', [], { name, users }))
    return
  }
  const edit = together(...forget(book.notebook(), name), {
    type: 'put_worksheet',
    id: definition.id,
    definition: withoutRow(definition, name),
  })
  const trouble = await tried(book, edit, '')
  if (send(book, trouble ?? edit)) announce(say('rows.removed', { name }))
}

type Change = (definition: Definition) => Definition

async function change(book: Book, row: GridRow, to: Change): Promise<void> {
  const { changeOwnWorksheet, ownDefinition } = await import('./ownDefinition')
  const definition = ownDefinition(book.notebook(), row.worksheet)
  if (!definition) return
  const trouble = await changeOwnWorksheet(book, to(definition))
  if (trouble) announce(sentence(trouble))
}

function send(book: Book, edit: Edit | Problem): boolean {
  const trouble = isProblem(edit) ? edit : book.dispatch(edit)
  if (trouble) announce(sentence(trouble))
  return trouble === null
}
