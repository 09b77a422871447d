import { createEffect, For } from 'solid-js'

/**
 * An equation as MathML. The typesetter is a chunk of its own and comes with the first equation that is shown. What TeX
 * sets side by side with a wide space stands line under line here, so that it fits a narrow margin.
 */
export function Equation(props: { tex: string }) {
  const lines = () => props.tex.split(/,?\s*\\q?quad\s*/)
  return <For each={lines()}>{(tex) => <Line tex={tex} />}</For>
}

function Line(props: { tex: string }) {
  let place: HTMLDivElement | undefined
  createEffect(() => {
    const { tex } = props
    void import('temml').then(({ default: temml }) => {
      if (!place) return
      temml.render(tex, place, { displayMode: true, throwOnError: false })
      // One that is still too wide is scrolled, by keyboard too.
      if (place.scrollWidth > place.clientWidth) place.tabIndex = 0
    })
  })
  return <div ref={place} class="equation" />
}
