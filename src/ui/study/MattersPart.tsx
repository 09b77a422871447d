import { createMemo, createSignal, For, Show } from 'solid-js'
import { type Answer, numberIn } from '../../study/evaluate'
import { say, sentence } from '../../words/say'
import { bandIn } from '../grid/bandIn'
import { labelOf } from '../labelOf'
import { problemText } from '../problemText'
import { useBook } from '../shell/book'
import { axisOf } from './axis'
import { createSureness } from './createSureness'
import { halfText } from './halfText'
import { Precisions } from './Precisions'
import { QuantitySelect } from './QuantitySelect'
import { ScenarioSelect } from './ScenarioSelect'
import { SwingBar } from './SwingBar'
import { heldFormula } from './studyColumn'

/** One result: its interval, what moves it most, whether its verdict stands, and how exact its readings are. */
export function MattersPart() {
  const book = useBook()
  const selected = book.selection.cell()
  const unit = selected?.row.quantity.row.unit
  const [scenario, setScenario] = createSignal(selected?.scenario ?? book.baseline())
  const [output, setOutput] = createSignal(
    selected && unit !== 'choice' && unit !== 'truth' ? selected.row.quantity.name : 'lsi',
  )
  const sure = createSureness(scenario, output)
  const row = () => book.catalog().quantities.get(output())?.row
  const axis = createMemo(() => axisOf(book, output()))
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)
  const band = createMemo(() => {
    const now = row()
    return now && bandIn(book, now, scenario())
  })
  const swings = () => sure.swings.current()?.result.swings ?? []
  const moving = () => swings().filter(({ moves }) => moves > 0)
  const still = () => swings().filter(({ moves }) => moves === 0)
  const typed = () =>
    (sure.doubts() ?? []).flatMap(({ quantity }) =>
      heldFormula(book, scenario(), quantity) === undefined ? [] : [quantity],
    )
  const span = createMemo(() => {
    const ends = moving().flatMap(({ low, high }) => [low.answer, high.answer].flatMap((end) => numberIn(end) ?? []))
    return ends.length > 0 ? ([Math.min(...ends), Math.max(...ends)] as const) : null
  })
  const now = () => {
    return numberIn(sure.swings.current()?.result.now)
  }
  const shares = () => {
    const found = sure.interval()
    const quantity = book.catalog().quantities.get(output())
    if (!found?.why || !quantity) return ''
    return say('page.study.interval_refused', {
      refused: found.refused,
      count: found.count,
      why: problemText(found.why, quantity),
    })
  }

  /** The lower end first, whichever way the reading moves it. */
  function endsText(a: Answer, b: Answer): string {
    const [one, other] = [numberIn(a), numberIn(b)]
    const [first, second] = one !== null && other !== null && other < one ? [other, one] : [one, other]
    const written = (value: number | null, text: (value: number) => string) =>
      value === null ? say('page.study.no_answer') : text(value)
    return say('page.study.interval', { low: written(first, axis().figure), high: written(second, axis().text) })
  }

  return (
    <div class="work" aria-busy={sure.working()}>
      <p class="intro">{say('page.study.matters.says')}</p>
      <form class="asks" onSubmit={(event) => event.preventDefault()}>
        <ScenarioSelect value={scenario()} onChange={setScenario} />
        <QuantitySelect label={say('page.study.output')} kind="any" value={output()} onChange={setOutput} />
      </form>
      <Show when={sure.swings.problem()}>{(why) => <p class="warm">{sentence(why())}</p>}</Show>
      <Show when={sure.doubts()?.length === 0}>
        <p>
          {say(`page.study.matters.${sure.assumed() ? 'assumed' : sure.foretold() ? 'foretold' : 'none'}`, {
            output: axis().label,
          })}
        </p>
      </Show>
      <div role="status">
        <Show when={sure.text()}>
          {(text) => (
            <section class="sure">
              <p class="large">
                <Show when={now() !== null}>
                  <span>{axis().figure(now() ?? 0)}</span>
                </Show>
                <span class="interval">{say('page.study.interval_short', { interval: text() })}</span>
              </p>
              <p class="quiet">{say('page.study.interval_says', { count: sure.interval()?.count ?? 0 })}</p>
              <Show when={shares()}>{(refused) => <p class="warm">{refused()}</p>}</Show>
              <Show when={sure.verdict()}>{(verdict) => <p classList={{ warm: sure.open() }}>{verdict()}</p>}</Show>
            </section>
          )}
        </Show>
      </div>
      <Show when={moving().length > 0}>
        <section>
          <h2>{say('page.study.matters.bars', { output: axis().label })}</h2>
          <ol class="swings">
            <For each={moving()}>
              {({ doubt, low, high }) => (
                <li>
                  <span class="name">
                    {label(doubt.quantity)} <span class="quiet">± {halfText(book, doubt.quantity, doubt.half)}</span>
                  </span>
                  <SwingBar span={span()} now={now()} low={low.answer} high={high.answer} band={band()} />
                  <span class="ends">{endsText(low.answer, high.answer)}</span>
                </li>
              )}
            </For>
          </ol>
          <Show when={still().length > 0}>
            <p class="quiet">
              {say('page.study.matters.no_change', { names: still().map(({ doubt }) => label(doubt.quantity)) })}
            </p>
          </Show>
        </section>
      </Show>
      <Show when={typed().length > 0}>
        <p class="quiet">{say('page.study.matters.formulas', { names: typed().map(label) })}</p>
      </Show>
      <Precisions scenario={scenario()} output={output()} />
    </div>
  )
}
