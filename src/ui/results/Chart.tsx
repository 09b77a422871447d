import { createEffect, createMemo, createSignal, For, on, onCleanup, onMount, Show } from 'solid-js'
import { say } from '../../words/say'
import { paper } from '../shell/paper'
import { unitWords } from '../unitWords'
import { ChartAxes, type Frame } from './ChartAxes'
import { chartScale } from './chartScale'
import type { Table } from './createTable'
import { drawCloud } from './drawCloud'
import { drawPoints, FEW } from './drawPoints'
import { type Points, pointsOf } from './points'
import { createSlices } from './slices'
import type { TableColumn } from './tableColumn'

/** in pixels, as the style sheet has it */
const HEIGHT = 380
/** How near the pointer must be to a point, in pixels. */
const NEAR = 24

/** Any two quantities against each other, one point a shown sample, with a read-out by pointer and keyboard. */
export function Chart(props: { table: Table }) {
  const [width, setWidth] = createSignal(640)
  const [points, setPoints] = createSignal<Points | null>(null)
  const [at, setAt] = createSignal<number | null>(null)
  const [keys, setKeys] = createSignal<readonly [across: string, up: string]>(['', ''])
  let box!: HTMLDivElement
  let canvas!: HTMLCanvasElement

  const figures = createMemo(() => props.table.columns().filter(({ kind, row }) => kind === 'figure' && row))
  const across = createMemo(() => figures().find(({ key }) => key === keys()[0]) ?? figures()[0])
  const up = createMemo(() => {
    const results = figures().filter(({ group }) => group === 'result')
    const first = results.find(({ band, row }) => band ?? row?.range) ?? results[0]
    return figures().find(({ key }) => key === keys()[1]) ?? first ?? figures()[1] ?? figures()[0]
  })
  const frame = (): Frame => ({ left: 64, right: width() - 16, top: 26, bottom: HEIGHT - 46, height: HEIGHT })
  const scales = createMemo(() => {
    const found = points()
    if (!found?.span) return null
    const { left, right, top, bottom } = frame()
    const x = chartScale(found.across, found.span.x[0], found.span.x[1], left, right)
    return { x, y: chartScale(found.up, found.span.y[0], found.span.y[1], bottom, top), points: found }
  })

  onMount(() => {
    const resize = () => setWidth(Math.max(240, box.clientWidth))
    resize()
    const watch = new ResizeObserver(resize)
    watch.observe(box)
    onCleanup(() => watch.disconnect())
  })

  let gathering = 0
  let drawing = 0
  onCleanup(() => {
    gathering++
    drawing++
  })
  createEffect(
    on([across, up, props.table.rows], async ([x, y, rows]) => {
      const mine = ++gathering
      setAt(null)
      // in a turn of its own: the table and the summary follow the same change
      const slices = createSlices()
      await slices.pause()
      if (mine !== gathering) return
      const found = x && y ? await pointsOf(x, y, rows, slices, () => mine !== gathering) : null
      if (mine === gathering) setPoints(found)
    }),
  )
  createEffect(
    on([scales, props.table.chosen.count, paper], ([scale]) => {
      const mine = ++drawing
      const context = canvas.getContext('2d')
      if (!context) return
      const sharp = devicePixelRatio || 1
      canvas.width = width() * sharp
      canvas.height = HEIGHT * sharp
      context.scale(sharp, sharp)
      if (!scale) return
      const { points: found, x, y } = scale
      const style = getComputedStyle(canvas)
      const look = {
        isOut: (i: number) => isOut(found.across, found.samples[i]) || isOut(found.up, found.samples[i]),
        isChosen: (i: number) => props.table.chosen.has(found.samples[i] ?? -1),
        pens: { ink: style.color, warm: style.borderTopColor, pen: style.outlineColor },
      }
      if (found.rows.length <= FEW) drawPoints(context, found, x, y, look)
      else void drawCloud(context, found, x, y, sharp, look, createSlices(), () => mine !== drawing)
    }),
  )

  function nearest(px: number, py: number): number | null {
    const scale = scales()
    if (!scale) return null
    const { points: found, x, y } = scale
    let best: number | null = null
    let least = NEAR * NEAR
    for (let i = 0; i < found.rows.length; i++) {
      const dx = x.at(found.x[i] ?? 0) - px
      const dy = y.at(found.y[i] ?? 0) - py
      if (dx * dx + dy * dy >= least) continue
      least = dx * dx + dy * dy
      best = i
    }
    return best
  }

  function goToRow(): void {
    const row = points()?.rows[at() ?? -1]
    if (row !== undefined) props.table.setPlace({ row, column: props.table.place().column })
  }

  function onKeyDown(event: KeyboardEvent): void {
    const count = points()?.rows.length ?? 0
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key]
    if (step !== undefined && count > 0) setAt((now) => ((now ?? (step > 0 ? -1 : 0)) + step + count) % count)
    else if (event.key === 'Enter') goToRow()
    else return
    event.preventDefault()
  }

  const readOut = () => {
    const [i, found] = [at(), points()]
    if (!found) return ''
    const { length: count } = found.rows
    if (count === 0) return say('page.results.chart.none')
    const sample = i === null ? undefined : found.samples[i]
    if (sample === undefined) {
      return say('page.results.chart.says', { y: found.up.label, x: found.across.label, count })
    }
    const name =
      props.table
        .columns()
        .find(({ key }) => key === 'name')
        ?.text(sample) ?? ''
    return [name, readingIn(found.up, sample), readingIn(found.across, sample)].join(', ')
  }

  return (
    <section class="chart">
      <h2>{say('page.results.chart')}</h2>
      <div class="acts">
        <AxisChoice
          label={say('page.results.chart.y')}
          columns={figures()}
          value={up()?.key ?? ''}
          onChange={(key) => setKeys([across()?.key ?? '', key])}
        />
        <AxisChoice
          label={say('page.results.chart.x')}
          columns={figures()}
          value={across()?.key ?? ''}
          onChange={(key) => setKeys([key, up()?.key ?? ''])}
        />
      </div>
      <div ref={box} class="plot">
        <Show when={scales()}>
          {(scale) => (
            <ChartAxes
              frame={frame()}
              across={scale().points.across}
              up={scale().points.up}
              x={scale().x}
              y={scale().y}
            />
          )}
        </Show>
        <canvas
          ref={canvas}
          role="img"
          tabindex={0}
          aria-label={`${readOut()}. ${say('page.results.chart.keys')}`}
          style={{ width: `${width()}px` }}
          onPointerMove={(event) => setAt(nearest(event.offsetX, event.offsetY))}
          onPointerLeave={() => setAt(null)}
          onClick={goToRow}
          onKeyDown={onKeyDown}
        />
        <Show when={at() !== null && scales()}>
          {(scale) => {
            const left = () => scale().x.at(scale().points.x[at() ?? 0] ?? 0)
            const top = () => scale().y.at(scale().points.y[at() ?? 0] ?? 0)
            return <span class="here" aria-hidden="true" style={{ left: `${left()}px`, top: `${top()}px` }} />
          }}
        </Show>
      </div>
      <p class="readout" role="status">
        {readOut()}
      </p>
    </section>
  )
}

function AxisChoice(props: {
  label: string
  columns: readonly TableColumn[]
  value: string
  onChange: (key: string) => void
}) {
  return (
    <label>
      {props.label}
      <select class="field" onChange={(event) => props.onChange(event.currentTarget.value)}>
        <For each={props.columns}>
          {(column) => (
            <option value={column.key} selected={column.key === props.value}>
              {column.label}
            </option>
          )}
        </For>
      </select>
    </label>
  )
}

function isOut(column: TableColumn, sample: number | undefined): boolean {
  const side = sample === undefined ? null : column.side(sample)
  return side === 'below' || side === 'above'
}

function readingIn(column: TableColumn, sample: number): string {
  return `${column.label} ${column.text(sample)} ${unitWords(column.unit)}`.trim()
}
