import { createSignal, For } from 'solid-js'
import { say } from '../../words/say'
import { worksheetLabel } from '../grid/worksheetLabel'
import { useBook } from '../shell/book'
import type { Table } from './createTable'
import type { TableColumn } from './tableColumn'

/** Which columns the table shows, those of one worksheet together. */
export function ColumnPicker(props: { table: Table }) {
  const book = useBook()
  const [unfolded, setUnfolded] = createSignal(false)
  const groups = (): readonly (readonly [label: string, columns: readonly TableColumn[]])[] => {
    const of = (group: TableColumn['group']) => props.table.columns().filter((column) => column.group === group)
    const results = of('result')
    const worksheetOf = (key: string) => book.catalog().quantities.get(key)?.worksheet
    const worksheets = book.catalog().worksheets.map((definition) => {
      const theirs = results.filter(({ key }) => worksheetOf(key) === definition.id)
      return [worksheetLabel(definition), theirs] as const
    })
    const remarks = results.filter(({ row }) => row === undefined)
    return [
      [say('page.results.columns.readings'), of('reading')] as const,
      ...worksheets,
      [say('page.results.remarks'), remarks] as const,
      [say('page.results.columns.notes'), of('note')] as const,
    ].filter(([, columns]) => columns.length > 0)
  }
  return (
    <details class="picker" onToggle={(event) => setUnfolded(unfolded() || event.currentTarget.open)}>
      <summary class="act">{say('page.results.columns')}</summary>
      <For each={unfolded() ? groups() : []}>
        {([label, columns]) => (
          <fieldset>
            <legend class="quiet">{label}</legend>
            <For each={columns}>
              {(column) => (
                <label class="choice">
                  <input
                    type="checkbox"
                    checked={props.table.isShown(column.key)}
                    onChange={(event) => props.table.show(column.key, event.currentTarget.checked)}
                  />{' '}
                  {column.label}
                </label>
              )}
            </For>
          </fieldset>
        )}
      </For>
    </details>
  )
}
