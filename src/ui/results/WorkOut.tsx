import { createMemo, createRenderEffect, createSignal, For, onCleanup, Show } from 'solid-js'
import { createBatchClient } from '../../engine/batchConnect'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import { worksheetLabel } from '../grid/worksheetLabel'
import { CensoredSwitch } from '../lab/CensoredSwitch'
import { ProgressLine } from '../lab/ProgressLine'
import type { Censored } from '../lab/takeIn'
import { labelOf } from '../labelOf'
import { Problems } from '../notebooks/Problems'
import { Switch } from '../rail/Switch'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import type { Table } from './createTable'
import { orderOf } from './orderOf'
import { baselineSettings, NO_SETTINGS } from './reader'

/** Worksheets that most lab files have the readings for. */
const FIRST = ['saturation', 'stabilizer']

/** Which worksheets the samples are put through, and the run itself. */
export function WorkOut(props: { table: Table }) {
  const book = useBook()
  const client = createBatchClient()
  const [wanted, setWanted] = createSignal<ReadonlySet<string>>(new Set(FIRST.flatMap((id) => resultsOf(id))))
  const [settings, setSettings] = createSignal<'none' | 'baseline'>('none')
  const [censored, setCensored] = createSignal<Censored>('leave_out')
  const [done, setDone] = createSignal<number | null>(null)
  const [problem, setProblem] = createSignal<Problem | null>(null)
  let running = new AbortController()
  onCleanup(() => client.close())

  function resultsOf(worksheet: string): readonly string[] {
    return [...book.catalog().quantities.values()].flatMap(({ name, formula, worksheet: of }) =>
      formula && of === worksheet ? [name] : [],
    )
  }
  const offered = createMemo(() => book.catalog().worksheets.filter(({ id }) => resultsOf(id).length > 0))
  const count = () => props.table.source.columns.count
  const baselineName = () => book.scenario(book.baseline())?.name ?? ''

  function want(names: readonly string[], on: boolean): void {
    const next = new Set(wanted())
    for (const name of names) {
      if (on) next.add(name)
      else next.delete(name)
    }
    setWanted(next)
  }

  async function run(): Promise<void> {
    const given = settings() === 'baseline' ? baselineSettings(book) : NO_SETTINGS
    const inOrder = [...book.catalog().quantities.keys()].filter((name) => wanted().has(name))
    running = new AbortController()
    setProblem(null)
    setDone(0)
    const order = orderOf(props.table.source, inOrder, censored(), given, book.notebook())
    const results = await client.evaluate(order, setDone, running.signal)
    setDone(null)
    if (isProblem(results)) setProblem(results)
    else if (results === null) announce(say('page.results.cancelled'))
    else {
      props.table.setWorked({ results, settings: given })
      announce(say('page.results.done', { count: results.count }))
    }
  }

  return (
    <section>
      <h2>{say('page.results.work_out')}</h2>
      <p class="intro">{say('page.results.work_out_intro')}</p>
      <ul class="offers">
        <For each={offered()}>
          {(definition) => {
            const [unfolded, setUnfolded] = createSignal(false)
            const names = () => resultsOf(definition.id)
            const some = () => names().some((name) => wanted().has(name))
            const all = () => names().every((name) => wanted().has(name))
            return (
              <li>
                <label class="choice">
                  <input
                    type="checkbox"
                    checked={all()}
                    ref={(box) =>
                      createRenderEffect(() => {
                        box.indeterminate = some() && !all()
                      })
                    }
                    onChange={(event) => want(names(), event.currentTarget.checked)}
                  />{' '}
                  <span class="serif">{worksheetLabel(definition)}</span>
                </label>
                <details onToggle={(event) => setUnfolded(unfolded() || event.currentTarget.open)}>
                  <summary class="quiet">{say('page.results.single')}</summary>
                  <For each={unfolded() ? names() : []}>
                    {(name) => (
                      <label class="choice">
                        <input
                          type="checkbox"
                          checked={wanted().has(name)}
                          onChange={(event) => want([name], event.currentTarget.checked)}
                        />{' '}
                        {labelOf(name, book.catalog().quantities.get(name)?.row)}
                      </label>
                    )}
                  </For>
                </details>
              </li>
            )
          }}
        </For>
      </ul>
      <Switch<'none' | 'baseline'>
        label={say('page.results.settings')}
        value={settings()}
        options={[
          ['none', say('page.results.settings.none')],
          ['baseline', say('page.results.settings.baseline', { name: baselineName() })],
        ]}
        onChange={setSettings}
      />
      <Show when={props.table.source.head.account.censored > 0}>
        <CensoredSwitch value={censored()} onChange={setCensored} />
      </Show>
      <Problems problems={problem() ? [problem() as Problem] : []} />
      <div class="acts">
        <Show
          when={done() !== null}
          fallback={
            <button type="button" class="act main" disabled={wanted().size === 0 || count() === 0} onClick={run}>
              {say('page.results.go', { count: count() })}
            </button>
          }
        >
          <ProgressLine
            label={say('page.results.work_out')}
            done={done() ?? 0}
            total={count()}
            says={say('page.results.working', { done: done() ?? 0, count: count() })}
            onCancel={() => running.abort()}
          />
        </Show>
      </div>
    </section>
  )
}
