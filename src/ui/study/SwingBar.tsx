import { Show } from 'solid-js'
import { type Answer, numberIn } from '../../study/evaluate'
import type { Band } from '../../worksheet/definition'

/** Where a result goes while one reading is off: all bars of a list have one scale, the wanted range behind it. Said in figures beside it. */
export function SwingBar(props: {
  span: readonly [number, number] | null
  now: number | null
  low: Answer
  high: Answer
  band: Band | undefined
}) {
  const at = (value: number) => {
    const [low, high] = props.span ?? [0, 1]
    return Math.min(Math.max((value - low) / (high - low || 1), 0), 1) * 96 + 2
  }
  const ends = () => {
    const both = [numberIn(props.low), numberIn(props.high), props.now].filter((value) => value !== null)
    return both.length > 0 ? { from: at(Math.min(...both)), to: at(Math.max(...both)) } : null
  }
  const block = () => {
    const { band } = props
    if (!band) return null
    const from = band.low === undefined ? 0 : at(band.low)
    const to = band.high === undefined ? 100 : at(band.high)
    return to > from ? { from, to } : null
  }
  return (
    <svg class="swing" aria-hidden="true">
      <Show when={block()}>
        {(b) => <rect class="fill band" x={`${b().from}%`} width={`${b().to - b().from}%`} y="0" height="100%" />}
      </Show>
      <Show when={ends()}>
        {(e) => (
          <rect
            class="fill ink"
            x={`${e().from}%`}
            width={`${Math.max(e().to - e().from, 0.4)}%`}
            y="41%"
            height="18%"
          />
        )}
      </Show>
      <Show when={props.now !== null}>
        <rect class="fill pen" x={`${at(props.now ?? 0)}%`} width="1.5" y="0" height="100%" />
      </Show>
    </svg>
  )
}
