import type { DecimalMark } from '../units/readNumber'
import type { Fact, Problem } from '../words/problem'
import type { DateOrder } from './dates'
import type { Encoding } from './decode'
import type { Known } from './known'
import type { LabUnit } from './labUnit'
import type { CsvRecord } from './records'
import type { Role } from './roles'

/*
 * How a laboratory's file is read. `sniff` (sniff.ts) looks at its first part and gives an Understanding: delimiter, decimal
 * mark, dates, shape, each column with its confidence and why. Its questions are answered by calling `sniff` again with
 * Answers. Where none is left, `createSampleReader` or `readSamples` (rows.ts) turn bytes into one outcome for each row
 * (outcome.ts), which a ledger (account.ts) counts. In the page a worker does it (connect.ts) and gives columns
 * (columnar.ts); the command `intake` writes them as contract CSV (contractCsv.ts).
 */

/** One reason why a column was understood as it is: a code with its facts, said by `intake.why.<code>`. */
export interface Why {
  readonly code: string
  readonly facts: Readonly<Record<string, Fact>>
}

/** How a column of the file (or an analyte of a long file) was understood. */
export interface Column {
  /** place in the file, 0 first; of an analyte, the row where it was first seen */
  readonly index: number
  /** as it stands in the file */
  readonly heading: string
  readonly role: Role | 'quantity'
  /** contract name; null when the role is another */
  readonly quantity: string | null
  /** the unit's text where it stands in a row or column of its own */
  readonly unitText: string | null
  /** null for a choice, and while the unit is asked */
  readonly unit: LabUnit | null
  /** 1: a contract name; 0.9 and up: a known spelling with its unit; under 0.6: not used without being confirmed */
  readonly confidence: number
  readonly why: readonly Why[]
}

/** Something that the file leaves open. The page asks; a command names the flag that answers it. */
export interface Question {
  readonly code: 'decimal_mark' | 'date_order' | 'which_quantity' | 'which_unit'
  readonly facts: Readonly<Record<string, Fact>>
  readonly choices: readonly string[]
  /** the column or analyte it is about; null for the whole file */
  readonly heading: string | null
}

/** What a reader says about one column: another quantity, another unit, another role. */
export interface ColumnAnswer {
  readonly quantity?: string
  readonly unit?: string
  readonly role?: Role
}

/** What to do with a second reading of one quantity in one sample. */
export type Replicates = 'keep' | 'first' | 'last' | 'mean'

export interface Answers {
  readonly delimiter?: string
  readonly decimal?: DecimalMark
  readonly dates?: DateOrder
  /** by heading as it stands in the file, or analyte */
  readonly columns?: Readonly<Record<string, ColumnAnswer>>
  /** left out: 'keep', each repeated reading becomes a sample of its own */
  readonly replicates?: Replicates
}

export type Shape = 'wide' | 'long' | 'transposed'

/** All that reading a file needs to know, found from its first part and from the answers given. Plain data. */
export interface Understanding {
  readonly encoding: Encoding
  readonly delimiter: string
  readonly shape: Shape
  /** as a spreadsheet counts rows, 0 where a transposed file has no row of names; data begins under the header and the row of units */
  readonly headerRow: number
  readonly unitsRow: number | null
  readonly decimal: DecimalMark | null
  readonly dates: DateOrder | null
  readonly columns: readonly Column[]
  /** of a long or transposed file: the analytes seen so far */
  readonly analytes: readonly Column[]
  /** what all headings together say about each one; see `Beside` in columns.ts */
  readonly beside: { readonly ions: boolean; readonly french: boolean }
  /** of a transposed file: the columns with the analytes' names and units, and the first one with readings; 0 is the first */
  readonly across: { readonly labels: number; readonly unitColumn: number | null; readonly firstSample: number }
  /** a long file whose rows come sample by sample; else analyte by analyte */
  readonly bySample: boolean
  readonly questions: readonly Question[]
  /** why the file cannot be read at all; then nothing else holds */
  readonly problems: readonly Problem[]
  /** readings that look absurd in the unit that was matched */
  readonly doubts: readonly Problem[]
  /** the first records under the header, for a preview */
  readonly preview: readonly CsvRecord[]
  readonly known: readonly Known[]
  readonly answers: Answers
}
