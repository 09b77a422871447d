import { createMemo, createSignal, For, Show } from 'solid-js'
import type { CaseLine } from '../../planner/cases/planWithCases'
import type { Problem } from '../../words/problem'
import { hasWords, say } from '../../words/say'
import { wordOf } from '../grid/cellView'
import { labelInside, labelOf } from '../labelOf'
import { downloadText } from '../notebooks/downloadText'
import { FileButton } from '../notebooks/FileButton'
import { Problems } from '../notebooks/Problems'
import { useBook } from '../shell/book'
import { readCaseFile } from './readCaseFile'

/** What the eye sees at the pool and no reading tells: asked here, kept in the scenario like any other entry. */
const SEEN = ['water_look', 'occasion', 'circulation', 'chlorine_doubt'] as const

/** Cases that are not routine: those whose signs are here first; the reader follows one, or leaves it. */
export function Cases(props: { scenario: string; cases: readonly CaseLine[]; asks: readonly string[] }) {
  const book = useBook()
  const [problems, setProblems] = createSignal<readonly Problem[]>([])
  const chosen = () => book.scenario(props.scenario)?.cases ?? []
  const near = createMemo(() =>
    props.cases.filter(({ id, followed, when }) => followed || chosen().includes(id) || when.truth === 'yes'),
  )
  const others = createMemo(() => props.cases.filter((one) => !near().includes(one)))
  const followed = () => props.cases.filter((one) => one.followed).length
  const summary = () => {
    if (followed() > 0) return say('page.cases', { count: followed() })
    return near().length > 0 ? say('page.cases.signs', { count: near().length }) : say('page.cases.none')
  }
  const choose = (cases: readonly string[]) =>
    book.dispatch({ type: 'change_scenario', scenario: props.scenario, set: { cases } })

  async function load(file: File): Promise<void> {
    const read = await readCaseFile(file, book.notebook().cases, book.notebook().rules)
    if (!('format' in read)) {
      setProblems(read)
      return
    }
    const trouble = book.dispatch({ type: 'put_case', id: read.id, definition: read })
    setProblems(trouble ? [trouble] : [])
  }

  return (
    <details class="shelf cases" open={near().length > 0}>
      <summary>{summary()}</summary>
      <p class="quiet">{say('page.cases.intro')}</p>
      <form class="seen" onSubmit={(event) => event.preventDefault()} aria-label={say('page.cases.seen')}>
        <For each={SEEN}>{(quantity) => <Seen quantity={quantity} scenario={props.scenario} />}</For>
      </form>
      <ul class="lines">
        <For each={near()}>
          {(one) => (
            <li>
              <span class="name">{caseLabel(one)}</span>
              <span class="quiet">{why(one, chosen().includes(one.id))}</span>
              <Show when={chosen().includes(one.id) || !one.followed}>
                <button
                  type="button"
                  class="act"
                  disabled={!book.writable()}
                  aria-label={`${say(chosen().includes(one.id) ? 'page.cases.leave' : 'page.cases.follow')} ${caseLabel(one)}`}
                  onClick={() =>
                    choose(chosen().includes(one.id) ? chosen().filter((id) => id !== one.id) : [...chosen(), one.id])
                  }
                >
                  {say(chosen().includes(one.id) ? 'page.cases.leave' : 'page.cases.follow')}
                </button>
              </Show>
            </li>
          )}
        </For>
      </ul>
      <Show when={props.asks.length > 0}>
        <p>
          {say('page.cases.asks', {
            readings: props.asks.map((name) => labelInside(name, book.catalog().quantities.get(name)?.row)),
          })}
        </p>
      </Show>
      <div class="acts">
        <label>
          {say('page.cases.other')}
          <select
            class="field"
            disabled={!book.writable()}
            onChange={(event) => {
              const id = event.currentTarget.value
              if (id !== '') choose([...chosen(), id])
              event.currentTarget.value = ''
            }}
          >
            <option value="">{say('page.cases.pick')}</option>
            <For each={others()}>{(one) => <option value={one.id}>{caseLabel(one)}</option>}</For>
          </select>
        </label>
        <FileButton
          label={say('page.cases.load')}
          accept=".json,application/json"
          disabled={!book.writable()}
          onFile={load}
        />
      </div>
      <OwnCases />
      <Problems problems={problems()} intro={say('page.cases.refused')} />
    </details>
  )
}

/** The cases that came from files: to save again, or to take out. */
function OwnCases() {
  const book = useBook()
  const own = () => Object.entries(book.notebook().cases)
  return (
    <ul class="lines">
      <For each={own()}>
        {([id, definition]) => (
          <li>
            <span class="name">{ownLabel(id, definition)}</span>
            <span class="quiet">{say('page.cases.own')}</span>
            <button
              type="button"
              class="act"
              onClick={() => downloadText(`${id}.json`, `${JSON.stringify(definition, null, 2)}\n`)}
            >
              {say('page.cases.export')}
            </button>
            <button
              type="button"
              class="act"
              disabled={!book.writable()}
              onClick={() => book.dispatch({ type: 'remove_case', id })}
            >
              {say('page.cases.remove')}
            </button>
          </li>
        )}
      </For>
    </ul>
  )
}

function Seen(props: { quantity: string; scenario: string }) {
  const book = useBook()
  const row = () => book.catalog().quantities.get(props.quantity)?.row
  const choices = () => {
    const of = row()
    return of && 'choices' in of ? of.choices : []
  }
  const now = () => {
    const outcome = book.outcome(props.scenario, props.quantity)
    return outcome && 'value' in outcome ? String(outcome.value) : ''
  }
  return (
    <label>
      {labelOf(props.quantity, row())}
      <select
        class="field"
        disabled={!book.writable()}
        onChange={(event) => {
          const id = event.currentTarget.value
          book.dispatch({
            type: 'set_cell',
            scenario: props.scenario,
            quantity: props.quantity,
            cell: id === '' ? null : { kind: 'choice', id },
          })
        }}
      >
        <option value="" selected={now() === ''}>
          {say('page.cases.unknown')}
        </option>
        <For each={choices()}>
          {(id) => (
            <option value={id} selected={now() === id}>
              {wordOf(props.quantity, id, row())}
            </option>
          )}
        </For>
      </select>
    </label>
  )
}

function caseLabel({ id, label }: CaseLine): string {
  return label ?? say(`case.${id}.label`)
}

function ownLabel(id: string, definition: unknown): string {
  const label =
    typeof definition === 'object' && definition !== null && 'label' in definition ? definition.label : undefined
  return typeof label === 'string' ? label : id
}

function why({ id, when, followed }: CaseLine, chosen: boolean): string {
  const because = hasWords(`case.${id}.because`) && when.truth === 'yes' ? say(`case.${id}.because`) : ''
  if (!chosen && !followed && because !== '') return because
  const state = chosen ? say('page.cases.followed') : say(followed ? 'page.cases.by_itself' : 'page.cases.offered')
  return because === '' ? state : `${because} ${state}`
}
