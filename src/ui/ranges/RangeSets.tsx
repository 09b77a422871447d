import { createSignal, For, Show } from 'solid-js'
import type { Problem } from '../../words/problem'
import { problem } from '../../words/problem'
import { say } from '../../words/say'
import type { TargetSet } from '../../worksheet/definition'
import { prepareOwnWorksheets } from '../../worksheet/ownWorksheets'
import { SHIPPED_TARGETS } from '../../worksheet/shippedTargets'
import { copySet, ownSet, setId, setOf } from '../../worksheet/targetCopy'
import { TARGET_SET } from '../../worksheet/withTargets'
import { wordOf } from '../grid/cellView'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { RangeTable } from './RangeTable'

/** The sets of ranges: which one this pool goes by, and copies with other values. */
export function RangeSets() {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const row = () => book.catalog().quantities.get(TARGET_SET)?.row
  const choices = (): readonly string[] => {
    const of = row()
    return of && 'choices' in of ? of.choices : []
  }
  const name = (id: string) => wordOf(TARGET_SET, id, row())
  const used = () => {
    const outcome = book.outcome(book.baseline(), TARGET_SET)
    return outcome && 'value' in outcome ? String(outcome.value) : ''
  }
  const own = (): readonly TargetSet[] =>
    Object.values(book.notebook().worksheets).flatMap((definition) => setOf(definition) ?? [])
  const all = (): readonly TargetSet[] => [...SHIPPED_TARGETS, ...own()]

  async function copy(event: SubmitEvent & { currentTarget: HTMLFormElement }): Promise<void> {
    event.preventDefault()
    const form = event.currentTarget
    const data = new FormData(form)
    const label = String(data.get('name')).trim()
    const from = all().find(({ id }) => id === data.get('set'))
    if (label === '' || !from) {
      setProblems([problem('range_nameless')])
      return
    }
    const taken = new Set([...choices(), ...Object.keys(book.notebook().worksheets)])
    await prepareOwnWorksheets()
    const set = copySet(from, setId(label, taken), label, name(from.id))
    const trouble = book.dispatch({ type: 'put_worksheet', id: set.id, definition: ownSet(set) })
    setProblems(trouble ? [trouble] : [])
    if (!trouble) form.reset()
  }

  return (
    <section>
      <h2>{say('page.ranges.sets')}</h2>
      <form onSubmit={(event) => event.preventDefault()}>
        <label>
          {say('page.ranges.used')}
          <select
            class="field"
            disabled={!book.writable()}
            onChange={(event) => {
              const id = event.currentTarget.value
              book.dispatch({
                type: 'set_cell',
                scenario: book.baseline(),
                quantity: TARGET_SET,
                cell: id === '' ? null : { kind: 'choice', id },
              })
            }}
          >
            <option value="" selected={used() === ''}>
              {say('page.ranges.rows_own')}
            </option>
            <For each={choices()}>
              {(id) => (
                <option value={id} selected={used() === id}>
                  {name(id)}
                </option>
              )}
            </For>
          </select>
        </label>
      </form>
      <Show when={book.writable()}>
        <form onSubmit={copy}>
          <label>
            {say('page.ranges.copy_of')}
            <select class="field" name="set">
              <For each={all()}>{({ id }) => <option value={id}>{name(id)}</option>}</For>
            </select>
          </label>
          <label>
            {say('page.ranges.copy_name')}
            <input class="field" name="name" maxlength={80} autocomplete="off" />
          </label>
          <button type="submit" class="act main">
            {say('page.ranges.copy')}
          </button>
        </form>
      </Show>
      <Problems problems={problems()} />
      <Show when={own().length === 0}>
        <p class="quiet">{say('page.ranges.none')}</p>
      </Show>
      <For each={own().map(({ id }) => id)}>
        {(id) => (
          <Show when={own().find((set) => set.id === id)}>{(set) => <RangeTable set={set()} name={name(id)} />}</Show>
        )}
      </For>
    </section>
  )
}
