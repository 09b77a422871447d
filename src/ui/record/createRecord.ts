import { type Accessor, createMemo } from 'solid-js'
import { hasValue } from '../../engine/outcome'
import type { ErrorOf } from '../../record/errorOf'
import type { Interval } from '../../record/interval'
import { formatValue } from '../../units/format'
import type { Band } from '../../worksheet/definition'
import { decimalsOf } from '../decimalsOf'
import { bandIn } from '../grid/bandIn'
import { labelOf } from '../labelOf'
import { quantityWords, type Reader } from '../plan/planSentence'
import type { Book } from '../shell/book'
import { errorIn } from './errorIn'

/** What the parts of the record's page share. */
export interface RecordView {
  readonly book: Book
  readonly errorOf: Accessor<ErrorOf>
  readonly reader: Accessor<Reader>
  /** a number of the baseline as the worksheets have it; tracked */
  number(quantity: string): number | undefined
  /** the volume as the baseline has it; null where it has none */
  readonly volume: Accessor<Interval | null>
  words(quantity: string, value: number): string
  /** the figure alone, in the unit that is shown */
  figure(quantity: string, value: number): string
  /** the range that is wanted in this pool, canonical; of salt the cell's window */
  band(quantity: string): Pick<Band, 'low' | 'high'> | undefined
  label(quantity: string): string
}

export function createRecord(book: Book): RecordView {
  const reader = createMemo(
    (): Reader => ({
      catalog: book.catalog(),
      profile: book.notebook().profile,
      unit: book.unit,
      water: new Map(),
      changes: book.notebook().rules,
    }),
  )
  function number(quantity: string): number | undefined {
    const outcome = book.outcome(book.baseline(), quantity)
    return hasValue(outcome) && typeof outcome.value === 'number' ? outcome.value : undefined
  }
  return {
    book,
    errorOf: createMemo(() => errorIn(book.notebook())),
    reader,
    number,
    volume: createMemo(() => {
      const [low, high] = [number('volume_low'), number('volume_high')]
      return low === undefined || high === undefined ? null : { low, high }
    }),
    figure(quantity, value) {
      const row = book.catalog().quantities.get(quantity)?.row
      return row ? formatValue(value, row.unit, book.unit(quantity), decimalsOf(row)) : ''
    },
    band(quantity) {
      const row = book.catalog().quantities.get(quantity)?.row
      if (quantity !== 'salt') return row && bandIn(book, row, book.baseline())
      const [low, high] = [number('cell_salt_low'), number('cell_salt_high')]
      return low === undefined || high === undefined ? undefined : { low, high }
    },
    words: (quantity, value) => quantityWords(reader(), quantity, value),
    label: (quantity) => labelOf(quantity, book.catalog().quantities.get(quantity)?.row),
  }
}
