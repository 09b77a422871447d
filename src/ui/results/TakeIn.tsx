import { createSignal, Show } from 'solid-js'
import { type Problem, problem } from '../../words/problem'
import { say, sentence } from '../../words/say'
import { CensoredSwitch } from '../lab/CensoredSwitch'
import type { Keeping } from '../lab/createKeeping'
import { setLabFile } from '../lab/labFile'
import { type Censored, takeIn } from '../lab/takeIn'
import { Problems } from '../notebooks/Problems'
import { Switch } from '../rail/Switch'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { goTo } from '../shell/place'
import type { Table } from './createTable'

/**
 * The chosen rows become scenarios of the notebook, or samples that its scenarios can be tied to. The file is kept with
 * them, so that each reading can be traced to its row and column.
 */
export function TakeIn(props: { table: Table; keeping: Keeping }) {
  const book = useBook()
  const [whose, setWhose] = createSignal<'elsewhere' | 'here'>('elsewhere')
  const [as, setAs] = createSignal<'scenarios' | 'samples'>('scenarios')
  const [censored, setCensored] = createSignal<Censored>('leave_out')
  const [trouble, setTrouble] = createSignal<Problem | null>(null)
  const count = () => props.table.chosen.count()

  async function take(): Promise<void> {
    const chosen = props.table.chosen.list()
    const edit = takeIn(book.notebook(), props.table.source, chosen, {
      elsewhere: whose() === 'elsewhere',
      censored: censored(),
      scenarios: as() === 'scenarios',
      catalog: book.catalog(),
    })
    const before = book.scenarios().length
    const refused = book.dispatch(edit)
    setTrouble(refused)
    if (refused) return
    announce(say('page.lab.taken', { count: chosen.length }))
    const notKept = await props.keeping.keep()
    if (notKept) setTrouble(problem('import_taken_not_kept', [], { why: sentence(notKept) }))
    if (as() === 'samples' || notKept) {
      props.table.chosen.only(new Int32Array())
      return
    }
    // The first of the new scenarios comes into sight.
    book.selection.selectAt({ row: 0, column: before })
    setLabFile(null)
    goTo({ page: 'worksheets', part: 'sample' })
  }

  return (
    <section>
      <h2>{say('page.results.take')}</h2>
      <p class="quiet">
        {count() > 0 ? say('page.results.chosen_count', { count: count() }) : say('page.results.chosen_none')}
      </p>
      <Switch<'scenarios' | 'samples'>
        label={say('page.results.take_as')}
        value={as()}
        options={[
          ['scenarios', say('page.results.take_as.scenarios')],
          ['samples', say('page.results.take_as.samples')],
        ]}
        onChange={setAs}
      />
      <Switch<'elsewhere' | 'here'>
        label={say('page.lab.whose')}
        value={whose()}
        options={[
          ['elsewhere', say('page.lab.whose.elsewhere')],
          ['here', say('page.lab.whose.here', { name: book.notebook().name })],
        ]}
        onChange={setWhose}
      />
      <Show when={props.table.source.head.account.censored > 0}>
        <CensoredSwitch keeps value={censored()} onChange={setCensored} />
      </Show>
      <Problems problems={trouble() ? [trouble() as Problem] : []} />
      <div class="acts">
        <button type="button" class="act main" disabled={count() === 0 || !book.writable()} onClick={take}>
          {say('page.lab.take', { count: count() })}
        </button>
      </div>
    </section>
  )
}
