import type { Band, Row } from '../../worksheet/definition'
import type { Side } from '../../worksheet/judge'

/** What a sample has in a column. */
export type Standing =
  | 'value'
  /** below or above what the method can tell */
  | 'censored'
  /** not taken, or it waits for a reading that was not taken */
  | 'missing'
  /** there is no answer, for another reason */
  | 'refused'

/** One column of the table, whatever it comes from; samples are counted from 0 as the import has them. */
export interface TableColumn {
  /** a quantity's name; `row`, `name`, `date`, `remarks`; `note:` and its heading */
  readonly key: string
  readonly group: 'sample' | 'reading' | 'result' | 'note'
  readonly label: string
  /** a figure is aligned and summarised, a text is not */
  readonly kind: 'figure' | 'text'
  /** the unit that it is shown in, by its code; empty where it has none */
  readonly unit: string
  /** the quantity's row; undefined of what is no quantity */
  readonly row?: Row
  readonly band?: Band
  standing(sample: number): Standing
  /** in the canonical unit; NaN where there is none */
  number(sample: number): number
  /** as it is shown */
  text(sample: number): string
  /** as it is written to a file: a number, or a text */
  written(sample: number): number | string
  side(sample: number): Side | null
}
