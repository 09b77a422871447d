import { createEffect } from 'solid-js'

/** An equation as MathML. The typesetter is a chunk of its own and comes with the first equation that is shown. */
export function Equation(props: { tex: string }) {
  let place: HTMLDivElement | undefined
  createEffect(() => {
    const { tex } = props
    void import('temml').then(({ default: temml }) => {
      if (place) temml.render(tex, place, { displayMode: true, throwOnError: false })
    })
  })
  return <div ref={place} class="equation" />
}
