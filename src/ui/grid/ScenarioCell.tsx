import { createMemo, Match, Show, Switch } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { cellName, headName } from '../shell/selection'
import { unitWords } from '../unitWords'
import { bandIn } from './bandIn'
import { CellEditor } from './CellEditor'
import { ChoiceList } from './ChoiceList'
import { cellView } from './cellView'
import { useDrawn } from './drawn'
import type { GridRow } from './gridRow'

/** The id of a row's heading. */
export function rowName(row: string): string {
  return `name-${row}`
}

/** One quantity in one scenario. */
export function ScenarioCell(props: { row: GridRow; scenario: string }) {
  const book = useBook()
  const drawn = useDrawn()
  const { selection } = book
  const quantity = () => props.row.quantity
  const column = () => drawn.place(props.scenario)
  // A row and a scenario are never another's: what is drawn for them goes when they go.
  const name = cellName(props.row.key, props.scenario)
  const band = createMemo(() => bandIn(book, quantity().row, props.scenario))
  const view = createMemo(() => {
    const { name: id, row } = quantity()
    return cellView({
      row,
      outcome: book.outcome(props.scenario, id),
      base: props.scenario === book.baseline() ? undefined : book.outcome(book.baseline(), id),
      source: book.source(props.scenario, id),
      unit: book.unit(id),
      band: band(),
      refused: quantity().refused,
    })
  })
  const isInput = () => 'input' in quantity().row
  const isChoice = () => {
    const { row } = quantity()
    return 'input' in row && row.input === 'choice'
  }
  const out = () => view().side === 'below' || view().side === 'above'
  const inRange = () => selection.isRowIn(props.row.key) && selection.isColumnIn(props.scenario)
  const width = () => {
    const chosen = drawn.width(props.scenario)
    return chosen === undefined ? undefined : `width:${chosen}px`
  }
  /** its row, its scenario and what it shows; what is open in it has names of its own */
  const label = () =>
    selection.isEdited(name)
      ? undefined
      : `${rowName(props.row.key)} ${headName(props.row.worksheet, props.scenario)} ${name}`
  /** the unit of a number, its place against the range, what it stands on */
  const said = () => {
    const { kind, said, state } = view()
    const unit = kind === 'number' ? unitWords(book.unit(quantity().name)) : ''
    return [unit, said, state]
      .filter((part) => part !== '')
      .map((part) => `, ${part}`)
      .join('')
  }

  return (
    <div
      role="gridcell"
      id={name}
      class="cell"
      classList={{
        later: column() > 0,
        input: isInput(),
        here: view().here,
        assumed: view().assumed,
        out: out(),
        refused: view().kind === 'refused',
        blank: view().kind === 'not_taken',
        selected: selection.isSelected(name),
        among: inRange(),
      }}
      style={width()}
      aria-colindex={column() + 4}
      aria-labelledby={label()}
      aria-selected={selection.isSelected(name) || inRange()}
      aria-readonly={!isInput() || !book.writable()}
      tabindex={-1}
    >
      <Switch>
        <Match when={view().figures}>
          {(figures) => (
            <>
              <span class="whole">{figures().whole}</span>
              <span class="fraction">
                {figures().fraction}
                <Mark notices={view().notices.length} />
              </span>
            </>
          )}
        </Match>
        <Match when={view().kind === 'needs' || view().kind === 'refused'}>
          <span class="needs">{view().text}</span>
        </Match>
        <Match when={view().text !== ''}>
          <span class="plain">
            {view().text}
            <Mark notices={view().notices.length} />
          </span>
        </Match>
      </Switch>
      <Show when={view().difference !== ''}>
        <span class="difference">{view().difference}</span>
      </Show>
      <span class="unseen">{said()}</span>
      <Show when={selection.isEdited(name)}>
        <Show when={isChoice()} fallback={<CellEditor row={props.row} scenario={props.scenario} />}>
          <ChoiceList row={props.row} scenario={props.scenario} />
        </Show>
      </Show>
    </div>
  )
}

/** A star where the margin has more to say. */
function Mark(props: { notices: number }) {
  return (
    <Show when={props.notices > 0}>
      <span class="mark" aria-hidden="true">
        *
      </span>
      <span class="unseen">, {say('page.has_notices', { count: props.notices })}</span>
    </Show>
  )
}
