import { For, Show } from 'solid-js'
import { displayUnit } from '../../units/profile'
import { unitsOfKind } from '../../units/unit'
import { say } from '../../words/say'
import { labelInside } from '../labelOf'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'

/** Units that nobody reads a test or measures a pool in. */
const RARE = /^(ng\/L|µg\/L|K|mm|mg|t|(US|imp) (ton|qt|pt|fl oz)|mL|week|year|g\/h|kg\/day|lb\/day|V)( |$)/

/** The unit in which a quantity is shown and a bare figure is read. */
export function UnitSelect(props: { quantity: string }) {
  const book = useBook()
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const unit = () => book.unit(props.quantity)
  const choices = () => {
    const canonical = row()?.unit ?? '1'
    return unitsOfKind(canonical).filter(({ code }) => code === canonical || code === unit() || !RARE.test(code))
  }
  const change = (code: string) => {
    const usual = displayUnit(row()?.unit ?? '1', book.notebook().profile)
    book.dispatch({ type: 'set_unit', quantity: props.quantity, unit: code === usual ? null : code })
  }
  return (
    <Show when={unitWords(unit()) !== ''} fallback={<span class="unit" />}>
      <Show when={choices().length > 1} fallback={<span class="unit quiet">{unitWords(unit())}</span>}>
        <select
          class="unit"
          aria-label={say('page.desk.unit_of', { quantity: labelInside(props.quantity, row()) })}
          disabled={!book.writable()}
          onChange={(event) => change(event.currentTarget.value)}
        >
          <For each={choices()}>
            {({ code }) => (
              <option value={code} selected={code === unit()}>
                {unitWords(code)}
              </option>
            )}
          </For>
        </select>
      </Show>
    </Show>
  )
}
