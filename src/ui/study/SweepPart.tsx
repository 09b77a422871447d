import { createMemo, createSignal, For, Show } from 'solid-js'
import { LIMITS } from '../../notebook/limits'
import { spanPoints } from '../../study/spanPoints'
import type { SweepOrder } from '../../study/sweep'
import { type Problem, problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { labelOf } from '../labelOf'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { ChartList } from './ChartList'
import { chartAgainst, chartOfSelection, givenCharts, type SweepChart } from './chartDraft'
import { createStudied } from './createStudied'
import { type Entered, isUnread, type Unread } from './entered'
import { FigureField } from './FigureField'
import { KeepChart } from './KeepChart'
import { OutputsField } from './OutputsField'
import { QuantitySelect } from './QuantitySelect'
import { ScenariosField } from './ScenariosField'
import { SweepChart as Drawn } from './SweepChart'
import { heldIn, studyColumn } from './studyColumn'
import { sweepModel } from './sweepModel'

/** Charts of quantities against an input: those of the worksheets, those kept in the notebook, and the one in hand. */
export function SweepPart() {
  const book = useBook()
  const given = createMemo(() => givenCharts(book))
  const own = createMemo(() =>
    Object.values(book.notebook().charts)
      .filter((chart): chart is SweepChart => chart.kind === 'sweep')
      .sort((a, b) => (a.name < b.name ? -1 : 1)),
  )
  const first = chartOfSelection(book) ?? own()[0] ?? given()[0] ?? chartAgainst(book, ['lsi'], 'ph')
  const [chart, setChart] = createSignal<SweepChart>(first)
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [open, setOpen] = createSignal<OpenEnds>(BOTH_GIVEN)
  const isSpan = () => open().from === undefined && open().to === undefined
  const known = (name: string) => book.catalog().quantities.has(name)
  const gone = () => [chart().input, ...chart().outputs].filter((name) => !known(name))
  const label = (name: string) => labelOf(name, book.catalog().quantities.get(name)?.row)

  const shown = createMemo(() => {
    const chosen = chart().scenarios.filter((id) => book.scenarios().includes(id))
    return chosen.length > 0 ? chosen : book.scenarios()
  })
  /** an answer that still stands is that of the scenarios that were asked for */
  const scenariosOf = new WeakMap<SweepOrder, readonly string[]>()
  const order = createMemo((): SweepOrder | null => {
    const { input, from, to, points, outputs } = chart()
    if (!isSpan() || gone().length > 0 || outputs.length === 0 || !(from < to)) return null
    const columns = shown().map((id) => studyColumn(book, id, [input, ...outputs]))
    if (columns.includes(null)) return null
    const asked = {
      columns: columns.filter((one) => one !== null),
      input,
      values: spanPoints(from, to, points),
      outputs,
    }
    scenariosOf.set(asked, shown())
    return asked
  })
  const studied = createStudied('sweep', order)
  const model = createMemo(() => {
    const now = studied.answered()
    return now && sweepModel(book, chart().name, scenariosOf.get(now.order) ?? [], now)
  })
  const held = createMemo(() => {
    const { input, outputs } = chart()
    return [...new Set(shown().flatMap((id) => outputs.flatMap((output) => heldIn(book, id, input, output))))]
  })

  function change(set: Partial<SweepChart>): void {
    setChart((now) => {
      const next = { ...now, ...set }
      // a chart of the worksheets that is changed is a new one
      const isGiven = given().some(({ id }) => id === now.id)
      const renamed = isGiven || now.id === '' ? chartAgainst(book, next.outputs, next.input).name : next.name
      return { ...next, id: isGiven ? '' : next.id, name: renamed }
    })
    setProblems([])
  }
  function span(end: 'from' | 'to', value: Entered): void {
    if (value === null || isUnread(value)) {
      // its field says what is wrong with it
      setOpen((now) => ({ ...now, [end]: value }))
      setProblems([])
      return
    }
    setOpen((now) => ({ ...now, [end]: undefined }))
    change({ [end]: value })
    if (!(chart().from < chart().to)) setProblems([problem('span_empty')])
  }
  function choose(next: SweepChart): void {
    setOpen(BOTH_GIVEN)
    setProblems([])
    setChart(next)
  }
  function setPoints(text: string): void {
    const points = Number(text)
    if (Number.isInteger(points) && points >= 2 && points <= LIMITS.points) change({ points })
    else setProblems([problem('study_points', [], { least: 2, most: LIMITS.points })])
  }

  return (
    <div class="beside">
      <div class="lists">
        <ChartList title={say('page.study.charts.own')} charts={own()} chosen={chart().id} onChoose={choose} />
        <ChartList title={say('page.study.charts.given')} charts={given()} chosen={chart().id} onChoose={choose} />
      </div>
      <div class="work" aria-busy={studied.working()}>
        <h2>{chart().name}</h2>
        <form class="asks" onSubmit={(event) => event.preventDefault()}>
          <OutputsField kind="computed" outputs={chart().outputs} onChange={(outputs) => change({ outputs })} />
          <QuantitySelect
            label={say('page.study.input')}
            kind="input"
            value={chart().input}
            onChange={(input) => {
              setOpen(BOTH_GIVEN)
              const { from, to } = chartAgainst(book, chart().outputs, input)
              change({ input, from, to })
            }}
          />
          <FigureField
            label={say('page.study.from')}
            quantity={chart().input}
            value={open().from === undefined ? chart().from : (open().from ?? null)}
            wanted={problem('study_needs_span', [label(chart().input)])}
            onChange={(value) => span('from', value)}
          />
          <FigureField
            label={say('page.study.to')}
            quantity={chart().input}
            value={open().to === undefined ? chart().to : (open().to ?? null)}
            wanted={problem('study_needs_span', [label(chart().input)])}
            onChange={(value) => span('to', value)}
          />
          <label class="short">
            {say('page.study.points')}
            <input
              class="field"
              inputmode="numeric"
              autocomplete="off"
              value={String(chart().points)}
              onChange={(event) => setPoints(event.currentTarget.value)}
            />
          </label>
          <Show when={book.scenarios().length > 1}>
            <ScenariosField chosen={chart().scenarios} onChange={(scenarios) => change({ scenarios })} />
          </Show>
        </form>
        <Problems problems={problems()} />
        <Show when={gone().length > 0}>
          <p class="warm">{say('page.study.chart_reads_gone', { names: gone() })}</p>
        </Show>
        <Show when={chart().outputs.length === 0}>
          <p class="quiet">{say('page.study.no_outputs')}</p>
        </Show>
        <Show when={studied.problem()}>{(why) => <p class="warm">{sentence(why())}</p>}</Show>
        <Show
          when={model()}
          fallback={
            <p class="quiet" role="status">
              {order() ? say('page.study.working', { count: columnsOf(order()) }) : ''}
            </p>
          }
        >
          {(now) => <Drawn model={now()} />}
        </Show>
        <Show when={held().length > 0}>
          <p class="quiet">{say('page.study.held', { names: held().map(label) })}</p>
        </Show>
        <For each={[chart().id]}>
          {() => (
            <KeepChart
              chart={chart()}
              whole={isSpan()}
              onKept={setChart}
              onRemoved={() => setChart((now) => ({ ...now, id: '' }))}
            />
          )}
        </For>
      </div>
    </div>
  )
}

/** Ends of the span whose field holds no figure: nothing, or what cannot be read. A chart is one of both ends, and none is shown or kept until then. */
interface OpenEnds {
  readonly from: null | Unread | undefined
  readonly to: null | Unread | undefined
}

const BOTH_GIVEN: OpenEnds = { from: undefined, to: undefined }

function columnsOf(order: SweepOrder | null): number {
  return order ? order.columns.length * (order.values.length + 1) : 0
}
