import { createMemo, Show } from 'solid-js'
import type { Band } from '../../worksheet/definition'
import type { Side } from '../../worksheet/judge'

/**
 * Where a value lies: the hairline is the span worth showing, the block the band that is wanted, the tick the value. A
 * value beyond the span stands at its end. Said in words beside it, so hidden from screen readers.
 */
export function RangeBar(props: {
  span: readonly [number, number]
  band: Band | undefined
  value: number | undefined
  side: Side | null
}) {
  const at = (value: number) => {
    const [low, high] = props.span
    return Math.min(Math.max((value - low) / (high - low), 0), 0.98) * 100
  }
  const block = createMemo(() => {
    const { band } = props
    if (!band) return null
    const left = at(band.low ?? props.span[0])
    return { left, width: Math.max(at(band.high ?? props.span[1]) - left, 1.5) }
  })
  const out = () => props.side === 'below' || props.side === 'above'
  return (
    <svg class="bar" aria-hidden="true">
      <line x1="0" x2="100%" y1="50%" y2="50%" />
      <Show when={block()}>
        {(b) => <rect x={`${b().left}%`} width={`${b().width}%`} y="27%" height="46%" rx="1" />}
      </Show>
      <Show when={props.value !== undefined}>
        <rect
          class="tick"
          classList={{ out: out() }}
          x={`${at(props.value ?? 0)}%`}
          width={out() ? 3 : 2}
          y={out() ? '0' : '10%'}
          height={out() ? '100%' : '80%'}
        />
      </Show>
    </svg>
  )
}
