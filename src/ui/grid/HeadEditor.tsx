import { createSignal, createUniqueId, onMount, Show } from 'solid-js'
import type { Problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { useBook } from '../shell/book'

/** A line for a scenario's name or note, in its heading. */
export function HeadEditor(props: { scenario: string; part: 'name' | 'note'; onDone: () => void }) {
  const book = useBook()
  const [fault, setFault] = createSignal<Problem | null>(null)
  const faultId = createUniqueId()
  let input: HTMLInputElement | undefined
  let done = false
  const standing = () => book.scenario(props.scenario)?.[props.part] ?? ''

  onMount(() => {
    input?.focus()
    input?.select()
  })

  function finish(): void {
    if (done) return
    done = true
    props.onDone()
  }

  function commit(text: string): void {
    if (done) return
    const trouble =
      text === standing()
        ? null
        : book.dispatch({ type: 'change_scenario', scenario: props.scenario, set: { [props.part]: text.trim() } })
    setFault(trouble)
    if (trouble === null) finish()
  }

  return (
    <div class="editor in-head">
      <input
        ref={input}
        value={standing()}
        autocomplete="off"
        aria-label={say(`page.scenario_${props.part}`)}
        aria-invalid={fault() !== null}
        aria-describedby={faultId}
        onKeyDown={(event) => {
          event.stopPropagation()
          if (event.key !== 'Enter' && event.key !== 'Escape') return
          // The heading takes the focus back, and must not be pressed by the same key.
          event.preventDefault()
          if (event.key === 'Enter') commit(event.currentTarget.value)
          else finish()
        }}
        onBlur={(event) => commit(event.currentTarget.value)}
      />
      <div role="alert" id={faultId}>
        <Show when={fault()}>{(trouble) => sentence(trouble())}</Show>
      </div>
    </div>
  )
}
