import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js'
import type { Chart } from '../../notebook/notebook'
import { say } from '../../words/say'
import { useBook } from '../shell/book'
import { ChartList } from './ChartList'
import { compared } from './compared'
import { DrawingView } from './DrawingView'
import { drawComparison } from './drawComparison'
import { KeepChart } from './KeepChart'
import { OutputsField } from './OutputsField'
import { SavePicture } from './SavePicture'
import { ScenariosField } from './ScenariosField'

type Comparison = Extract<Chart, { readonly kind: 'comparison' }>

/** What most desks look at first. */
const FIRST = ['ph', 'free_chlorine', 'hocl', 'lsi', 'salt_used']

/** All scenarios beside each other as they are, for chosen quantities. */
export function ComparePart() {
  const book = useBook()
  const own = createMemo(() =>
    Object.values(book.notebook().charts)
      .filter((chart): chart is Comparison => chart.kind === 'comparison')
      .sort((a, b) => (a.name < b.name ? -1 : 1)),
  )
  const fresh = (): Comparison => ({
    kind: 'comparison',
    id: '',
    name: say('page.study.compare.new_name'),
    outputs: FIRST.filter((name) => book.catalog().quantities.has(name)),
    scenarios: [],
  })
  const [chart, setChart] = createSignal<Comparison>(own()[0] ?? fresh())
  const [width, setWidth] = createSignal(640)
  let box!: HTMLDivElement
  onMount(() => {
    const resize = () => setWidth(Math.min(860, Math.max(280, box.clientWidth)))
    resize()
    const watch = new ResizeObserver(resize)
    watch.observe(box)
    onCleanup(() => watch.disconnect())
  })
  const shown = createMemo(() => {
    const chosen = chart().scenarios.filter((id) => book.scenarios().includes(id))
    return chosen.length > 0 ? chosen : book.scenarios()
  })
  const panels = createMemo(() =>
    chart()
      .outputs.filter((name) => book.catalog().quantities.has(name))
      .map((name) => compared(book, shown(), name)),
  )
  const drawing = (wide: number) => drawComparison(chart().name, panels(), wide)
  const change = (set: Partial<Comparison>) => setChart((now) => ({ ...now, ...set }))

  return (
    <div class="beside">
      <div class="lists">
        <ChartList title={say('page.study.charts.own')} charts={own()} chosen={chart().id} onChoose={setChart} />
        <section class="charts">
          <button type="button" class="to" onClick={() => setChart(fresh())}>
            {say('page.study.chart.new')}
          </button>
        </section>
      </div>
      <div class="work">
        <h2>{chart().name}</h2>
        <p class="intro">{say('page.study.compare.says')}</p>
        <form class="asks" onSubmit={(event) => event.preventDefault()}>
          <OutputsField kind="any" outputs={chart().outputs} onChange={(outputs) => change({ outputs })} />
          <Show when={book.scenarios().length > 1}>
            <ScenariosField chosen={chart().scenarios} onChange={(scenarios) => change({ scenarios })} />
          </Show>
        </form>
        <figure class="chart">
          <div ref={box}>
            <Show when={panels().length > 0} fallback={<p class="quiet">{say('page.study.no_outputs')}</p>}>
              <DrawingView drawing={drawing(width())} label={spoken()} />
            </Show>
          </div>
          <SavePicture drawing={() => drawing(860)} />
        </figure>
        <For each={[chart().id]}>
          {() => (
            <KeepChart chart={chart()} onKept={setChart} onRemoved={() => setChart((now) => ({ ...now, id: '' }))} />
          )}
        </For>
      </div>
    </div>
  )

  /** Everything that the chart shows, for those who hear it. */
  function spoken(): string {
    return panels()
      .map(({ axis, rows }) =>
        say('page.study.read_point', {
          input: axis.label,
          readings: rows.map(({ name, says }) => say('page.study.reading', { name, value: says })),
        }),
      )
      .join('. ')
  }
}
