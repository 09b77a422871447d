import './results.css'
import { createSignal, Show } from 'solid-js'
import { results as words } from '../../words/en/results'
import { addWords, say } from '../../words/say'
import type { Keeping } from '../lab/createKeeping'
import type { LabImport } from '../lab/labImport'
import { downloadBlob } from '../notebooks/downloadText'
import { announce } from '../shell/announce'
import { useBook } from '../shell/book'
import { Chart } from './Chart'
import { ColumnPicker } from './ColumnPicker'
import { createStages } from './createStages'
import { createTable } from './createTable'
import { exportCsv } from './exportCsv'
import { FilterForm } from './FilterForm'
import { SamplesTable } from './SamplesTable'
import { SummaryTable } from './SummaryTable'
import { TakeIn } from './TakeIn'
import { TraceLine } from './TraceLine'
import { WorkOut } from './WorkOut'

addWords(words)

/** The samples of one lab file: what can be worked out of them, the table of all, their summary and a chart. */
export function ResultsView(props: { source: LabImport; keeping: Keeping }) {
  const book = useBook()
  const table = createTable(book, props.source)
  const [saving, setSaving] = createSignal(false)
  const stage = createStages(4)
  const count = () => props.source.columns.count

  async function save(): Promise<void> {
    setSaving(true)
    const rows = table.rows()
    const csv = await exportCsv(table.shown(), rows)
    downloadBlob(`${props.source.head.name.replace(/\.[^.]*$/, '')}.results.csv`, csv)
    setSaving(false)
    announce(say('page.results.saved', { count: rows.length }))
  }

  return (
    <div class="results">
      <Show when={stage() > 0}>
        <WorkOut table={table} />
      </Show>
      <Show when={stage() > 1}>
        <section>
          <h2>{say('page.results.table')}</h2>
          <FilterForm table={table} />
          <div class="over">
            <p class="quiet" role="status">
              {table.rows().length === count()
                ? say('page.results.rows_all', { count: count() })
                : say('page.results.rows_shown', { shown: table.rows().length, count: count() })}{' '}
              {table.arranging() ? say('page.results.arranging') : ''}
            </p>
            <ColumnPicker table={table} />
            <button type="button" class="act" disabled={saving()} onClick={save}>
              {saving() ? say('page.results.saving') : say('page.results.save')}
            </button>
          </div>
          <SamplesTable table={table} label={say('page.results.table')} />
          <TraceLine table={table} />
        </section>
        <TakeIn table={table} keeping={props.keeping} />
      </Show>
      <Show when={stage() > 2}>
        <section>
          <h2>{say('page.results.summary')}</h2>
          <SummaryTable table={table} />
        </section>
      </Show>
      <Show when={stage() > 3 && count() > 1}>
        <Chart table={table} />
      </Show>
    </div>
  )
}
