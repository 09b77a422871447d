import { newId } from '../../notebook/create'
import type { Edit } from '../../notebook/edit'
import type { Cell, Notebook, Reading, Sample } from '../../notebook/notebook'
import { baselineOf } from '../../notebook/order'
import { presentSample, readingsOf, setReading, startSample, withReadings } from '../../notebook/sampleEdits'
import { isProblem, type Problem } from '../../words/problem'
import { say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'
import type { Book } from '../shell/book'
import { readEntry } from '../shell/readEntry'
import { dayWords, localTime } from './when'

/** The quantities that belong to a sample rather than to its pool. */
export function sampleQuantities(catalog: Outline): ReadonlySet<string> {
  const all = [...catalog.quantities.values()]
  return new Set(all.filter(({ worksheet, row }) => worksheet === 'sample' && 'input' in row).map(({ name }) => name))
}

/** A new bottle of this pool, of now, with nothing read yet; its readings stand in the baseline from here on. */
export function newBottle(notebook: Notebook, catalog: Outline, readings: Sample['readings'] = {}): Edit {
  const now = new Date()
  const date = localTime(now)
  const sample: Sample = {
    id: newId(),
    name: say('page.desk.bottle_of', { date: dayWords(now) }),
    date,
    elsewhere: false,
    readings,
  }
  const before = { id: newId(), name: say('page.desk.bottle_before') }
  return startSample(notebook, sample, sampleQuantities(catalog), before)
}

/** What was typed for a quantity, read as in the grid; a problem where it cannot be taken. */
export function readFor(book: Book, quantity: string, entered: string): Cell | null | Problem {
  const of = book.catalog().quantities.get(quantity)
  const notebook = book.notebook()
  if (!of) return null
  const unit = book.unit(quantity)
  const edit = readEntry(entered, { scenario: baselineOf(notebook).id, quantity: of, unit, notebook })
  if (isProblem(edit)) return edit
  return edit.type === 'set_cell' ? edit.cell : null
}

/**
 * Puts a cell into the baseline: a reading into its sample, which is begun where there is none; everything else, and what is no
 * reading, as it is typed in the grid.
 */
export function commitCell(book: Book, quantity: string, cell: Cell | null): Problem | null {
  const notebook = book.notebook()
  const catalog = book.catalog()
  const scenario = baselineOf(notebook).id
  const ofSample = catalog.quantities.get(quantity)?.worksheet === 'sample'
  if (!ofSample || cell?.kind === 'formula') return book.dispatch({ type: 'set_cell', scenario, quantity, cell })
  const sample = presentSample(notebook)
  const reading = cell?.kind === 'not_taken' ? 'not_taken' : cell
  if (sample) return book.dispatch(setReading(notebook, sample, quantity, reading))
  if (reading === null) return null
  if (reading === 'not_taken') return book.dispatch({ type: 'set_cell', scenario, quantity, cell })
  return book.dispatch(newBottle(notebook, catalog, { [quantity]: reading }))
}

/** Puts all readings of one quantity into the present sample, the first of them believed. */
export function commitReadings(book: Book, quantity: string, all: readonly Reading[]): Problem | null {
  const sample = presentSample(book.notebook())
  if (!sample) return null
  return book.dispatch({ type: 'put_sample', sample: withReadings(sample, quantity, all) })
}

/** All readings of one quantity in the present sample. Tracked. */
export function presentReadings(book: Book, quantity: string): readonly Reading[] {
  const sample = presentSample(book.notebook())
  return sample ? readingsOf(sample, quantity) : []
}
