import { For, Show } from 'solid-js'
import { say } from '../../words/say'
import { unitWords } from '../unitWords'
import type { ChartScale } from './chartScale'
import type { TableColumn } from './tableColumn'

/** Where the points may lie, in pixels. */
export interface Frame {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly height: number
}

/** The chart under its points: hairlines, marks, the names of both quantities, the band that is wanted. */
export function ChartAxes(props: { frame: Frame; across: TableColumn; up: TableColumn; x: ChartScale; y: ChartScale }) {
  return (
    <svg width={props.frame.right + 16} height={props.frame.height} aria-hidden="true">
      <BandMark column={props.up} at={props.y.at} frame={props.frame} />
      <For each={props.y.marks}>
        {(mark) => (
          <>
            <line class="rule" x1={props.frame.left} x2={props.frame.right} y1={mark.at} y2={mark.at} />
            <text x={props.frame.left - 8} y={mark.at + 4} text-anchor="end">
              {mark.label}
            </text>
          </>
        )}
      </For>
      <line class="axis" x1={props.frame.left} x2={props.frame.right} y1={props.frame.bottom} y2={props.frame.bottom} />
      <For each={props.x.marks}>
        {(mark) => (
          <>
            <line class="axis" x1={mark.at} x2={mark.at} y1={props.frame.bottom} y2={props.frame.bottom + 4} />
            <text x={mark.at} y={props.frame.bottom + 18} text-anchor="middle">
              {mark.label}
            </text>
          </>
        )}
      </For>
      <text class="name" x={props.frame.left} y={14}>
        {nameOf(props.up)}
      </text>
      <text class="name" x={props.frame.right} y={props.frame.height - 8} text-anchor="end">
        {nameOf(props.across)}
      </text>
    </svg>
  )
}

function BandMark(props: { column: TableColumn; at: (value: number) => number; frame: Frame }) {
  const within = (y: number) => Math.max(props.frame.top, Math.min(props.frame.bottom, y))
  const end = (value: number | undefined, open: number) => (value === undefined ? open : within(props.at(value)))
  return (
    <Show when={props.column.band}>
      {(band) => {
        const top = () => end(band().high, props.frame.top)
        const height = () => Math.max(0, end(band().low, props.frame.bottom) - top())
        return (
          <>
            <rect
              class="band"
              x={props.frame.left}
              y={top()}
              width={props.frame.right - props.frame.left}
              height={height()}
            />
            <text x={props.frame.right - 6} y={top() + 14} text-anchor="end">
              {height() > 18 ? say('page.results.chart.wanted') : ''}
            </text>
          </>
        )
      }}
    </Show>
  )
}

function nameOf({ label, unit }: TableColumn): string {
  return `${label} ${unitWords(unit)}`.trim()
}
