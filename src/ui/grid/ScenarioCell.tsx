import { createMemo, Match, Show, Switch } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { cellName } from '../shell/selection'
import { bandIn } from './bandIn'
import { CellEditor } from './CellEditor'
import { ChoiceList } from './ChoiceList'
import { cellView } from './cellView'
import type { GridRow } from './gridRow'

/** One quantity in one scenario. */
export function ScenarioCell(props: { row: GridRow; scenario: string; column: number }) {
  const book = useBook()
  const quantity = () => props.row.quantity
  const name = () => cellName(props.row.key, props.scenario)
  const band = createMemo(() => bandIn(book, quantity().row, props.scenario))
  const view = createMemo(() => {
    const { name: id, row } = quantity()
    return cellView({
      row,
      outcome: book.outcome(props.scenario, id),
      base: props.column === 0 ? undefined : book.outcome(book.baseline(), id),
      source: book.source(props.scenario, id),
      unit: book.unit(id),
      band: band(),
    })
  })
  const isInput = () => 'input' in quantity().row
  const isChoice = () => {
    const { row } = quantity()
    return 'input' in row && row.input === 'choice'
  }
  const out = () => view().side === 'below' || view().side === 'above'

  return (
    <div
      role="gridcell"
      id={name()}
      class="cell"
      classList={{
        later: props.column > 0,
        input: isInput(),
        here: view().here,
        assumed: view().assumed,
        out: out(),
        refused: view().kind === 'refused',
        blank: view().kind === 'not_taken',
        selected: book.selection.isSelected(name()),
      }}
      aria-colindex={props.column + 4}
      aria-selected={book.selection.isSelected(name())}
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
      <Show when={view().said !== ''}>
        <span class="unseen">{view().said}</span>
      </Show>
      <Show when={book.selection.isEdited(name())}>
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
      <span class="unseen">{say('page.has_notices', { count: props.notices })}</span>
    </Show>
  )
}
