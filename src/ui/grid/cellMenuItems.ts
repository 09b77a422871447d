import { say } from '../../words/say'
import { rowItems } from '../rows/rowItems'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import type { MenuItem } from '../shell/Menu'
import { headName } from '../shell/selection'
import { copyRange, cutRange, pasteRange } from './clipboard'
import { focusCell } from './focusCell'
import { foldId, isRow } from './line'
import { openOver } from './opened'
import { clearRange, fillRange } from './rangeActs'
import { sayRange } from './sayRange'
import { selectWhole, type Whole } from './selectWhole'
import { setFold } from './setFold'
import { worksheetLabel } from './worksheetLabel'

/** What can be done with the selected cells, and with the scenario and the parts of the page that they stand in. */
export function cellMenuItems(book: Book): readonly MenuItem[] {
  const { selection } = book
  const line = selection.line()
  const scenario = book.scenario(book.scenarios()[selection.position().column] ?? '')
  if (!line || !scenario) return []
  const act = (label: string, run: () => void, off = false): MenuItem => ({
    kind: 'act',
    label,
    act: run,
    disabled: off,
  })
  const locked = !book.writable()
  const whole = (what: Whole) => () => {
    selectWhole(book, what)
    focusCell(book)
    sayRange(book)
  }
  const folding = (id: string, folded: boolean) => () => {
    setFold(book, id, folded)
    focusCell(book)
  }
  const definition = book.catalog().worksheets.find(({ id }) => id === line.worksheet)
  const name = definition ? worksheetLabel(definition) : line.worksheet
  return [
    act(say('page.cells.copy'), () => copyRange(book, false)),
    act(say('page.cells.copy_named'), () => copyRange(book, true)),
    act(say('page.cells.cut'), () => cutRange(book), locked),
    act(say('page.cells.paste'), () => void pasteRange(book), locked),
    act(say('page.cells.fill_right'), () => fillRange(book), locked),
    act(say('page.cells.clear'), () => clearRange(book), locked),
    ...(isRow(line) ? rowItems(book, line) : []),
    { kind: 'heading', label: say('page.cells.select') },
    act(say('page.cells.select_row'), whole('row')),
    act(say('page.cells.select_scenario'), whole('scenario')),
    act(say('page.cells.select_worksheet', { name }), whole('worksheet')),
    act(say('page.cells.select_to'), () => {
      focusCell(book)
      openOver({ what: 'reach' })
      announce(say('page.cells.press_next'))
    }),
    { kind: 'heading', label: say('page.cells.fold') },
    ...(isRow(line)
      ? [
          act(say('page.cells.fold_group'), folding(foldId(line.worksheet, line.group), true)),
          act(say('page.cells.fold_worksheet', { name }), folding(foldId(line.worksheet), true)),
        ]
      : [act(say('page.cells.unfold'), folding(line.fold, false))]),
    { kind: 'heading', label: say('page.cells.scenario') },
    act(say('page.cells.scenario_menu', { name: scenario.name }), () => {
      document.getElementById(headName(line.worksheet, scenario.id))?.click()
    }),
  ]
}
