import {
  type Accessor,
  createComputed,
  createContext,
  createEffect,
  createMemo,
  createSignal,
  getOwner,
  onCleanup,
  runWithOwner,
  untrack,
  useContext,
} from 'solid-js'
import type { Book } from '../shell/book'
import { createCells } from '../shell/cells'
import { createInflow, yieldToPage } from '../shell/inflow'

/** What stands side by side in a row: a scenario by its id, or so many pixels that are left free for those not drawn. */
export type Slot = string | number

/** Widths in CSS pixels as the style sheet has them on this screen. */
export interface Widths {
  /** from the page's edge to the baseline */
  readonly lead: number
  readonly base: number
  readonly cell: number
}

/** Which cells exist: all of a small notebook; of a large one those in sight, the baseline and what is selected. */
export interface Drawn {
  /** tracked */
  slotsOf(row: string): readonly Slot[]
  /** the scenario's place among all; 0 is the baseline. Tracked. */
  place(scenario: string): number
  /** width in pixels, where it is another than the usual one; tracked */
  width(scenario: string): number | undefined
  /** what the chosen widths come to over the usual ones, in pixels; tracked */
  readonly extra: Accessor<number>
  /** has a row drawn when it comes into sight */
  watch(element: Element, row: string): void
  readonly widths: Accessor<Widths>
  setWidths(widths: Widths): void
}

export const DrawnContext = createContext<Drawn>()

export function useDrawn(): Drawn {
  const drawn = useContext(DrawnContext)
  if (!drawn) throw new RangeError('there are no worksheets here')
  return drawn
}

/** Up to so many scenarios, everything is drawn. */
export const FEW = 10
/** Rows, and columns of many, that are drawn before the browser has said which are in sight: few, because nothing is answered until they are. */
const FIRST_ROWS = 8
const FIRST_COLUMNS = 5
/** Beyond the page's edges, above and below, where a row is drawn already. */
const MARGIN = '40% 0px'
const NONE: readonly Slot[] = []

export function createDrawn(book: Book): Drawn {
  const { scenarios, selection, arrangement } = book
  const [widths, setWidths] = createSignal<Widths>({ lead: 430, base: 122, cell: 160 })
  const [printing, setPrinting] = createSignal(false)
  const [inSight, setInSight] = createSignal<Accessor<readonly number[]> | null>(null)
  const isMany = createMemo(() => scenarios().length > FEW && !printing())
  const places = createMemo(() => new Map(scenarios().map((scenario, index) => [scenario, index])))
  const usual = (index: number) => (index === 0 ? widths().base : widths().cell)
  const widthAt = (index: number) => arrangement.widths()[scenarios()[index] ?? ''] ?? usual(index)

  // The library that knows which columns are in sight comes when there are more than a page holds.
  const owner = getOwner()
  createEffect(() => {
    if (!isMany() || untrack(inSight)) return
    void import('./columnsInSight').then(({ createColumnsInSight }) => {
      const columns = runWithOwner(owner, () =>
        createColumnsInSight({
          count: () => scenarios().length,
          lead: () => widths().lead,
          width: widthAt,
        }),
      )
      setInSight(() => columns ?? null)
    })
  })

  const indices = createMemo(
    () => {
      const drawn = new Set([0, selection.position().column, selection.corner().column])
      const seen = inSight()
      for (const index of seen ? seen() : Array(FIRST_COLUMNS).keys()) if (index < scenarios().length) drawn.add(index)
      return [...drawn].sort((a, b) => a - b)
    },
    [],
    { equals: (a, b) => a.length === b.length && a.every((index, at) => index === b[at]) },
  )
  const slots = createMemo<readonly Slot[]>(() => (isMany() ? slotsFor(indices(), scenarios(), widthAt) : scenarios()))

  // Row by row, each as the page has time: a jump over many columns must not hold up the keys.
  const rows = createCells<readonly Slot[]>()
  const now = new Map<string, readonly Slot[]>()
  const near = new Set(
    untrack(book.lines)
      .slice(0, FIRST_ROWS)
      .flatMap(({ key, worksheet }) => [key, headKey(worksheet)]),
  )
  let pinned: readonly string[] = []
  function draw(row: string): void {
    const list = near.has(row) || pinned.includes(row) ? untrack(slots) : NONE
    if (now.get(row) === list) return
    now.set(row, list)
    rows.write(row, list)
  }
  const inflow = createInflow<string>(draw, yieldToPage, 1)
  createComputed<readonly Slot[]>((before) => {
    const line = selection.line()
    const left = pinned
    pinned = line ? [line.key, headKey(line.worksheet)] : []
    for (const row of pinned) draw(row)
    inflow.put(slots() === before ? left : [...left, ...near])
    return slots()
  }, NONE)

  const watched = new Map<Element, string>()
  const observer = new IntersectionObserver(
    (entries) => {
      const changed: string[] = []
      for (const { target, isIntersecting } of entries) {
        const row = watched.get(target)
        if (row === undefined || near.has(row) === isIntersecting) continue
        if (isIntersecting) near.add(row)
        else near.delete(row)
        changed.push(row)
      }
      inflow.put(changed)
    },
    { root: document.getElementById('page'), rootMargin: MARGIN },
  )
  onCleanup(() => observer.disconnect())
  printsWhole(setPrinting)

  return {
    slotsOf: (row) => (isMany() ? (rows.read(row) ?? NONE) : scenarios()),
    place: (scenario) => places().get(scenario) ?? 0,
    width: (scenario) => arrangement.widths()[scenario],
    extra: createMemo(() =>
      scenarios().reduce((sum, scenario, index) => {
        const chosen = arrangement.widths()[scenario]
        return chosen === undefined ? sum : sum + chosen - usual(index)
      }, 0),
    ),
    watch(element, row) {
      watched.set(element, row)
      observer.observe(element)
      onCleanup(() => {
        watched.delete(element)
        observer.unobserve(element)
        near.delete(row)
      })
    },
    widths,
    setWidths,
  }
}

/** The heading row of a worksheet, as a row that is drawn. */
export function headKey(worksheet: string): string {
  return `${worksheet}/#`
}

function slotsFor(
  indices: readonly number[],
  scenarios: readonly string[],
  widthAt: (index: number) => number,
): readonly Slot[] {
  const slots: Slot[] = []
  let next = 0
  for (const index of indices) {
    let free = 0
    for (; next < index; next++) free += widthAt(next)
    if (free > 0) slots.push(free)
    const scenario = scenarios[index]
    if (scenario !== undefined) slots.push(scenario)
    next = index + 1
  }
  return slots
}

/** On paper everything is drawn. */
function printsWhole(set: (printing: boolean) => void): void {
  const paper = matchMedia('print')
  const onPaper = () => set(paper.matches)
  const before = () => set(true)
  const after = () => set(false)
  paper.addEventListener('change', onPaper)
  addEventListener('beforeprint', before)
  addEventListener('afterprint', after)
  onCleanup(() => {
    paper.removeEventListener('change', onPaper)
    removeEventListener('beforeprint', before)
    removeEventListener('afterprint', after)
  })
}
