import type { Problem } from '../words/problem'
import type { LabReading } from './reading'

/** A sample as the file gives it, in canonical units. */
export interface LabSample {
  /** empty where the file names none */
  readonly name: string
  /** ISO date, or date and time; empty where the file has none */
  readonly date: string
  readonly readings: Readonly<Record<string, LabReading>>
  /** columns that are no quantity of ours, by heading, as text; no prototype, since headings are a stranger's */
  readonly notes: Readonly<Record<string, string>>
  /** set where the same sample (name and date) was read before: the row it stood in */
  readonly repeats?: number
}

/** Why a row made no sample of its own though nothing is wrong with it. */
export type SkipRule =
  | 'blank'
  /** a mean, a limit, a blank; of a file with samples across also a column of methods or remarks */
  | 'not_a_sample'
  /** the laboratory itself says that the result is not to be used */
  | 'rejected'
  /** a footnote, or a row in which nothing was measured */
  | 'nothing_measured'
  | 'header_again'
  /** of a long file: a further result of a sample that is counted by its first */
  | 'joined'
  /** of a long file: an analyte that is no quantity of ours; kept as a note of its sample */
  | 'other_analyte'
  /** a repeated reading that the rule for repeated readings leaves out or averages in */
  | 'repeated'

/**
 * What became of one row. Rows are counted as a spreadsheet shows them (in a file with samples across, its columns: A is
 * 1). Every row under the header has exactly one outcome; a sample's stands for its first row. Where samples stand
 * across and an analyte comes again, a column gives a further sample that repeats its own row, and counts once more.
 */
export type RowOutcome =
  | { readonly kind: 'sample'; readonly row: number; readonly sample: LabSample }
  | {
      readonly kind: 'refused'
      readonly row: number
      readonly problems: readonly Problem[]
      readonly cells: readonly string[]
    }
  | { readonly kind: 'skipped'; readonly row: number; readonly rule: SkipRule }
