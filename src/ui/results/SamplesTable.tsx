import { createVirtualizer } from '@tanstack/solid-virtual'
import { createEffect, createMemo, For, Index, on, Show } from 'solid-js'
import { say } from '../../words/say'
import { inSteps } from '../shell/inSteps'
import { unitWords } from '../unitWords'
import type { Place, Table } from './createTable'
import type { TableColumn } from './tableColumn'

/** Height of a row, in pixels, as the style sheet has it. */
const ROW = 30
/** Rows made above and below those in sight: all of a short file, a few of a long one. */
const beyond = (rows: number) => (rows <= 60 ? rows : 6)
const NO_ROWS = new Int32Array()

/** All samples of an import as one table: rows are made as they come into sight. */
export function SamplesTable(props: { table: Table; label: string }) {
  let box!: HTMLDivElement
  const table = () => props.table
  const virtual = createVirtualizer<HTMLDivElement, HTMLTableRowElement>({
    get count() {
      return table().rows().length
    },
    getScrollElement: () => box,
    estimateSize: () => ROW,
    get overscan() {
      return beyond(table().rows().length)
    },
  })
  /** the columns that are drawn by now: those of a long run come a few at a time */
  const drawn = inSteps(() => table().shown(), 2)
  const isDrawn = () => drawn().length === table().shown().length
  /** the column of choosing boxes stands before the first */
  const columnCount = () => table().shown().length + 1
  const widths = createMemo(() => ['2.25rem', ...drawn().map(widthOf)].join(' '))
  const cellId = ({ row, column }: Place) => `sample-${row}-${column}`
  const isAt = (row: number, column: number) => table().place().row === row && table().place().column === column
  const allChosen = () => table().chosen.count() > 0 && table().chosen.count() === table().rows().length

  createEffect(
    on(
      () => table().place().row,
      (row) => virtual.scrollToIndex(row),
      { defer: true },
    ),
  )
  createEffect(
    on(
      () => table().place(),
      (place) => {
        queueMicrotask(() => {
          document.getElementById(cellId(place))?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
        })
      },
      { defer: true },
    ),
  )

  // What has just been worked out comes into sight, beside what names the samples.
  createEffect(
    on(
      () => isDrawn() && table().worked(),
      (worked) => {
        const first = drawn().findIndex(({ group }) => group === 'result')
        if (!worked || first < 0) return
        queueMicrotask(() => {
          const head = box.querySelectorAll('thead th').item(first + 1)
          head?.scrollIntoView({ block: 'nearest', inline: 'start' })
        })
      },
      { defer: true },
    ),
  )

  function onKeyDown(event: KeyboardEvent): void {
    if (event.target !== event.currentTarget) return
    const next = moved(table().place(), event, {
      rows: table().rows().length,
      columns: columnCount(),
      page: Math.max(1, Math.floor(box.clientHeight / ROW) - 3),
    })
    if (next) table().setPlace(next)
    else if (event.key === ' ') {
      const sample = table().rows()[table().place().row]
      if (sample !== undefined) table().chosen.set(sample, !table().chosen.has(sample))
    } else return
    event.preventDefault()
  }

  return (
    <div ref={box} class="samples-box">
      <table
        class="samples"
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table that is gone through cell by cell
        role="grid"
        tabindex={0}
        aria-label={props.label}
        aria-rowcount={table().rows().length + 1}
        aria-colcount={columnCount()}
        aria-multiselectable="true"
        aria-busy={table().arranging() || !isDrawn()}
        aria-activedescendant={table().rows().length > 0 ? cellId(table().place()) : undefined}
        style={{ '--columns': widths() }}
        onKeyDown={onKeyDown}
      >
        <thead>
          <tr aria-rowindex={1}>
            <th aria-colindex={1} scope="col">
              <input
                type="checkbox"
                aria-label={say('page.results.choose_shown')}
                checked={allChosen()}
                onChange={(event) => table().chosen.only(event.currentTarget.checked ? table().rows() : NO_ROWS)}
              />
            </th>
            <For each={drawn()}>{(column, i) => <Head table={table()} column={column} index={i() + 2} />}</For>
          </tr>
        </thead>
        <tbody style={{ height: `${virtual.getTotalSize()}px` }}>
          <Index each={virtual.getVirtualItems()}>
            {(item) => {
              const row = () => item().index
              const sample = () => table().rows()[row()] ?? 0
              const chosen = () => table().chosen.has(sample())
              return (
                <tr
                  aria-rowindex={row() + 2}
                  aria-selected={chosen()}
                  classList={{ chosen: chosen() }}
                  style={{ transform: `translateY(${item().start}px)` }}
                >
                  <td id={cellId({ row: row(), column: 0 })} aria-colindex={1} classList={{ at: isAt(row(), 0) }}>
                    <input
                      type="checkbox"
                      tabindex={-1}
                      aria-label={chooseLabel(table(), sample())}
                      checked={chosen()}
                      onChange={(event) => {
                        table().chosen.set(sample(), event.currentTarget.checked)
                        table().setPlace({ row: row(), column: 0 })
                      }}
                    />
                  </td>
                  <For each={drawn()}>
                    {(column, i) => (
                      // biome-ignore lint/a11y/useKeyWithClickEvents: keys are the grid's
                      <td
                        role={column.key === 'name' ? 'rowheader' : undefined}
                        id={cellId({ row: row(), column: i() + 1 })}
                        aria-colindex={i() + 2}
                        class={`${column.kind} ${column.group} ${column.standing(sample())}`}
                        classList={{
                          at: isAt(row(), i() + 1),
                          out: isOut(column, sample()),
                        }}
                        onClick={() => table().setPlace({ row: row(), column: i() + 1 })}
                      >
                        {column.text(sample())}
                        <Show when={isOut(column, sample())}>
                          <span class="unseen">, {say(`page.side.${column.side(sample()) ?? 'within'}`)}</span>
                        </Show>
                      </td>
                    )}
                  </For>
                </tr>
              )
            }}
          </Index>
        </tbody>
      </table>
    </div>
  )
}

function Head(props: { table: Table; column: TableColumn; index: number }) {
  const sorting = () => {
    const now = props.table.sorting()
    if (now?.column !== props.column.key) return 'none'
    return now.down ? 'descending' : 'ascending'
  }
  return (
    <th
      scope="col"
      aria-colindex={props.index}
      aria-sort={sorting()}
      class={`${props.column.kind} ${props.column.group}`}
    >
      <button type="button" onClick={() => props.table.sortBy(props.column.key)}>
        <span class="label">{props.column.label}</span>
        <Show when={unitWords(props.column.unit)}>{(unit) => <span class="unit">{unit()}</span>}</Show>
        <span class="order" aria-hidden="true">
          {sorting() === 'none' ? '' : sorting() === 'descending' ? '↓' : '↑'}
        </span>
      </button>
    </th>
  )
}

function isOut(column: TableColumn, sample: number): boolean {
  const side = column.side(sample)
  return side === 'below' || side === 'above'
}

function chooseLabel(table: Table, sample: number): string {
  const text = (key: string) =>
    table
      .columns()
      .find((column) => column.key === key)
      ?.text(sample) ?? ''
  return say('page.lab.choose_row', { row: text('row'), name: text('name') })
}

function widthOf({ key, kind, group }: TableColumn): string {
  if (key === 'row') return '4.25rem'
  if (key === 'date') return '6.5rem'
  if (key === 'remarks') return '22rem'
  if (group === 'note') return '12rem'
  return kind === 'figure' ? '6.25rem' : '8.5rem'
}

/** Where a key leads, after the ARIA grid pattern; null for a key that leads nowhere. */
function moved(
  { row, column }: Place,
  { key, ctrlKey, metaKey, altKey }: KeyboardEvent,
  { rows, columns, page }: { rows: number; columns: number; page: number },
): Place | null {
  if (altKey) return null
  const whole = ctrlKey || metaKey
  const at = (toRow: number, toColumn: number): Place => ({
    row: Math.max(0, Math.min(rows - 1, toRow)),
    column: Math.max(0, Math.min(columns - 1, toColumn)),
  })
  switch (key) {
    case 'ArrowUp':
      return at(whole ? 0 : row - 1, column)
    case 'ArrowDown':
      return at(whole ? rows - 1 : row + 1, column)
    case 'ArrowLeft':
      return at(row, whole ? 0 : column - 1)
    case 'ArrowRight':
      return at(row, whole ? columns - 1 : column + 1)
    case 'PageUp':
      return at(row - page, column)
    case 'PageDown':
      return at(row + page, column)
    case 'Home':
      return at(whole ? 0 : row, 0)
    case 'End':
      return at(whole ? rows - 1 : row, columns - 1)
    default:
      return null
  }
}
