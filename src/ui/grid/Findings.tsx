import { createMemo, createSignal, For, mapArray, Show } from 'solid-js'
import { say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { labelOf } from '../labelOf'
import { afterDrawing } from '../shell/afterDrawing'
import { useBook } from '../shell/book'
import { findingsOf } from './findingsOf'
import { groupsOf } from './gridRow'

const MOST_NAMES = 4

/** Under a worksheet: what stands out in it, and in which scenarios. */
export function Findings(props: { definition: Definition }) {
  const book = useBook()
  // They look at every scenario, drawn or not: the grid is drawn first.
  const [begun, setBegun] = createSignal(false)
  afterDrawing(() => setBegun(true))
  const rows = createMemo(() =>
    (begun() ? groupsOf(props.definition, book.catalog()) : [])
      .flatMap((group) => group.rows)
      // A row that is shown here but belongs elsewhere speaks there.
      .filter(({ quantity }) => quantity.worksheet === props.definition.id),
  )
  // One memo a row: a change looks again at the rows that it changed and at no others.
  const byRow = mapArray(rows, (row) => createMemo(() => findingsOf(book, row)))
  const findings = createMemo(() => byRow().flatMap((found) => found()))
  const names = (ids: readonly string[]) => {
    if (ids.length === book.scenarios().length && ids.length > 1) return say('page.every_scenario')
    const first = ids.slice(0, MOST_NAMES).map((id) => book.scenario(id)?.name ?? '')
    const more = ids.length - first.length
    return more > 0 ? say('page.and_more', { first: first.join(', '), count: more }) : first.join(', ')
  }
  return (
    <Show when={findings().length > 0}>
      <ul class="findings still">
        <For each={findings()}>
          {(finding) => (
            <li>
              <Show when={finding.out}>
                <b>{labelOf(finding.quantity, book.catalog().quantities.get(finding.quantity)?.row)}.</b>{' '}
              </Show>
              <span classList={{ warm: finding.out }}>{finding.text}</span>{' '}
              <span class="quiet">{names(finding.scenarios)}</span>
            </li>
          )}
        </For>
      </ul>
    </Show>
  )
}
