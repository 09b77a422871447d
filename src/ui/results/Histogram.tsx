import { For, Show } from 'solid-js'
import type { Band } from '../../worksheet/definition'
import type { Spread } from './summarise'

const WIDTH = 150
const HEIGHT = 26

/** How the values of a column lie, as thin bars over the band that is wanted. */
export function Histogram(props: { spread: Spread; band: Band | undefined; says: string }) {
  const span = () => Math.max(props.spread.max - props.spread.min, Number.MIN_VALUE)
  const x = (value: number) => Math.max(0, Math.min(WIDTH, (WIDTH * (value - props.spread.min)) / span()))
  // Bins at the ends are narrower than the others: bars stand for how close values lie, not for how many are in a bin.
  const density = (bin: Spread['bins'][number]) => bin.count / Math.max(bin.to - bin.from, span() / WIDTH)
  const peak = () => Math.max(...props.spread.bins.map(density), Number.MIN_VALUE)
  return (
    <svg
      class="histogram"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      width={WIDTH}
      height={HEIGHT}
      role="img"
      aria-label={props.says}
    >
      <Show when={props.band}>
        {(band) => {
          const left = () => x(band().low ?? props.spread.min)
          const right = () => x(band().high ?? props.spread.max)
          return <rect class="band" x={left()} y={0} width={Math.max(0, right() - left())} height={HEIGHT - 1} />
        }}
      </Show>
      <For each={props.spread.bins}>
        {(bin) => {
          const height = () => ((HEIGHT - 2) * density(bin)) / peak()
          return (
            <rect
              class="heap"
              x={x(bin.from)}
              y={HEIGHT - 1 - height()}
              width={Math.max(0.6, x(bin.to) - x(bin.from) - 0.7)}
              height={height()}
            />
          )
        }}
      </For>
      <line class="axis" x1={0} x2={WIDTH} y1={HEIGHT - 0.5} y2={HEIGHT - 0.5} />
    </svg>
  )
}
