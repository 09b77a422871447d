import { convert } from '../units/convert'
import { readUnit } from '../units/readUnit'
import { reported } from '../units/reported'
import { BASIS_SPELLINGS } from '../units/spellings'
import { toCanonical } from '../units/toCanonical'
import { isUnit, unit } from '../units/unit'
import { isProblem, type Problem, problem } from '../words/problem'
import type { Known } from './known'

/** How a column's numbers become values of its quantity. */
export interface LabUnit {
  /** unit code of `src/units` */
  readonly code: string
  /** numbers are multiplied by this first; 1 but for `%`, `mS/m` and a conductivity at 20 °C */
  readonly times: number
}

/**
 * Conductivity at 25 °C for one at 20 °C: DIN EN 27888 (ISO 7888) table of natural waters, by which German drinking-water
 * law turned its limit of 2500 µS/cm at 20 °C into 2790 at 25 °C.
 */
const AT_25_FROM_20 = 1.116

const REFERENCE = /(?:@|(?<![\p{L}\d])(?:at|bei|à|a|ref\.?))?\s*(?<![\d.,])(\d\d)\s*(?:°|deg)?\s*C$/iu

/** Spellings of laboratories that are no units of their own: multiples, and words for "counted as". */
const MULTIPLES: ReadonlyMap<string, readonly [unit: string, times: number]> = new Map([
  ['%', ['g/L', 10]],
  ['% w/v', ['g/L', 10]],
  ['‰', ['g/L', 1]],
  ['ms/m', ['µS/cm', 10]],
  ['s/m', ['mS/cm', 10]],
])
const ALIKE: ReadonlyMap<string, string> = new Map([
  ['fnu', 'NTU'],
  ['ftu', 'NTU'],
  ['ntru', 'NTU'],
  ['unf', 'NTU'],
  ['unt', 'NTU'],
  ['utn', 'NTU'],
  ['none', 'pH'],
  ['-', 'pH'],
  ['', 'pH'],
  ['mm', 'mmol/L'],
  // of headings that are made for machines
  ['mgl', 'mg/L'],
  ['mg l', 'mg/L'],
  ['mg per l', 'mg/L'],
  ['ugl', 'µg/L'],
  ['ug l', 'µg/L'],
  ['gl', 'g/L'],
  ['g l', 'g/L'],
  ['uscm', 'µS/cm'],
  ['us cm', 'µS/cm'],
  ['mscm', 'mS/cm'],
  ['ms cm', 'mS/cm'],
  ['deg c', '°C'],
  ['deg f', '°F'],
])

/** A text without the temperature to which a conductivity is referred, and that temperature in °C. */
export function withoutReference(text: string): { readonly rest: string; readonly at: number | null } {
  const tight = text
    .replace(/[º˚]/g, '°')
    .replace(/[()[\]]/g, ' ')
    .trim()
  const found = REFERENCE.exec(tight)
  if (found === null || found.index === 0) return { rest: text.trim(), at: null }
  return { rest: tight.slice(0, found.index).replace(/[\s,;]+$/, ''), at: Number(found[1]) }
}

/**
 * The unit that a laboratory's text names for this quantity. `at` is a conductivity's reference temperature where it
 * stands elsewhere. Problems: those of `readUnit`, and `reference_temperature` for one that is not 20 or 25 °C.
 */
export function labUnit(text: string, known: Known, at: number | null = null): LabUnit | Problem {
  const conductivity = known.unit === 'µS/cm'
  const { rest, at: own } = conductivity ? withoutReference(text) : { rest: text.trim(), at: null }
  const reference = own ?? at ?? 25
  if (conductivity && reference !== 25 && reference !== 20) {
    return problem('reference_temperature', [], { found: text, at: reference })
  }
  const correction = conductivity && reference === 20 ? AT_25_FROM_20 : 1
  if (known.unit === 'pH' && PH_UNITS.test(rest)) return { code: 'pH', times: 1 }
  const plain = rest
    .replace(/\b(?:als|en|como|expressed as)\s+/i, 'as ')
    .replace(/(?<=\s)as(?=[A-Z])/, 'as ')
    .replace(/^°\s+/, '°')
  const small = plain.toLowerCase().replace(/μ/g, 'µ')
  const [written, times] = MULTIPLES.get(small) ?? [ALIKE.has(small) ? wordFor(small, known) : plain, 1]
  const code = readUnit(written, known.unit, { profile: 'metric', quantity: known.name })
  if (!isProblem(code)) return { code, times: times * correction }
  return countedAlready(plain, known) ?? code
}

/** `meq/L as CaCO3`: hardness and alkalinity by their charge are counted as CaCO3 without saying so. */
function countedAlready(text: string, known: Known): LabUnit | null {
  const [, measure = '', formula = ''] = /^(.+?)\s+as\s+(\S+)$/i.exec(text) ?? []
  const code = measure === '' ? '' : readUnit(measure, known.unit, { profile: 'metric', quantity: known.name })
  if (isProblem(code) || code === '' || code.includes(' as ')) return null
  const basis = unit(code)?.basis ?? null
  return basis !== null && basis === BASIS_SPELLINGS.get(formula.toLowerCase()) ? { code, times: 1 } : null
}

/** "Unit of pH" in other languages. */
const PH_UNITS = /^(?:unit[ée]s?|unidad(?:es)?(?: de)?|upH)\s*(?:ph)?$|^ph[- ]?(?:units?|einheit(?:en)?)$/i

/** `None` and a dash are the unit of pH alone. */
function wordFor(small: string, known: Known): string {
  const word = ALIKE.get(small) ?? small
  return word === 'pH' && known.unit !== 'pH' ? small : word
}

/** A number of a column in the canonical unit of its quantity. It neither rounds nor clamps. */
export function canonical(value: number, unit: LabUnit, known: Known): number | Problem {
  return toCanonical(value * unit.times, unit.code, known.unit, known.name)
}

/** `canonical` for many numbers of one column: what can be settled once is. */
export function canonicalOf(unit: LabUnit, known: Known): (value: number) => number | Problem {
  const own = `${known.unit} as ${reported(known.name).own}`
  const target = [known.unit, own].find((code) => isUnit(code) && !isProblem(convert(1, unit.code, code)))
  if (target === undefined) return (value) => canonical(value, unit, known)
  // units are linear: what keeps 0 and 1 keeps every number
  const same = unit.times === 1 && convert(0, unit.code, target) === 0 && convert(1, unit.code, target) === 1
  return same ? (value) => value : (value) => convert(value * unit.times, unit.code, target)
}
