import { For } from 'solid-js'
import { unitWords } from '../unitWords'

const LOW = '₀₁₂₃₄₅₆₇₈₉'

/** A unit in print. The bundled faces have no low figures, so the one in CaCO₃ is a full figure set low. */
export function UnitText(props: { unit: string }) {
  const parts = () => unitWords(props.unit).split(/([₀-₉])/)
  return (
    <For each={parts()}>{(part) => (LOW.includes(part) && part !== '' ? <sub>{LOW.indexOf(part)}</sub> : part)}</For>
  )
}
