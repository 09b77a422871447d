import { line } from 'd3-shape'
import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js'
import type { Outcome } from '../../record/foretold'
import { instant } from '../../record/instant'
import { measuredOf } from '../../record/measured'
import { say } from '../../words/say'
import { timeText } from '../../words/written'
import type { RecordView } from './createRecord'
import { dateWords } from './dateWords'
import { TrendTable } from './TrendTable'
import { type TrendFrame, type TrendPoint, trendScale } from './trendScale'

/** in pixels, as the style sheet has it */
const HEIGHT = 104
/** More would run into each other. */
const MOST_DOTS = 120

/** How each reading went from test to test, its wanted band behind it, what a plan foretold beside it. */
export function Trends(props: { view: RecordView; outcomes: readonly Outcome[] }) {
  const { book } = props.view
  const [width, setWidth] = createSignal(640)
  const [at, setAt] = createSignal<number | null>(null)
  let box!: HTMLDivElement
  onMount(() => {
    const resize = () => setWidth(Math.max(240, box.clientWidth))
    resize()
    const watch = new ResizeObserver(resize)
    watch.observe(box)
    onCleanup(() => watch.disconnect())
  })

  const tests = createMemo(() => measuredOf(book.notebook()))
  const times = createMemo(() => tests().map(({ date }) => instant(date)))
  const span = (): readonly [number, number] => [times()[0] ?? 0, times().at(-1) ?? 0]
  const foretold = createMemo(() => {
    const all = new Map<string, number>()
    for (const { measured, comparisons } of props.outcomes)
      for (const { quantity, foretold: value } of comparisons) all.set(`${measured.id} ${quantity}`, value)
    return all
  })
  const quantities = createMemo(() => {
    const counts = new Map<string, number>()
    for (const { figures } of tests()) for (const name of figures.keys()) counts.set(name, (counts.get(name) ?? 0) + 1)
    return [...book.catalog().quantities.keys()].filter((name) => (counts.get(name) ?? 0) >= 2)
  })
  const pointsOf = (quantity: string): readonly TrendPoint[] =>
    tests().flatMap(({ id, figures }, test) => {
      const value = figures.get(quantity)
      if (value === undefined) return []
      return [{ test, time: times()[test] ?? 0, value, foretold: foretold().get(`${id} ${quantity}`) ?? null }]
    })

  function step(by: 1 | -1): void {
    const count = tests().length
    setAt((now) => ((now ?? (by > 0 ? -1 : 0)) + by + count) % count)
  }

  return (
    <div ref={box} class="trends">
      <Show when={quantities().length > 0} fallback={<p class="quiet">{say('record.trends.few')}</p>}>
        <For each={quantities()}>
          {(quantity) => (
            <Panel
              view={props.view}
              quantity={quantity}
              points={pointsOf(quantity)}
              span={span()}
              width={width()}
              at={at()}
              onAt={setAt}
              onStep={step}
            />
          )}
        </For>
        <TrendTable view={props.view} tests={tests()} quantities={quantities()} />
      </Show>
    </div>
  )
}

interface PanelProps {
  readonly view: RecordView
  readonly quantity: string
  readonly points: readonly TrendPoint[]
  readonly span: readonly [number, number]
  readonly width: number
  /** the test that is read out in all panels */
  readonly at: number | null
  readonly onAt: (test: number | null) => void
  readonly onStep: (by: 1 | -1) => void
}

function Panel(props: PanelProps) {
  const { view } = props
  const band = () => view.band(props.quantity)
  const frame = (): TrendFrame => ({ left: 60, right: props.width - 12, top: 8, bottom: HEIGHT - 20 })
  const scale = createMemo(() => trendScale(props.points, props.span, band(), frame()))
  const path = () =>
    line<TrendPoint>(
      ({ time }) => scale().x(time),
      ({ value }) => scale().y(value),
    )(props.points) ?? ''
  /** figures at the edge: the ends of the band, else of the line */
  const marks = () => {
    const values = props.points.map(({ value }) => value)
    const ends = [band()?.low, band()?.high].filter((end) => end !== undefined)
    return [...new Set(ends.length > 0 ? ends : [Math.min(...values), Math.max(...values)])]
  }
  /** of a long line only the test that is read out has its dot */
  const dots = () =>
    props.points.length <= MOST_DOTS ? props.points : props.points.filter((point) => point === here())
  const words = (value: number) => view.words(props.quantity, value)
  const name = () => view.label(props.quantity)
  const here = () => props.points.find(({ test }) => test === props.at) ?? null
  const readOut = () => {
    const point = here()
    const last = props.points.at(-1)
    if (point === null) {
      return say('record.trends.says', {
        name: name(),
        count: props.points.length,
        value: last ? words(last.value) : '',
      })
    }
    const says = say('record.trends.at', {
      name: name(),
      value: words(point.value),
      when: dateWords(testDate(view, point.test)),
    })
    return point.foretold === null
      ? says
      : `${says}, ${say('record.trends.foretold', { value: words(point.foretold) })}`
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'ArrowRight') props.onStep(1)
    else if (event.key === 'ArrowLeft') props.onStep(-1)
    else if (event.key === 'Escape') props.onAt(null)
    else return
    event.preventDefault()
  }

  function onPointerMove(event: PointerEvent & { currentTarget: SVGSVGElement }): void {
    const x = event.clientX - event.currentTarget.getBoundingClientRect().left
    let best: TrendPoint | null = null
    for (const point of props.points) {
      const off = Math.abs(scale().x(point.time) - x)
      if (best === null || off < Math.abs(scale().x(best.time) - x)) best = point
    }
    props.onAt(best?.test ?? null)
  }

  return (
    <figure>
      <figcaption>
        <span class="name">{name()}</span>
        <span class="readout" role={here() === null ? undefined : 'status'}>
          {readOut()
            .slice(name().length)
            .replace(/^[:\s]+/, '')}
        </span>
      </figcaption>
      <svg
        width={props.width}
        height={HEIGHT}
        role="img"
        tabindex={0}
        aria-label={`${readOut()}. ${say('record.trends.keys')}`}
        onKeyDown={onKeyDown}
        onPointerMove={onPointerMove}
        onPointerLeave={() => props.onAt(null)}
        onBlur={() => props.onAt(null)}
      >
        <Show when={scale().band}>
          {(shade) => (
            <>
              <rect
                class="band"
                x={frame().left}
                y={shade().top}
                width={frame().right - frame().left}
                height={shade().height}
              />
              <Show when={shade().height > 18}>
                <text class="wanted" x={frame().right - 6} y={shade().top + 14} text-anchor="end">
                  {say('record.trends.wanted')}
                </text>
              </Show>
            </>
          )}
        </Show>
        <For each={marks()}>
          {(mark) => (
            <text x={frame().left - 10} y={scale().y(mark) + 4} text-anchor="end">
              {view.figure(props.quantity, mark)}
            </text>
          )}
        </For>
        <line class="axis" x1={frame().left} x2={frame().right} y1={frame().bottom} y2={frame().bottom} />
        <For each={props.points}>
          {(point) => (
            <Show when={point.foretold !== null}>
              <line
                class="off"
                x1={scale().x(point.time)}
                x2={scale().x(point.time)}
                y1={scale().y(point.value)}
                y2={scale().y(point.foretold ?? 0)}
              />
              <circle class="foretold" cx={scale().x(point.time)} cy={scale().y(point.foretold ?? 0)} r={4} />
            </Show>
          )}
        </For>
        <path d={path()} />
        <For each={dots()}>
          {(point) => (
            <circle
              class="point"
              cx={scale().x(point.time)}
              cy={scale().y(point.value)}
              r={point === here() ? 4.5 : 2.75}
            />
          )}
        </For>
        <Show when={here()}>
          {(point) => (
            <line
              class="cursor"
              x1={scale().x(point().time)}
              x2={scale().x(point().time)}
              y1={frame().top}
              y2={frame().bottom}
            />
          )}
        </Show>
        <text x={frame().left} y={HEIGHT - 5}>
          {timeText(props.span[0], 'day')}
        </text>
        <text x={frame().right} y={HEIGHT - 5} text-anchor="end">
          {timeText(props.span[1], 'day')}
        </text>
      </svg>
    </figure>
  )
}

function testDate(view: RecordView, test: number): string {
  return measuredOf(view.book.notebook())[test]?.date ?? ''
}
