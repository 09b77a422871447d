import { type Accessor, createSignal, onCleanup } from 'solid-js'

/**
 * Counts up to `last`, a turn of the page apiece: a view of many parts is made part by part, so that the page answers in
 * between.
 */
export function createStages(last: number): Accessor<number> {
  const [stage, setStage] = createSignal(0)
  const next = () => {
    if (setStage((now) => now + 1) < last) timer = setTimeout(next)
  }
  let timer = setTimeout(next)
  onCleanup(() => clearTimeout(timer))
  return stage
}
