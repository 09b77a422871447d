import { For } from 'solid-js'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { ScenarioHead } from './ScenarioHead'

/** The heading row of a worksheet's grid: the scenarios side by side, the same in every worksheet. */
export function GridHead(props: { worksheet: string }) {
  const book = useBook()
  return (
    <div role="row" class="row head" aria-rowindex={1}>
      <div role="columnheader" class="label quantity" aria-colindex={1}>
        {say('page.col.quantity')}
      </div>
      <div role="columnheader" class="label unit" aria-colindex={2}>
        {say('page.col.unit')}
      </div>
      <div role="columnheader" class="label range" aria-colindex={3}>
        {say('page.col.range')}
      </div>
      <For each={book.scenarios()}>
        {(scenario, index) => <ScenarioHead worksheet={props.worksheet} scenario={scenario} column={index()} />}
      </For>
    </div>
  )
}
