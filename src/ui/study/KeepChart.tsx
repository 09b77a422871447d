import { createSignal, Show } from 'solid-js'
import { newId } from '../../notebook/create'
import type { Chart } from '../../notebook/notebook'
import type { Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'

/** The name of a chart, and what keeps it in the notebook or takes it out. */
export function KeepChart<T extends Chart>(props: {
  chart: T
  /** false while something of it is not entered, so that it is not the chart that is asked for */
  whole?: boolean
  onKept: (chart: T) => void
  onRemoved: () => void
}) {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const kept = () => Object.hasOwn(book.notebook().charts, props.chart.id)
  let name!: HTMLInputElement

  function keep(event: SubmitEvent): void {
    event.preventDefault()
    if (props.whole === false) return
    const chart: T = { ...props.chart, id: kept() ? props.chart.id : newId(), name: name.value.trim() }
    const refused = book.dispatch({ type: 'put_chart', chart })
    setProblems(refused ? [refused] : [])
    if (refused) return
    props.onKept(chart)
    announce(say('page.study.kept', { name: chart.name }))
  }

  function remove(): void {
    const refused = book.dispatch({ type: 'remove_chart', chart: props.chart.id })
    setProblems(refused ? [refused] : [])
    if (refused) return
    announce(say('page.study.removed', { name: props.chart.name }))
    props.onRemoved()
  }

  return (
    <>
      <form class="keep" onSubmit={keep}>
        <label>
          {say('page.study.name')}
          <input ref={name} class="field" value={props.chart.name} maxlength={200} autocomplete="off" required />
        </label>
        <button type="submit" class="act" disabled={!book.writable() || props.whole === false}>
          {say(kept() ? 'page.study.keep_changes' : 'page.study.keep')}
        </button>
        <Show when={kept()}>
          <button type="button" class="act" disabled={!book.writable()} onClick={remove}>
            {say('page.study.remove')}
          </button>
        </Show>
      </form>
      <Problems problems={problems()} />
    </>
  )
}
