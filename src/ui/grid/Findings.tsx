import { createMemo, For, Show } from 'solid-js'
import { say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { useBook } from '../shell/book'
import { findingsOf } from './findingsOf'
import { groupsOf } from './gridRow'

/** Under a worksheet: what stands out in it, and in which scenarios. */
export function Findings(props: { definition: Definition }) {
  const book = useBook()
  const rows = createMemo(() =>
    groupsOf(props.definition, book.catalog())
      .flatMap((group) => group.rows)
      // A row that is shown here but belongs elsewhere speaks there.
      .filter(({ quantity }) => quantity.worksheet === props.definition.id),
  )
  const findings = createMemo(() => findingsOf(book, rows()))
  const names = (ids: readonly string[]) => {
    if (ids.length === book.scenarios().length && ids.length > 1) return say('page.every_scenario')
    return ids.map((id) => book.notebook().scenarios[id]?.name ?? '').join(', ')
  }
  return (
    <Show when={findings().length > 0}>
      <ul class="findings still">
        <For each={findings()}>
          {(finding) => (
            <li>
              <span classList={{ warm: finding.out, out: finding.out }}>{finding.text}</span>{' '}
              <span class="quiet">{names(finding.scenarios)}</span>
            </li>
          )}
        </For>
      </ul>
    </Show>
  )
}
