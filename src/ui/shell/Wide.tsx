import type { JSX } from 'solid-js'

/** What may be wider than the page. It scrolls by itself, by keyboard too: it takes the focus and says what it holds. */
export function Wide(props: { label: string; class?: string; children: JSX.Element }) {
  return (
    <div class={`wide ${props.class ?? ''}`} role="group" aria-label={props.label} tabindex={0}>
      {props.children}
    </div>
  )
}
