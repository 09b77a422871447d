import { For, type JSX } from 'solid-js'
import { useDrawn } from './drawn'

/** What a row has for the scenarios: something for each that is drawn, room where some are not. */
export function Slots(props: { row: string; children: (scenario: string) => JSX.Element }) {
  const drawn = useDrawn()
  return (
    <For each={drawn.slotsOf(props.row)}>
      {(slot) =>
        typeof slot === 'number' ? <div class="free" style={{ width: `${slot}px` }} /> : props.children(slot)
      }
    </For>
  )
}
