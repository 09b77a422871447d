import './handout.css'
import { createEffect, createMemo, createSignal, For, Match, onCleanup, Show, Switch } from 'solid-js'
import { isForetold } from '../../notebook/foretold'
import type { Plan } from '../../planner/step'
import { keepPreference, preference } from '../../storage/preference'
import { cases } from '../../words/en/cases'
import { casesPool } from '../../words/en/cases-pool'
import { casesWater } from '../../words/en/cases-water'
import { handout } from '../../words/en/handout'
import { pagePlan } from '../../words/en/page-plan'
import { planWords } from '../../words/en/plan'
import { planRules } from '../../words/en/plan-rules'
import { testMethods } from '../../words/en/test-methods'
import { addWords, say } from '../../words/say'
import { localTime } from '../desk/when'
import { createPlan } from '../plan/createPlan'
import type { Reader } from '../plan/planSentence'
import { untested } from '../plan/untested'
import { createKept } from '../record/createKept'
import { KeepPlan } from '../record/KeepPlan'
import { useBook } from '../shell/book'
import { placeLink, usePlace } from '../shell/place'
import { FirstSheet } from './FirstSheet'
import { SecondSheet } from './SecondSheet'
import { sheetOf } from './sheetOf'

addWords({ ...cases, ...casesPool, ...casesWater, ...pagePlan, ...planWords, ...planRules, ...testMethods, ...handout })

/** The customer's sheet: one page to take home, a second with the numbers, printed by the browser. */
export function HandoutPage() {
  const book = useBook()
  const [chosen, setChosen] = createSignal<string | null>(usePlace()().part ?? null)
  const [start, setStart] = createSignal(nextHalfHour(new Date()))
  const [store, setStore] = createSignal(preference('handout.store') ?? '')
  const [note, setNote] = createSignal(preference('handout.note') ?? '')
  const scenario = createMemo(() => {
    const wanted = chosen()
    return wanted !== null && book.scenarios().includes(wanted) ? wanted : book.baseline()
  })
  /** nobody can be given a plan for a water that nobody has */
  const foretold = () => isForetold(book.scenario(scenario()))
  const { planned, column } = createPlan(book, scenario)
  const plan = (): Plan | null => {
    const now = planned()
    return typeof now === 'string' ? null : now
  }
  const reader = createMemo(
    (): Reader => ({
      catalog: book.catalog(),
      profile: book.notebook().profile,
      unit: book.unit,
      water: column() ?? new Map(),
      changes: book.notebook().rules,
    }),
  )
  const sheet = createMemo(() => {
    const now = plan()
    return now && sheetOf(now, reader(), start(), untested(book, scenario(), start()))
  })
  const record = createKept(plan, scenario, column, reader)
  let printing: HTMLButtonElement | undefined
  createEffect(() => {
    // Enter prints, as soon as there is something to print
    if (sheet() && document.activeElement === document.body) printing?.focus()
  })

  /** What is printed is given: it goes into the pool's record as it stands, once. */
  function give(): void {
    if (plan() && record.kept() === null && book.writable() && !foretold()) record.keep()
  }
  function giveAndPrint(): void {
    give()
    print()
  }
  // the browser's own way of printing gives it too
  addEventListener('beforeprint', give)
  onCleanup(() => removeEventListener('beforeprint', give))

  function keep(name: 'store' | 'note', text: string): void {
    keepPreference(`handout.${name}`, text)
    if (name === 'store') setStore(text)
    else setNote(text)
  }

  return (
    <article class="text-page handout" aria-busy={planned() === 'making'}>
      <div class="around">
        <h1>{say('page.title.handout')}</h1>
        <p class="intro">{say('page.handout.intro')}</p>
        <div class="acts">
          <button ref={printing} type="button" class="act main" disabled={!sheet()} onClick={giveAndPrint}>
            {say('page.handout.print')}
          </button>
          <a class="act" href={placeLink({ page: 'desk' })}>
            {say('page.handout.to_desk')}
          </a>
          <a class="act" href={placeLink({ page: 'plan' })}>
            {say('page.handout.to_plan')}
          </a>
        </div>
        <Show when={plan() && !foretold()}>
          <KeepPlan record={record} />
        </Show>
        <form onSubmit={(event) => event.preventDefault()}>
          <label>
            {say('page.handout.start')}
            <input
              type="datetime-local"
              class="field"
              value={localTime(start())}
              onChange={(event) => {
                const time = new Date(event.currentTarget.value)
                if (!Number.isNaN(time.getTime())) setStart(time)
              }}
            />
          </label>
          <Show when={book.scenarios().length > 1}>
            <label>
              {say('page.handout.scenario')}
              <select class="field" onChange={(event) => setChosen(event.currentTarget.value)}>
                <For each={book.scenarios()}>
                  {(id) => (
                    <option value={id} selected={id === scenario()}>
                      {book.scenario(id)?.name}
                    </option>
                  )}
                </For>
              </select>
            </label>
          </Show>
          <label>
            {say('page.handout.store')}
            <input
              type="text"
              class="field"
              maxlength={120}
              placeholder={say('page.handout.store_help')}
              value={store()}
              onInput={(event) => keep('store', event.currentTarget.value)}
            />
          </label>
          <label>
            {say('page.handout.note')}
            <textarea
              class="field"
              rows={2}
              maxlength={600}
              placeholder={say('page.handout.store_help')}
              value={note()}
              onInput={(event) => keep('note', event.currentTarget.value)}
            />
          </label>
        </form>
      </div>
      <Switch>
        <Match when={planned() === 'making'}>
          <p class="quiet">{say('page.handout.making')}</p>
        </Match>
        <Match when={planned() === 'none'}>
          <p class="warm">{say('page.handout.none')}</p>
        </Match>
        <Match when={sheet()}>
          {(now) => (
            <>
              <FirstSheet sheet={now()} scenario={scenario()} store={store()} note={note()} reader={reader()} />
              <Show when={plan()}>
                {(made) => <SecondSheet sheet={now()} plan={made()} scenario={scenario()} reader={reader()} />}
              </Show>
            </>
          )}
        </Match>
      </Switch>
    </article>
  )
}

const [EARLIEST, LATEST] = [8, 20]

/** When the customer may be home: the next half hour that is at least a quarter of an hour away, and by daylight. */
function nextHalfHour(now: Date): Date {
  const half = 30 * 60_000
  const next = new Date(Math.ceil((now.getTime() + half / 2) / half) * half)
  if (next.getHours() >= EARLIEST && next.getHours() < LATEST) return next
  const morning = next.getHours() < EARLIEST ? 0 : 1
  return new Date(next.getFullYear(), next.getMonth(), next.getDate() + morning, EARLIEST + 1)
}
