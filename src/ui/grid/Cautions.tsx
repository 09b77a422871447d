import { createMemo, For, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { cautionText } from '../cautionText'
import { useBook } from '../shell/book'
import { groupsOf } from './gridRow'

/** Under a worksheet: what to take care of, where one of its rows comes to an amount or a yes in any scenario. */
export function Cautions(props: { definition: Definition }) {
  const book = useBook()
  const rows = createMemo(() =>
    groupsOf(props.definition, book.catalog())
      .flatMap((group) => group.rows)
      .filter(({ quantity }) => quantity.worksheet === props.definition.id && quantity.row.cautions),
  )
  const isDue = (name: string) =>
    book.scenarios().some((scenario) => {
      const outcome = book.outcome(scenario, name)
      return hasValue(outcome) && (outcome.value === true || (typeof outcome.value === 'number' && outcome.value > 0))
    })
  const cautions = createMemo(() => [
    ...new Set(rows().flatMap(({ quantity }) => (isDue(quantity.name) ? (quantity.row.cautions ?? []) : []))),
  ])
  return (
    <Show when={cautions().length > 0}>
      <div class="cautions still">
        <h3>{say('page.cautions')}</h3>
        <ul>
          <For each={cautions()}>{(caution) => <li>{cautionText(caution)}</li>}</For>
        </ul>
      </div>
    </Show>
  )
}
