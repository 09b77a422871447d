import { createEffect, createSignal, For, on, onCleanup, Show } from 'solid-js'
import { formatValue } from '../../units/format'
import { say } from '../../words/say'
import { decimalsOf } from '../decimalsOf'
import { inSteps } from '../shell/inSteps'
import { Wide } from '../shell/Wide'
import { unitWords } from '../unitWords'
import type { Table } from './createTable'
import { Histogram } from './Histogram'
import { createSlices } from './slices'
import { PERCENTILES, type Spread, type Summary, summarise } from './summarise'
import type { TableColumn } from './tableColumn'

interface Line {
  readonly column: TableColumn
  readonly summary: Summary
}

/** The shown rows in figures, one line a quantity: how many, what is missing, how the values lie. */
export function SummaryTable(props: { table: Table }) {
  const [lines, setLines] = createSignal<readonly Line[]>([])
  const quantities = () => props.table.shown().filter(({ row }) => row !== undefined)
  const drawn = inSteps(lines, 3)
  let turn = 0
  onCleanup(() => turn++)
  createEffect(
    on([quantities, props.table.rows], async ([columns, rows]) => {
      const mine = ++turn
      const slices = createSlices()
      const found: Line[] = []
      for (const column of columns) {
        await slices.pause()
        const summary = mine === turn && (await summarise(column, rows, slices, () => mine !== turn))
        if (!summary) return
        found.push({ column, summary })
      }
      setLines(found)
    }),
  )

  return (
    <Wide label={say('page.results.summary')}>
      <table class="summary">
        <thead>
          <tr>
            <th scope="col">{say('page.results.summary.quantity')}</th>
            <th scope="col">{say('page.results.summary.unit')}</th>
            <th scope="col" class="figure">
              {say('page.results.summary.values')}
            </th>
            <th scope="col" class="figure">
              {say('page.results.summary.missing')}
            </th>
            <th scope="col" class="figure">
              {say('page.results.summary.censored')}
            </th>
            <th scope="col" class="figure">
              {say('page.results.summary.refused')}
            </th>
            <For each={PERCENTILES}>
              {(share) => (
                <th scope="col" class="figure">
                  {share === 50 ? say('page.results.summary.median') : `${share} %`}
                </th>
              )}
            </For>
            <th scope="col">{say('page.results.summary.spread')}</th>
          </tr>
        </thead>
        <tbody>
          <For each={drawn()}>
            {({ column, summary }) => (
              <tr>
                <th scope="row" classList={{ serif: column.group === 'result' }}>
                  {column.label}
                </th>
                <td class="quiet">{unitWords(column.unit)}</td>
                <td class="figure">{count(summary.count.value)}</td>
                <td class="figure">{count(summary.count.missing)}</td>
                <td class="figure">{count(summary.count.censored)}</td>
                <td class="figure">{count(summary.count.refused)}</td>
                <For each={PERCENTILES}>
                  {(_, i) => (
                    <td class="figure">{summary.spread ? figure(column, summary.spread.percentiles[i()]) : ''}</td>
                  )}
                </For>
                <td>
                  <Show when={summary.spread}>
                    {(spread) => <Histogram spread={spread()} band={column.band} says={inWords(column, spread())} />}
                  </Show>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="quiet">{say('page.results.summary.note')}</p>
    </Wide>
  )
}

function count(value: number): string {
  return value === 0 ? '–' : formatValue(value, '1', '1', 0)
}

function figure({ row, unit }: TableColumn, value: number | undefined): string {
  return row && value !== undefined ? formatValue(value, row.unit, unit, decimalsOf(row)) : ''
}

function inWords(column: TableColumn, { min, max, bins }: Spread): string {
  const fullest = bins.reduce((best, bin) => (bin.count > best.count ? bin : best))
  return say('page.results.summary.histogram', {
    min: figure(column, min),
    max: figure(column, max),
    peak: figure(column, (fullest.from + fullest.to) / 2),
  })
}
