import { type Accessor, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js'
import type { Results } from '../../engine/results'
import type { LabImport } from '../lab/labImport'
import type { Book } from '../shell/book'
import { arrange, type Sorting } from './arrange'
import { type Chosen, createChosen } from './createChosen'
import { NO_SETTINGS, readerOf, type Settings } from './reader'
import { readingColumns } from './readingColumns'
import { resultColumns } from './resultColumns'
import type { RowFilter } from './rowFilter'
import { noteColumns, sampleColumns } from './sampleColumns'
import { createSlices } from './slices'
import type { TableColumn } from './tableColumn'

/** Single results up to this many are all shown at once; of more, those that have a range. */
const FEW = 8

/** What was worked out, and under which settings. */
export interface WorkedOut {
  readonly results: Results
  readonly settings: Settings
}

/** The cell that is looked at: a place in `rows`, and one in `shown`. */
export interface Place {
  readonly row: number
  readonly column: number
}

/** The table of an import and its results: which columns and rows are shown, in which order, which are chosen. */
export interface Table {
  readonly source: LabImport
  readonly columns: Accessor<readonly TableColumn[]>
  readonly shown: Accessor<readonly TableColumn[]>
  isShown(key: string): boolean
  show(key: string, on: boolean): void
  readonly filters: Accessor<readonly RowFilter[]>
  setFilters(filters: readonly RowFilter[]): void
  readonly sorting: Accessor<Sorting | null>
  sortBy(column: string): void
  /** samples in the order in which they are shown */
  readonly rows: Accessor<Int32Array>
  /** true while rows are being sorted */
  readonly arranging: Accessor<boolean>
  readonly chosen: Chosen
  readonly worked: Accessor<WorkedOut | null>
  setWorked(worked: WorkedOut | null): void
  readonly place: Accessor<Place>
  setPlace(place: Place): void
}

export function createTable(book: Book, source: LabImport): Table {
  const [worked, setWorked] = createSignal<WorkedOut | null>(null)
  const [picked, setPicked] = createSignal<ReadonlyMap<string, boolean>>(new Map())
  const [filters, setFilters] = createSignal<readonly RowFilter[]>([])
  const [sorting, setSorting] = createSignal<Sorting | null>(null)
  const [rows, setRows] = createSignal<Int32Array>(new Int32Array(source.columns.count).map((_, i) => i))
  const [arranging, setArranging] = createSignal(false)
  const [place, setPlace] = createSignal<Place>({ row: 0, column: 0 })

  // Apart, so that the cells of what was there stay when something is worked out.
  const settings = createMemo(() => worked()?.settings ?? NO_SETTINGS)
  const samples = sampleColumns(source)
  const notes = noteColumns(source)
  const readings = createMemo(() => readingColumns(source, readerOf(book, settings())))
  const results = createMemo(() => {
    const now = worked()
    const given = new Set(readings().map(({ key }) => key))
    return now ? resultColumns(now.results, readerOf(book, now.settings)).filter(({ key }) => !given.has(key)) : []
  })
  const columns = createMemo(() => [...samples, ...readings(), ...results(), ...notes])
  const manyResults = () => (worked()?.results.columns.length ?? 0) > FEW
  const isShown = (key: string): boolean => {
    const asked = picked().get(key)
    if (asked !== undefined) return asked
    const column = columns().find((one) => one.key === key)
    if (column?.group === 'note') return false
    if (key === 'date') return source.columns.dates.bytes.length > 0
    if (column?.group !== 'result' || key === 'remarks' || !manyResults()) return true
    return column.row?.target !== undefined || column.row?.range !== undefined
  }
  const shown = createMemo(() => columns().filter(({ key }) => isShown(key)))

  let turn = 0
  onCleanup(() => turn++)
  createEffect(
    on(
      [columns, filters, sorting],
      async ([now, conditions, order]) => {
        const mine = ++turn
        setArranging(true)
        await createSlices().pause()
        const arranged = await arrange(source.columns.count, now, conditions, order, () => mine !== turn)
        if (!arranged || mine !== turn) return
        setArranging(false)
        setRows(arranged)
        setPlace((at) => {
          const row = Math.max(0, Math.min(at.row, arranged.length - 1))
          return row === at.row ? at : { ...at, row }
        })
      },
      { defer: true },
    ),
  )

  return {
    source,
    columns,
    shown,
    isShown,
    show: (key, on) => setPicked((before) => new Map(before).set(key, on)),
    filters,
    setFilters,
    sorting,
    /** Up, then down, then as in the file. */
    sortBy: (column) =>
      setSorting((now) => {
        if (now?.column !== column) return { column, down: false }
        return now.down ? null : { column, down: true }
      }),
    rows,
    arranging,
    chosen: createChosen(source.columns.count),
    worked,
    setWorked,
    place,
    setPlace,
  }
}
