import { createMemo, For, Show } from 'solid-js'
import { STATE } from '../../intake/columnar'
import { say, sentence } from '../../words/say'
import { noticeText } from '../noticeText'
import { problemText } from '../problemText'
import { useBook } from '../shell/book'
import { unitWords } from '../unitWords'
import type { Table } from './createTable'
import { problemAt } from './resultColumns'
import type { TableColumn } from './tableColumn'

/** Under the table: what the selected cell holds, and where in which file it comes from. */
export function TraceLine(props: { table: Table }) {
  const book = useBook()
  const table = () => props.table
  const sample = () => table().rows()[table().place().row]
  const column = () => table().shown()[table().place().column - 1]
  const label = (key: string) =>
    table()
      .columns()
      .find((one) => one.key === key)
      ?.text(sample() ?? 0) ?? ''

  const lines = createMemo((): readonly string[] => {
    const [at, of] = [sample(), column()]
    if (at === undefined || !of) return []
    return of.group === 'result' ? resultLines(at, of) : readingLines(at, of)
  })

  function resultLines(at: number, { key }: TableColumn): readonly string[] {
    const worked = table().worked()
    const quantity = book.catalog().quantities.get(key)
    const result = worked?.results.columns.find((one) => one.quantity === key)
    const problem = worked && result ? problemAt(worked.results, result, at) : undefined
    if (problem) return [quantity ? problemText(problem, quantity) : sentence(problem)]
    return key === 'remarks' ? (worked?.results.noticeSets[worked.results.notices[at] ?? 0] ?? []).map(noticeText) : []
  }

  function readingLines(at: number, of: TableColumn): readonly string[] {
    const reading = table().source.columns.quantities.find(({ quantity }) => quantity === of.key)
    const state = reading?.states[at]
    if (of.standing(at) === 'missing') return [say('page.results.not_measured')]
    if (state === STATE.estimated) return [say('page.results.estimated')]
    if (state === STATE.unlikely) return [say('page.results.unlikely')]
    return state === STATE.mean ? [say('page.results.mean')] : []
  }

  const trace = () => {
    const { head } = table().source
    const [at, of] = [sample(), column()]
    if (at === undefined || !of) return ''
    const heading = of.group === 'note' ? of.label : head.headings[of.key]
    const facts = { file: head.name, row: label('row') }
    return heading === undefined || of.group === 'result'
      ? say('page.results.traced_row', facts)
      : say('page.results.traced', { ...facts, heading })
  }

  return (
    <div class="trace" role="status">
      <Show when={sample() !== undefined && column()} fallback={<p class="quiet">{say('page.results.no_cell')}</p>}>
        {(of) => (
          <>
            <p>
              <span class="what">
                {label('name')} {of().label}
              </span>{' '}
              <span class="value" classList={{ computed: of().group === 'result' }}>
                {of().text(sample() ?? 0)} {of().standing(sample() ?? 0) === 'value' ? unitWords(of().unit) : ''}
              </span>
              <span class="quiet"> {trace()}</span>
            </p>
            <For each={lines()}>{(line) => <p class="quiet">{line}</p>}</For>
          </>
        )}
      </Show>
    </div>
  )
}
