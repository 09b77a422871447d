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
  return (
    <Menu
      anchor={props.anchor}
      label={say('page.cells.menu')}
      items={cellMenuItems(book)}
      onClose={() => opened()?.what === 'cells' && openOver(null)}
    />
  )
}
