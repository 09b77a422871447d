import { createSignal } from 'solid-js'
import { keepPreference, preference } from '../../storage/preference'

export type Paper = 'light' | 'dark' | 'system'

const kept = preference('paper')
const [paper, show] = createSignal<Paper>(kept === 'light' || kept === 'dark' ? kept : 'system')

export { paper }

/** Light or dark paper by hand; `system` follows the device. */
export function setPaper(next: Paper): void {
  show(next)
  keepPreference('paper', next)
  apply(next)
}

function apply(now: Paper): void {
  const root = document.documentElement
  if (now === 'system') delete root.dataset.paper
  else root.dataset.paper = now
}

apply(paper())
