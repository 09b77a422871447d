import { createMemo, onMount, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { say } from '../../words/say'
import { judge } from '../../worksheet/judge'
import { labelOf } from '../labelOf'
import { useBook } from '../shell/book'
import { bandIn } from './bandIn'
import { useDrawn } from './drawn'
import type { GridRow } from './gridRow'
import { RangeBar } from './RangeBar'
import { rowName, ScenarioCell } from './ScenarioCell'
import { Slots } from './Slots'
import { UnitText } from './UnitText'

/** One quantity: its name, its unit, where the baseline lies, then a cell a scenario. */
export function GridRowView(props: { row: GridRow; index: number }) {
  const book = useBook()
  const quantity = () => props.row.quantity
  const unit = () => book.unit(quantity().name)
  const drawn = useDrawn()
  // Far from what is in sight, a row of many scenarios is its name alone.
  const isDrawn = createMemo(() => drawn.slotsOf(props.row.key).length > 0)
  let element!: HTMLDivElement
  onMount(() => drawn.watch(element, props.row.key))
  return (
    <div ref={element} role="row" class="row" aria-rowindex={props.index}>
      <div
        role="rowheader"
        id={rowName(props.row.key)}
        class="quantity"
        classList={{ 'own-row': quantity().own !== undefined }}
        aria-colindex={1}
      >
        {labelOf(quantity().name, quantity().row)}
        <Show when={quantity().own}>
          <span class="unseen">{say('page.own_row')}</span>
        </Show>
        <span class="unit" aria-hidden="true">
          <UnitText unit={unit()} />
        </span>
      </div>
      <div role="gridcell" class="unit" aria-colindex={2}>
        <Show when={isDrawn()}>
          <UnitText unit={unit()} />
        </Show>
      </div>
      <div role="gridcell" class="range" aria-colindex={3}>
        <Show when={isDrawn() && quantity().row.range}>{(span) => <BaselineBar row={props.row} span={span()} />}</Show>
      </div>
      <Slots row={props.row.key}>{(scenario) => <ScenarioCell row={props.row} scenario={scenario} />}</Slots>
    </div>
  )
}

function BaselineBar(props: { row: GridRow; span: readonly [number, number] }) {
  const book = useBook()
  const band = createMemo(() => bandIn(book, props.row.quantity.row, book.baseline()))
  const value = createMemo(() => {
    const outcome = book.outcome(book.baseline(), props.row.quantity.name)
    return hasValue(outcome) && typeof outcome.value === 'number' ? outcome.value : undefined
  })
  const side = () => {
    const [standing, wanted] = [value(), band()]
    return standing === undefined || !wanted ? null : judge(standing, wanted)
  }
  return <RangeBar span={props.span} band={band()} value={value()} side={side()} />
}
