import '../look/record.css'
import { createMemo, createSignal, Match, Show, Switch } from 'solid-js'
import { foretold } from '../../record/foretold'
import { pagePlan } from '../../words/en/page-plan'
import { planWords } from '../../words/en/plan'
import { recordWords } from '../../words/en/record'
import { addWords, say } from '../../words/say'
import { downloadBlob } from '../notebooks/downloadText'
import { noteExport } from '../notebooks/exported'
import { fileStem, saveToFile } from '../notebooks/saveToFile'
import { useBook } from '../shell/book'
import { AdditionForm } from './AdditionForm'
import { createRecord } from './createRecord'
import { Learning } from './Learning'
import { NightForm } from './NightForm'
import { OutcomeView } from './OutcomeView'
import { RemarkForm } from './RemarkForm'
import { recordCsv } from './recordCsv'
import { Timeline } from './Timeline'
import { Trends } from './Trends'

addWords({ ...pagePlan, ...planWords, ...recordWords })

/** The pool's record: what was measured, planned, added and written down by date, and what that teaches. */
export function RecordPage() {
  const book = useBook()
  const view = createRecord(book)
  const [writing, setWriting] = createSignal<'addition' | 'remark' | null>(null)
  const outcomes = createMemo(() => foretold(book.notebook(), view.errorOf()))
  const isEmpty = () => {
    const { samples, plans, additions, remarks, lessons } = book.notebook()
    const own = Object.values(samples).filter(({ elsewhere }) => !elsewhere)
    return own.length === 0 && [plans, additions, remarks, lessons].every((part) => Object.keys(part).length === 0)
  }

  function saveCsv(): void {
    const { id, name } = book.notebook()
    const file = `${fileStem(say('record.csv_name', { name }))}.csv`
    const content = new Blob([recordCsv(book.notebook())], { type: 'text/csv' })
    downloadBlob(file, content)
    void noteExport(id, file, content)
  }

  return (
    <article class="text-page record">
      <h1>{say('page.title.record')}</h1>
      <p class="intro">{say('record.intro')}</p>
      <div class="acts">
        <Write what="addition" label={say('record.add')} />
        <Write what="remark" label={say('record.remark')} />
        <button type="button" class="act" onClick={saveCsv}>
          {say('record.save_csv')}
        </button>
        <button type="button" class="act" onClick={() => saveToFile(book.notebook())}>
          {say('page.save_file')}
        </button>
      </div>
      <Switch>
        <Match when={writing() === 'addition'}>
          <AdditionForm view={view} onDone={() => setWriting(null)} />
        </Match>
        <Match when={writing() === 'remark'}>
          <RemarkForm view={view} onDone={() => setWriting(null)} />
        </Match>
      </Switch>

      <Show when={outcomes().at(-1)}>
        {(latest) => (
          <section>
            <h2>{say('record.outcome')}</h2>
            <OutcomeView view={view} outcome={latest()} />
          </section>
        )}
      </Show>
      <section>
        <h2>{say('record.learn')}</h2>
        <Learning view={view} />
        <NightForm view={view} />
      </section>
      <section>
        <h2>{say('record.trends')}</h2>
        <Trends view={view} outcomes={outcomes()} />
      </section>
      <section>
        <h2>{say('record.timeline')}</h2>
        <Show when={!isEmpty()} fallback={<p class="quiet">{say('record.empty')}</p>}>
          <Timeline view={view} outcomes={outcomes()} />
        </Show>
      </section>
    </article>
  )

  function Write(props: { what: 'addition' | 'remark'; label: string }) {
    return (
      <button
        type="button"
        class="act"
        disabled={!book.writable()}
        aria-expanded={writing() === props.what}
        onClick={() => setWriting(writing() === props.what ? null : props.what)}
      >
        {props.label}
      </button>
    )
  }
}
