import { For, Show } from 'solid-js'
import { unitsOfKind } from '../../units/unit'
import { say } from '../../words/say'
import { countsIn } from '../countsIn'
import { openEditor } from '../grid/openEditor'
import { useBook } from '../shell/book'
import { placeLink } from '../shell/place'
import type { Cell } from '../shell/selection'
import { unitWords } from '../unitWords'
import { sourceText } from './sourceText'

/** What can be done with the selected cell, and where its value comes from. */
export function CellActs(props: { cell: Cell }) {
  const book = useBook()
  const quantity = () => props.cell.row.quantity
  const source = () => book.source(props.cell.scenario, quantity().name)
  const isTyped = () => source().from === 'typed'
  // A bare number is shown as per cent only where it is a share.
  const choices = () => {
    const { row } = quantity()
    const isShare = 'accept' in row && row.accept[1] <= 1
    return row.unit === '1' && !isShare ? [] : unitsOfKind(row.unit)
  }

  const isInput = () => 'input' in quantity().row
  return (
    <section>
      <Show when={isInput() || source().from !== 'none'}>
        <p class="quiet">{sourceText(book, props.cell.scenario, quantity().name)}</p>
      </Show>
      <Show when={source().cell?.kind === 'formula' && countsIn(quantity().row.unit, book.unit(quantity().name))}>
        {(text) => <p class="quiet">{text()}</p>}
      </Show>
      <div class="acts">
        <button type="button" class="act" disabled={!book.writable()} onClick={() => openEditor(book)}>
          {say(isInput() || isTyped() ? 'page.edit' : 'page.assume')}
        </button>
        <a class="act" href={placeLink({ page: 'trace', part: quantity().name, of: props.cell.scenario })}>
          {say('page.trace')}
        </a>
        <Show when={isTyped()}>
          <button
            type="button"
            class="act"
            disabled={!book.writable()}
            onClick={() =>
              book.dispatch({
                type: 'set_cell',
                scenario: props.cell.scenario,
                quantity: quantity().name,
                cell: null,
              })
            }
          >
            {say('page.clear')}
          </button>
        </Show>
        <Show when={choices().length > 1}>
          <label class="quiet">
            {say('page.shown_in')}{' '}
            <select
              class="field"
              disabled={!book.writable()}
              onChange={(event) =>
                book.dispatch({
                  type: 'set_unit',
                  quantity: quantity().name,
                  unit: event.currentTarget.value || null,
                })
              }
            >
              <option value="" selected={book.notebook().units[quantity().name] === undefined}>
                {say('page.shown_in_usual')}
              </option>
              <For each={choices()}>
                {(unit) => (
                  <option value={unit.code} selected={book.notebook().units[quantity().name] === unit.code}>
                    {unitWords(unit.code)}
                  </option>
                )}
              </For>
            </select>
          </label>
        </Show>
      </div>
    </section>
  )
}
