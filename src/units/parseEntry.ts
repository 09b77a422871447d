import { locale } from '../words/locale'
import { isProblem, type Problem, problem } from '../words/problem'
import { foldText } from './fold'
import { displayUnit } from './profile'
import { type DecimalMark, type Leading, leadingNumber } from './readNumber'
import { readUnit, type UnitContext } from './readUnit'
import { toCanonical } from './toCanonical'
import { type Dimension, type Unit, unit } from './unit'

/** A number as it was entered. */
export interface Entry {
  /** the figures typed, point for decimals, no grouping marks; `5 ft 6 in` and `1/3` as they are. `reopen` gives it back */
  readonly entered: string
  /** code of the unit that it was read in */
  readonly unit: string
  /** in the quantity's canonical unit */
  readonly canonical: number
}

export interface EntryContext extends UnitContext {
  /** the reader's own when left out */
  readonly decimal?: DecimalMark
  /** the unit that a bare number is in: the one shown in its row. Left out: the profile's */
  readonly displayed?: string
}

/** `-` alone: the reading was not taken. */
export type NotTaken = 'not_taken'

const MOST_CHARACTERS = 100

const FRACTIONS: ReadonlySet<Dimension> = new Set(['number', 'length', 'volume', 'mass', 'time'])
const COMPOUNDS: ReadonlySet<Dimension> = new Set(['length', 'volume', 'mass', 'time'])

/**
 * What a person typed into a number cell: `7.6`, `59 °F`, `15,000 gal`, `2 lb 3 oz`, `5 ft 6 in`, `1/3`, `33 %`, `-`. Null when
 * nothing was typed. It takes any text and never throws; nothing is guessed.
 *
 * Problems: `unreadable_number`, `limit_entered`, `not_finite`, `long_entry`, `wrong_compound` and those of `readUnit`.
 */
export function parseEntry(
  text: string,
  canonicalUnit: string,
  context: EntryContext,
): Entry | NotTaken | null | Problem {
  const { decimal = locale().decimal } = context
  const typed = foldText(text)
  if (typed === '') return null
  if (typed === '-') return 'not_taken'
  if (typed.length > MOST_CHARACTERS) {
    return problem('long_entry', [], { found: `${typed.slice(0, 20)}…`, most: MOST_CHARACTERS })
  }
  const wanted = unit(canonicalUnit)
  if (wanted === undefined || wanted.dimension === 'choice') {
    return problem('unknown_unit', [], { found: canonicalUnit })
  }
  const unreadable = problem('unreadable_number', [], { found: text.trim(), decimal })
  if (/^[<>≤≥]/.test(typed)) return problem('limit_entered', [], { found: text.trim() })
  const number = leadingNumber(typed, decimal, FRACTIONS.has(wanted.dimension))
  if (number === null) return unreadable
  if (!Number.isFinite(number.value)) return problem('not_finite', [], { found: text.trim(), unit: canonicalUnit })
  const [written, remainder] = split(number.rest)
  if (remainder !== '') return compound(text.trim(), number, written, remainder, wanted, context) ?? unreadable
  const read = unitOf(number, written, wanted, context)
  return isProblem(read) ? read : entry(number.figures, number.value, read, canonicalUnit, context)
}

/** The unit's text after a number, and where a next number follows it (after a space, or a foot mark), the remainder. */
function split(rest: string): [written: string, remainder: string] {
  const next = rest.search(/(?<=[ '"])[+-]?[\d.,]/)
  return next < 0 ? [rest.trim(), ''] : [rest.slice(0, next).trim(), rest.slice(next)]
}

function unitOf(number: Leading, written: string, wanted: Unit, context: EntryContext): string | Problem {
  if (written !== '') return readUnit(written, wanted.code, context)
  // a third is a third, also in a row that is shown in per cent
  if (number.fraction && wanted.dimension === 'number') return wanted.code
  return context.displayed ?? displayUnit(wanted.code, context.profile)
}

function entry(
  entered: string,
  value: number,
  code: string,
  canonicalUnit: string,
  { quantity }: EntryContext,
): Entry | Problem {
  const canonical = toCanonical(value, code, canonicalUnit, quantity)
  if (isProblem(canonical)) return canonical
  if (!Number.isFinite(canonical)) return problem('not_finite', [], { found: entered, unit: code })
  return { entered, unit: code, canonical }
}

/** `5 ft 6 in`, `2 lb 3 oz`, `5'6"`. Null where the remainder is no second part. */
function compound(
  found: string,
  first: Leading,
  written: string,
  remainder: string,
  wanted: Unit,
  context: EntryContext,
): Entry | Problem | null {
  const second = leadingNumber(remainder, context.decimal ?? locale().decimal, true)
  if (second === null || /^[+-]/.test(remainder) || written === '' || second.rest.trim() === '') return null
  const large = readUnit(written, wanted.code, context)
  if (isProblem(large)) return large
  // after pounds, ounces are of weight
  const small = readUnit(
    large === 'lb' ? second.rest.replace(/\b(?:oz|ounces?)\.?$/i, 'oz wt') : second.rest,
    wanted.code,
    context,
  )
  if (isProblem(small)) return small
  const [whole, part] = [unit(large), unit(small)]
  if (whole === undefined || part === undefined) return null
  const ratio = part.factor / whole.factor
  if (!COMPOUNDS.has(wanted.dimension) || !/^-?\d+$/.test(first.figures) || second.value * ratio >= 1 || ratio >= 1) {
    return problem('wrong_compound', [], { found, large, small })
  }
  const value = first.figures.startsWith('-') ? first.value - second.value * ratio : first.value + second.value * ratio
  return entry(`${first.figures} ${large} ${second.figures} ${small}`, value, large, wanted.code, context)
}
