import { For, type JSX } from 'solid-js'
import { type Drawing, type Mark, RADIUS, TEXT_SIZE } from './drawing'

/** The marks of a drawing on the page, in the colours of the paper that it lies on. */
export function DrawingView(props: { drawing: Drawing; label: string; children?: JSX.Element }) {
  return (
    <svg
      class="drawing"
      role="img"
      aria-label={props.label}
      width={props.drawing.width}
      height={props.drawing.height}
      viewBox={`0 0 ${props.drawing.width} ${props.drawing.height}`}
    >
      <For each={props.drawing.marks}>{markView}</For>
      {props.children}
    </svg>
  )
}

/** A mark never changes: a new drawing has new marks. */
function markView(mark: Mark) {
  switch (mark.kind) {
    case 'line':
      return <line class={`stroke ${mark.colour}`} x1={mark.x1} y1={mark.y1} x2={mark.x2} y2={mark.y2} />
    case 'path':
      return <path class={`curve ${mark.colour}`} d={mark.d} stroke-dasharray={mark.dash || undefined} />
    case 'block':
      return <rect class={`fill ${mark.colour}`} x={mark.x} y={mark.y} width={mark.width} height={mark.height} />
    case 'dot':
      return <circle class={`fill ${mark.colour}`} cx={mark.x} cy={mark.y} r={RADIUS} />
    case 'ring':
      return <circle class={`ring ${mark.colour}`} cx={mark.x} cy={mark.y} r={RADIUS + 0.5} />
    case 'text':
      return (
        <text
          class={`fill ${mark.colour}`}
          classList={{ serif: mark.serif === true }}
          x={mark.x}
          y={mark.y}
          text-anchor={mark.anchor}
          font-size={String(TEXT_SIZE)}
        >
          {mark.text}
        </text>
      )
  }
}
