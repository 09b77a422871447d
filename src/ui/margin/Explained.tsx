import { createMemo, For, Show } from 'solid-js'
import { lockedFunction } from '../../functions/registry'
import { say } from '../../words/say'
import type { Band } from '../../worksheet/definition'
import { countsIn } from '../countsIn'
import { decimalsOf } from '../decimalsOf'
import { focusCell } from '../grid/focusCell'
import { labelOf } from '../labelOf'
import { Equation } from '../reference/Equation'
import { useBook } from '../shell/book'
import { formulas } from '../shell/formulas'
import { placeLink } from '../shell/place'
import { type Cell, cellName } from '../shell/selection'
import { shownValue } from '../shownValue'
import { spanText } from './spanText'

/** How the selected cell is worked out: equation, inputs with their values, limits, sources, formula, what uses it. */
export function Explained(props: { cell: Cell; band: Band | undefined }) {
  const book = useBook()
  const quantity = () => props.cell.row.quantity
  const row = () => quantity().row
  const functions = createMemo(() => quantity().calls.flatMap((name) => lockedFunction(name) ?? []))
  const unit = () => book.unit(quantity().name)
  const span = (limits: readonly [number, number] | undefined) =>
    limits ? spanText(limits[0], limits[1], row().unit, unit(), decimalsOf(row())) : ''
  const wanted = () => spanText(props.band?.low, props.band?.high, row().unit, unit(), decimalsOf(row()))
  const accept = () => {
    const now = row()
    return 'accept' in now ? span(now.accept) : ''
  }
  const plausible = () => {
    const now = row()
    return 'plausible' in now ? span(now.plausible) : ''
  }
  const formula = () => {
    const now = row()
    if (!('formula' in now)) return ''
    return quantity().own === undefined
      ? now.formula
      : (formulas()?.toShown(now.formula, book.notebook()) ?? now.formula)
  }
  const holds = () =>
    functions().flatMap((f) =>
      f.parameters
        .filter(({ name, choices }) => !choices && quantity().reads.includes(name))
        .map(({ name, unit: canonical, fitted, min, max }) => {
          const [low, high] = fitted ?? [min, max]
          const limits = spanText(low, high, canonical, book.unit(name), 0)
          return limits === '' ? '' : `${labelOf(name)} ${limits}`
        })
        .filter((text) => text !== ''),
    )

  return (
    <>
      <Show when={wanted()}>
        {(text) => (
          <section>
            <h3>{say('page.margin.wanted')}</h3>
            <p>{text()}</p>
            <p class="quiet">{props.band?.source}</p>
          </section>
        )}
      </Show>
      <Show when={functions().length > 0 || quantity().reads.length > 0}>
        <section>
          <h3>{say('page.margin.worked_out')}</h3>
          <For each={functions().slice(0, 2)}>{(f) => <Equation tex={f.equation} />}</For>
          <dl class="inputs">
            <For each={quantity().reads}>{(name) => <Linked quantity={name} scenario={props.cell.scenario} />}</For>
          </dl>
        </section>
      </Show>
      <Show when={holds().length > 0}>
        <section>
          <h3>{say('page.margin.holds')}</h3>
          <p>{holds().join(' · ')}</p>
        </section>
      </Show>
      <Show when={accept()}>
        <section>
          <h3>{say('page.margin.accepted')}</h3>
          <p>{accept()}</p>
          <Show when={plausible()}>
            {(text) => <p class="quiet">{say('page.margin.plausible', { span: text() })}</p>}
          </Show>
        </section>
      </Show>
      <Show when={row().source || functions().length > 0}>
        <section>
          <h3>{say('page.margin.source')}</h3>
          <Show when={row().source}>{(text) => <p>{text()}</p>}</Show>
          <For each={functions()}>
            {(f) => (
              <p>
                {f.source}{' '}
                <a class="link" href={placeLink({ page: 'functions', part: f.name })}>
                  {f.name}
                </a>
              </p>
            )}
          </For>
        </section>
      </Show>
      <section>
        <h3>{say('page.margin.formula')}</h3>
        <Show when={formula()} fallback={<p class="code">{quantity().name}</p>}>
          {(text) => (
            <p class="code">
              {quantity().name} = {text()}
            </p>
          )}
        </Show>
        <Show when={formula() && countsIn(row().unit, unit())}>{(text) => <p class="quiet">{text()}</p>}</Show>
      </section>
      <Show when={quantity().readBy.length > 0}>
        <section>
          <h3>{say('page.margin.used_by')}</h3>
          <ul class="users">
            <For each={quantity().readBy}>
              {(name) => (
                <li>
                  <GoTo quantity={name} scenario={props.cell.scenario} />
                </li>
              )}
            </For>
          </ul>
        </section>
      </Show>
    </>
  )
}

function Linked(props: { quantity: string; scenario: string }) {
  const book = useBook()
  const entered = () => {
    const row = book.catalog().quantities.get(props.quantity)?.row
    return row !== undefined && 'input' in row
  }
  return (
    <div>
      <dt>
        <GoTo quantity={props.quantity} scenario={props.scenario} />
      </dt>
      <dd classList={{ pen: entered() }}>{shownValue(book, props.scenario, props.quantity) || '–'}</dd>
    </div>
  )
}

/** A quantity's name that leads to its cell. */
function GoTo(props: { quantity: string; scenario: string }) {
  const book = useBook()
  const target = () => book.rows().find((row) => row.quantity.name === props.quantity)
  return (
    <Show when={target()} fallback={labelOf(props.quantity)}>
      {(row) => (
        <button
          type="button"
          class="to"
          onClick={() => {
            book.selection.select(cellName(row().key, props.scenario))
            focusCell(book)
          }}
        >
          {labelOf(props.quantity, row().quantity.row)}
        </button>
      )}
    </Show>
  )
}
