import { readUnit } from '../units/readUnit'
import { BASIS_SPELLINGS } from '../units/spellings'
import { isProblem, type Problem } from '../words/problem'
import type { Known } from './known'
import { labUnit, withoutReference } from './labUnit'
import { folded, oneSlip, spelling } from './spelling'
import { BESIDE_THE_POINT, LOOKALIKE, MEANINGS, type Meaning } from './synonyms'
import type { Why } from './understanding'

/** What a heading says, before any reading is looked at. */
export interface Heading {
  readonly meaning: Meaning | null
  /** the text of the unit, with what it is counted as; null where the heading has none */
  readonly unit: string | null
  readonly at: number | null
  readonly confidence: number
  readonly why: readonly Why[]
}

const NOTHING: Heading = { meaning: null, unit: null, at: null, confidence: 0, why: [] }

/**
 * Takes a heading (or an analyte's name) apart: name, unit in brackets or at the end, what it is counted as, reference
 * temperature. `TA (ppm as CaCO3)`, `freies Chlor mg/l`, `Leitfähigkeit µS/cm (25 °C)`, `Ammonia as N, mg/L`.
 */
export function readHeading(heading: string, known: ReadonlyMap<string, Known>): Heading {
  if (heading.length > 200) return NOTHING
  const exact = /^\s*([a-z][a-z0-9_]*)\s*(?:[[(](.*)[\])])?\s*$/s.exec(heading)
  const contract = known.get(exact?.[1] ?? '')
  if (contract !== undefined) {
    const unit = exact?.[2] ?? null
    return { meaning: { quantities: [contract.name] }, unit, at: null, confidence: 1, why: [because('contract_name')] }
  }
  const counted = unknownBasis(heading)
  if (counted !== null) return { ...NOTHING, why: [because('basis_unknown', { found: counted })] }
  const tokens = heading
    .replace(/[()[\]{}_]/g, ' ')
    .split(/[\s,;:]+/)
    .filter((token) => token !== '')
  // the longest unit first: `TA ppm as CaCO3` before a `TA ppm as` that is counted as CaCO3
  for (let cut = 1; cut < tokens.length; cut++) {
    const found = withUnit(tokens.slice(0, cut), tokens.slice(cut).join(' '), known)
    if (found !== null) return found
  }
  const bare = named(tokens)
  if (bare !== null) return bare
  for (let i = 1; i < tokens.length - 1; i++) {
    const found = withUnit([...tokens.slice(0, i), ...tokens.slice(i + 1)], tokens[i] ?? '', known)
    if (found !== null && /[/%]|^pp[mb]$/i.test(tokens[i] ?? '')) return found
  }
  return unitProblem(heading, known) ?? NOTHING
}

const COUNTED_AS = /(?<![\p{L}\d])(?:as|als|en|como|comme|ausgedrückt als)\s+([A-Z][\w+-]*)/u
/** A formula of common elements: `SO4-S`, `Fe`, `CaO`; `Received` is none. */
const FORMULA = /^(?:(?:Al|Br|Ca|Cl|Cu|Fe|Mg|Mn|Na|Si|Zn|[CHIKNOPSF])\d*)+[+-]*\d?(?:-(?:N|P|S))?$/

/**
 * What a heading is counted as, where that is neither a basis that we can convert from nor the substance itself: sulfate
 * as S is a third of sulfate. Such a word is never passed over.
 */
function unknownBasis(heading: string): string | null {
  const formula = COUNTED_AS.exec(heading)?.[1] ?? ''
  if (!FORMULA.test(formula) || BASIS_SPELLINGS.has(formula.toLowerCase())) return null
  const before = heading.slice(0, COUNTED_AS.exec(heading)?.index ?? 0).split(/[\s,;:([]+/)
  const itself = MEANINGS.get(spelling(formula))?.quantities
  const named = before.map((_, i) => meant(spelling(before.slice(0, i + 1).join(' ')))?.meaning?.quantities)
  return itself !== undefined && named.some((quantities) => quantities?.join() === itself.join()) ? null : formula
}

/** Units that are understood, and are refused or asked about later. */
const SAYS_MORE: ReadonlySet<string> = new Set(['reference_temperature', 'ambiguous_unit', 'wrong_basis'])

function withUnit(name: readonly string[], unit: string, known: ReadonlyMap<string, Known>): Heading | null {
  const found = named(name)
  if (found === null) return null
  if (found.meaning === null) return isSomeUnit(unit, known) ? found : null
  const fits = found.meaning.quantities.some((quantity) => {
    const one = known.get(quantity)
    const read = one === undefined ? null : labUnit(unit, one, found.at)
    return read !== null && (!isProblem(read) || SAYS_MORE.has(read.code))
  })
  return fits ? { ...found, unit: found.unit === null ? unit : `${unit} ${found.unit}` } : null
}

/** A name without a unit; what it is counted as, and a reference temperature, may stand at its end. */
function named(tokens: readonly string[]): Heading | null {
  const { rest, at } = withoutReference(tokens.join(' '))
  const [, name = rest, as, formula] = /^(.+?)\s+(as|als|en|como)?\s*([A-Za-z][\w+-]*)$/i.exec(rest) ?? []
  const basis = BASIS_SPELLINGS.get((formula ?? '').toLowerCase())
  const whole = meant(spelling(rest))
  if (whole !== null) return { ...whole, unit: null, at }
  if (basis === undefined || (as === undefined && formula !== 'CaCO3')) return null
  const counted = meant(spelling(name))
  return counted === null ? null : { ...counted, unit: `as ${formula}`, at }
}

type Named = Pick<Heading, 'meaning' | 'confidence' | 'why'>

function meant(name: string): Named | null {
  const lookalike = LOOKALIKES.get(inOrder(name))
  if (lookalike !== undefined) return { meaning: null, confidence: 0, why: [because(lookalike)] }
  const direct = MEANINGS.get(name) ?? BY_WORDS.get(inOrder(name))
  if (direct !== undefined) return sure(direct, 0.95, 'known_spelling', name)
  const core = name.split(' ').filter((word) => !BESIDE_THE_POINT.has(word) && !/^\d{1,2}$/.test(word))
  const less = core.join(' ')
  // what is left of `Pool B` is a letter that tells pools apart, and no analyte
  if (less !== name && less.length > 1) {
    const found = meant(less)
    return found === null ? null : { ...found, confidence: Math.min(found.confidence, 0.85) }
  }
  // `sulfate s` is no slip for sulfates
  if (name.length < 8 || /(?:^| )\p{L}(?: |$)/u.test(name)) return null
  for (const [spelled, meaning] of MEANINGS) {
    if (oneSlip(name, spelled)) return sure(meaning, 0.65, 'close_spelling', spelled)
  }
  return null
}

/** The words of a name in one order, umlauts written either way: `Chlor, frei` and `freies Chlor` differ, `Cl frei` and `frei Cl` don't. */
function inOrder(name: string): string {
  return folded(name).split(' ').sort().join(' ')
}

const BY_WORDS: ReadonlyMap<string, Meaning> = new Map([...MEANINGS].map(([name, meaning]) => [inOrder(name), meaning]))
const LOOKALIKES: ReadonlyMap<string, string> = new Map([...LOOKALIKE].map(([name, why]) => [inOrder(name), why]))

function sure(meaning: Meaning, confidence: number, code: string, spelled: string): Named {
  const open = meaning.quantities.length > 1
  return { meaning, confidence: open ? 0.5 : confidence, why: [because(code, { spelled })] }
}

/** A name that we know with a unit that it cannot have, or one that must be asked. */
function unitProblem(heading: string, known: ReadonlyMap<string, Known>): Heading | null {
  const [, name = '', unit = ''] = /^(.*?)[\s,]*[[(]([^[\]()]*)[\])]\s*$/s.exec(heading) ?? []
  const found = name === '' ? null : named(name.replace(/_/g, ' ').split(/[\s,;:]+/))
  if (found === null || found.meaning === null) return null
  const answers = found.meaning.quantities.flatMap((q) => {
    const one = known.get(q)
    return one === undefined ? [] : [labUnit(unit, one, found.at)]
  })
  return answers.some((a): a is Problem => isProblem(a) && a.code === 'ambiguous_unit') || isSomeUnit(unit, known)
    ? { ...found, unit }
    : null
}

function isSomeUnit(text: string, known: ReadonlyMap<string, Known>): boolean {
  for (const one of known.values()) if (typeof readUnit(text, one.unit, { profile: 'metric' }) === 'string') return true
  return false
}

function because(code: string, facts: Why['facts'] = {}): Why {
  return { code, facts }
}
