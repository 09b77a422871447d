import { onMount } from 'solid-js'
import { say } from '../../words/say'
import { headKey, useDrawn } from './drawn'
import { ScenarioHead } from './ScenarioHead'
import { Slots } from './Slots'

/** The heading row of a worksheet's grid: the scenarios side by side, the same in every worksheet. */
export function GridHead(props: { worksheet: string }) {
  const drawn = useDrawn()
  let element!: HTMLDivElement
  onMount(() => drawn.watch(element, headKey(props.worksheet)))
  return (
    <div ref={element} role="row" class="row head" aria-rowindex={1}>
      <div role="columnheader" class="label quantity" aria-colindex={1}>
        {say('page.col.quantity')}
      </div>
      <div role="columnheader" class="label unit" aria-colindex={2}>
        {say('page.col.unit')}
      </div>
      <div role="columnheader" class="label range" aria-colindex={3}>
        {say('page.col.range')}
      </div>
      <Slots row={headKey(props.worksheet)}>
        {(scenario) => <ScenarioHead worksheet={props.worksheet} scenario={scenario} />}
      </Slots>
    </div>
  )
}
