import { createMemo, createResource, createSignal, createUniqueId, For, Show } from 'solid-js'
import { createFinder } from '../../storage/finder'
import type { Entry } from '../../storage/records'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { useDesk } from '../shell/desk'
import { goToField, moveOn } from './chain'
import { newPool } from './newPool'
import { useDeskPlace } from './placeContext'
import { poolsFor } from './poolsFor'
import { setArriving } from './resume'
import { dayWords } from './when'

/** A pool by its name or place as one types: one that is kept is opened, another is made. */
export function PoolPicker() {
  const book = useBook()
  const desk = useDesk()
  const place = useDeskPlace()
  const id = createUniqueId()
  const left = place.left()
  const [typed, setTyped] = createSignal(left?.field === 'pool' ? left.text : '')
  /** the choice that the arrows went to; null while none was used, and what was typed says it */
  const [moved, setMoved] = createSignal<number | null>(null)
  const [open, setOpen] = createSignal(typed() !== '')
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const [kept] = createResource(() => desk.list())

  const entries = createMemo((): readonly Entry[] => {
    const now = kept()
    return now === undefined || isProblem(now) ? [] : now
  })
  const finder = createMemo(() => createFinder(entries()))
  const offered = createMemo(() => poolsFor(typed(), entries(), finder()))
  const found = () => offered().found
  const at = () => moved() ?? offered().taken
  const isNew = (option: number) => option === found().length
  const count = () => found().length + 1

  function type(text: string): void {
    setTyped(text)
    setMoved(null)
    setOpen(text.trim() !== '')
    place.at('pool', text)
  }

  async function choose(option: number, from: Element): Promise<void> {
    const entry = found()[option]
    const name = typed().trim()
    setOpen(false)
    setTyped('')
    place.at('pool')
    if (entry?.id === book.notebook().id) return moveOn(from)
    setArriving(entry ? 'bottle' : 'place')
    if (entry) {
      await desk.open(entry.id)
      return
    }
    const why = await desk.add(newPool(name, desk.profile()))
    setProblems(why ? [why] : [])
  }

  function onKeyDown(event: KeyboardEvent & { currentTarget: HTMLInputElement }): void {
    const { key, currentTarget: input } = event
    if (event.isComposing || event.ctrlKey || event.metaKey || event.altKey) return
    if (key === 'Enter') {
      if (open()) void choose(at(), input)
      else if (!goToField('new_bottle') && !goToField('sample_age')) moveOn(input)
    } else if (key === 'ArrowDown') {
      if (open()) setMoved((at() + 1) % count())
      else moveOn(input)
    } else if (key === 'ArrowUp' && open()) setMoved((at() + count() - 1) % count())
    else if (key === 'Escape' && open()) type('')
    else return
    event.preventDefault()
  }

  return (
    <section class="picker">
      <div class="line">
        <label for={id}>{say('page.desk.find')}</label>
        <input
          id={id}
          type="text"
          class="field"
          role="combobox"
          autocomplete="off"
          maxlength={200}
          data-desk="pool"
          aria-expanded={open()}
          aria-controls={`${id}-list`}
          aria-activedescendant={open() ? `${id}-${at()}` : undefined}
          aria-describedby={`${id}-help`}
          value={typed()}
          onInput={(event) => type(event.currentTarget.value)}
          onFocus={() => place.at('pool', typed())}
          onKeyDown={onKeyDown}
        />
        <p class="help quiet" id={`${id}-help`}>
          {say('page.desk.find_help')}
        </p>
      </div>
      <div class="found" role="listbox" id={`${id}-list`} aria-label={say('page.desk.pool')} hidden={!open()}>
        <For each={found()}>
          {(entry, option) => (
            <Option id={`${id}-${option()}`} on={at() === option()} choose={(from) => void choose(option(), from)}>
              <span class="name">{entry.name}</span>
              <span>{entry.place}</span>
              <span class="quiet">
                {entry.id === book.notebook().id
                  ? say('page.desk.open_now')
                  : say('page.desk.last_changed', { date: dayWords(new Date(entry.changed)) })}
              </span>
            </Option>
          )}
        </For>
        <Option id={`${id}-${found().length}`} on={isNew(at())} choose={(from) => void choose(found().length, from)}>
          <span class="name">{say('page.desk.new_pool', { name: typed().trim() })}</span>
        </Option>
      </div>
      <Show when={problems().length > 0}>
        <Problems problems={problems()} />
      </Show>
    </section>
  )
}

function Option(props: { id: string; on: boolean; choose: (from: Element) => void; children: unknown }) {
  return (
    <div
      id={props.id}
      role="option"
      aria-selected={props.on}
      tabindex={-1}
      onMouseDown={(event) => {
        // before the field loses the focus
        event.preventDefault()
        props.choose(event.currentTarget)
      }}
    >
      {props.children as never}
    </div>
  )
}
