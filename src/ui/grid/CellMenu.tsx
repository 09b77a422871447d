import { untrack } from 'solid-js'
import { cellMenu as words } from '../../words/en/cell-menu'
import { addWords, say } from '../../words/say'
import { useBook } from '../shell/book'
import { Menu } from '../shell/Menu'
import { cellMenuItems } from './cellMenuItems'
import { opened, openOver } from './opened'

addWords(words)

/** The menu of the selected cells. */
export function CellMenu(props: { anchor: HTMLElement }) {
  const book = useBook()
  // As it was opened: items made anew by what happens meanwhile would take the focus with them.
  const items = untrack(() => cellMenuItems(book))
  return (
    <Menu
      anchor={props.anchor}
      label={say('page.cells.menu')}
      items={items}
      onClose={() => opened()?.what === 'cells' && openOver(null)}
    />
  )
}
