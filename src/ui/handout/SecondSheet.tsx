import { For, Show } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import { isForetold } from '../../notebook/foretold'
import type { Plan } from '../../planner/step'
import { say } from '../../words/say'
import { AssumedNote } from '../assumptions/AssumedNote'
import { methodWords } from '../desk/exactness'
import { bandIn } from '../grid/bandIn'
import { limitText } from '../grid/limitText'
import { labelOf } from '../labelOf'
import { spanText } from '../margin/spanText'
import { quantityWords, type Reader } from '../plan/planSentence'
import { useBook } from '../shell/book'
import { Wide } from '../shell/Wide'
import { shownValue } from '../shownValue'
import { unitWords } from '../unitWords'
import type { Sheet } from './sheet'

/** What a reader of numbers asks for, in the order of the bench. */
const ROWS = [
  'free_chlorine',
  'total_chlorine',
  'ph',
  'temperature',
  'total_alkalinity',
  'calcium_hardness',
  'cyanuric_acid',
  'salt',
  'cell_salt_reading',
  'borate',
  'copper',
  'iron',
  'phosphate',
  'turbidity',
] as const

/** What each step is foretold to leave. */
const FORETOLD = ['ph', 'total_alkalinity', 'calcium_hardness', 'cyanuric_acid', 'salt', 'free_chlorine'] as const

/** The numbers behind the first sheet, for those who want them. */
export function SecondSheet(props: { sheet: Sheet; plan: Plan; scenario: string; reader: Reader }) {
  const book = useBook()
  const row = (quantity: string) => book.catalog().quantities.get(quantity)?.row
  const cell = (quantity: string) => book.source(props.scenario, quantity).cell
  const read = (quantity: string) => {
    const now = cell(quantity)
    const of = row(quantity)
    if (now?.kind === 'limit' && of) {
      const unit = book.unit(quantity)
      return `${limitText(now, of, unit)} ${unitWords(unit)}`
    }
    return shownValue(book, props.scenario, quantity)
  }
  const method = (quantity: string) => {
    const now = cell(quantity)
    if (now?.kind === 'formula') return say('handout.numbers.assumed')
    return (now?.kind === 'value' || now?.kind === 'limit') && now.method !== undefined ? methodWords(now.method) : ''
  }
  const wanted = (quantity: string) => {
    const of = row(quantity)
    const band = of && bandIn(book, of, props.scenario)
    return of && band ? spanText(band.low, band.high, of.unit, book.unit(quantity), of.decimals ?? 2) : ''
  }
  const at = (water: Plan['end'], quantity: string) => {
    const value = water.get(quantity)
    return typeof value === 'number' ? quantityWords(props.reader, quantity, value) : ''
  }
  const foretold = () => isForetold(book.scenario(props.scenario))
  const rows = () => ROWS.filter((quantity) => read(quantity) !== '')
  const dosed = () =>
    props.plan.steps.flatMap((step, index) =>
      step.kind === 'dose' || step.kind === 'dilute' ? [{ step, number: index + 1 }] : [],
    )
  const index = () => {
    const outcome = book.outcome(props.scenario, 'lsi')
    return hasValue(outcome) && typeof outcome.value === 'number'
      ? quantityWords(props.reader, 'lsi', outcome.value)
      : ''
  }
  const indexAtEnd = () => (props.plan.lsi === undefined ? '' : quantityWords(props.reader, 'lsi', props.plan.lsi))

  return (
    <section class="sheet second" aria-label={say('handout.numbers')}>
      <h2>{say('handout.numbers')}</h2>
      <p>{say('handout.numbers.intro', { name: book.notebook().name })}</p>
      <Wide label={say('handout.numbers')}>
        <table>
          <thead>
            <tr>
              <For each={['quantity', 'read', 'test', 'wanted', 'end'] as const}>
                {(head) => (
                  <th scope="col">
                    {say(head === 'read' && foretold() ? 'handout.numbers.foretold' : `handout.numbers.${head}`)}
                  </th>
                )}
              </For>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(quantity) => (
                <tr>
                  <th scope="row">{labelOf(quantity, row(quantity))}</th>
                  <td class="figure">{read(quantity)}</td>
                  <td>{method(quantity)}</td>
                  <td class="figure">{wanted(quantity)}</td>
                  <td class="figure">{at(props.plan.end, quantity)}</td>
                </tr>
              )}
            </For>
            <Show when={index() !== '' || indexAtEnd() !== ''}>
              <tr>
                <th scope="row">{say('handout.numbers.index')}</th>
                <td class="figure">{index()}</td>
                <td />
                <td class="figure">{wanted('lsi')}</td>
                <td class="figure">{indexAtEnd()}</td>
              </tr>
            </Show>
          </tbody>
        </table>
      </Wide>
      <AssumedNote scenario={props.scenario} />
      <Show when={dosed().length > 0}>
        <h3>{say('handout.numbers.after')}</h3>
        <Wide label={say('handout.numbers.after')}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say('handout.numbers.step')}</th>
                <For each={FORETOLD}>{(quantity) => <th scope="col">{say(`page.plan.short.${quantity}`)}</th>}</For>
              </tr>
            </thead>
            <tbody>
              <For each={dosed()}>
                {({ step, number }) => (
                  <tr>
                    <th scope="row">{number}</th>
                    <For each={FORETOLD}>{(quantity) => <td class="figure">{at(step.water, quantity)}</td>}</For>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </Wide>
      </Show>
      <Lines title={say('handout.numbers.later')} lines={props.sheet.later} />
      <Lines title={say('handout.numbers.found')} lines={props.sheet.foundMore} />
      <Lines title={say('handout.numbers.left')} lines={props.sheet.left} />
      <p class="quiet">{say('handout.numbers.basis')}</p>
    </section>
  )
}

function Lines(props: { title: string; lines: readonly string[] }) {
  return (
    <Show when={props.lines.length > 0}>
      <h3>{props.title}</h3>
      <ul class="lines">
        <For each={props.lines}>{(line) => <li>{line}</li>}</For>
      </ul>
    </Show>
  )
}
