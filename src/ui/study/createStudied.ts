import { type Accessor, createEffect, createMemo, createSignal, onCleanup } from 'solid-js'
import { isProblem, type Problem } from '../../words/problem'
import { useBook } from '../shell/book'
import { askStudy } from './askStudy'
import type { Studies, Study } from './studies'

/** An answer with the order that it is the answer to: what is drawn belongs together, whatever was asked since. */
export interface Answered<K extends Study> {
  readonly order: Studies[K]['order']
  readonly result: Studies[K]['result']
}

export interface Studied<K extends Study> {
  readonly answered: Accessor<Answered<K> | null>
  /** the same, but only while it is the answer to what is asked now: for figures that stand beside others */
  readonly current: Accessor<Answered<K> | null>
  readonly working: Accessor<boolean>
  readonly problem: Accessor<Problem | null>
}

/** Readings and choices come one by one; a study is made when they rest for this long, in milliseconds. */
const REST = 150

/**
 * A study that follows its order; null: there is nothing to study yet. The last answer stands until the next one is there.
 * @param order a memo: the same object until something else is asked
 */
export function createStudied<K extends Study>(
  kind: K,
  order: Accessor<Studies[K]['order'] | null>,
  rest = REST,
): Studied<K> {
  const book = useBook()
  const [answered, setAnswered] = createSignal<Answered<K> | null>(null)
  const [working, setWorking] = createSignal(false)
  const [problem, setProblem] = createSignal<Problem | null>(null)

  // parts of the notebook by themselves: an edit elsewhere is no reason to ask again
  const worksheets = createMemo(() => book.notebook().worksheets)
  const rows = createMemo(() => book.notebook().rows)

  createEffect(() => {
    const asked = order()
    const own = { worksheets: worksheets(), rows: rows() }
    const control = new AbortController()
    onCleanup(() => control.abort())
    if (asked === null) {
      setAnswered(null)
      setWorking(false)
      return
    }
    setWorking(true)
    const timer = setTimeout(async () => {
      const result = await askStudy(kind, asked, own, control.signal)
      if (control.signal.aborted) return
      setWorking(false)
      setProblem(isProblem(result) ? result : null)
      if (result !== null && !isProblem(result)) setAnswered(() => ({ order: asked, result }))
    }, rest)
    onCleanup(() => clearTimeout(timer))
  })
  const current = createMemo(() => {
    const now = answered()
    return now && now.order === order() ? now : null
  })
  return { answered, current, working, problem }
}
