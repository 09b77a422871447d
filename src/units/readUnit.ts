import { type Problem, problem } from '../words/problem'
import { ASKED, type Asked } from './asked'
import type { Basis } from './basis'
import { wrongBasis, wrongDimension } from './convert'
import { foldText, foldUnit } from './fold'
import { displayUnit, type Profile } from './profile'
import { type Reported, reported } from './reported'
import { BASIS_SPELLINGS, EXACT_SPELLINGS, SPELLINGS } from './spellings'
import { UNITS, type Unit, unit } from './unit'

export interface UnitContext {
  readonly profile: Profile
  /** contract name of the quantity: says which other bases a lab may report it in, and what a bare mmol/L counts */
  readonly quantity?: string
}

const PLAIN = UNITS.filter((u) => u.dimension !== 'concentration' || !u.code.includes(' as '))

/** Codes by how they are written. */
const EXACT = listed([
  ...PLAIN.map((u) => [foldUnit(u.code), u.code] as const),
  ...PLAIN.flatMap((u) => (u.ucum === null ? [] : [[u.ucum, u.code] as const])),
  ['[ppm]', 'ppm'],
  ...Object.entries(EXACT_SPELLINGS).flatMap(([written, codes]) => codes.map((code) => [written, code] as const)),
])
const SMALL = listed(
  Object.entries(SPELLINGS).flatMap(([code, written]) => written.map((text) => [text, code] as const)),
)

function listed(pairs: readonly (readonly [string, string])[]): ReadonlyMap<string, readonly string[]> {
  const map = new Map<string, string[]>()
  for (const [written, code] of pairs) map.set(written, [...(map.get(written) ?? []), code])
  return map
}

/**
 * The unit that a text names, for a quantity with this canonical unit. A concentration without a basis takes the
 * quantity's own; one with another basis is accepted where labs report the quantity so.
 *
 * Problems: `unread_unit`, `wrong_dimension`, `wrong_basis`, `ambiguous_unit` (with the choices).
 */
export function readUnit(text: string, canonicalUnit: string, context: UnitContext): string | Problem {
  const found = text.trim()
  const wanted = unit(canonicalUnit)
  if (wanted === undefined) return problem('unknown_unit', [], { found: canonicalUnit })
  const written = foldUnit(foldText(text))
  const asked = ASKED.get(written.toLowerCase())
  if (asked !== undefined) return answer(found, asked, wanted, context)
  const named = lookUp(written)
  if (named.length === 0) {
    return problem('unread_unit', [], { found, accepted: [...new Set([wanted.code, displayUnit(wanted.code, 'us')])] })
  }
  const how = reported(context.quantity)
  const readings = named.map((candidate) => fitted(found, candidate, wanted, how))
  return readings.find((r) => typeof r === 'string') ?? readings.find(isClose) ?? readings[0] ?? wanted.code
}

function isClose(reading: string | Problem): boolean {
  return typeof reading !== 'string' && reading.code !== 'wrong_dimension'
}

/** Units (concentrations: with the basis that was written) that a folded text may name. */
function lookUp(written: string): readonly Unit[] {
  const plain = codesOf(written)
  return (plain.length > 0 ? plain : basedCodes(written)).flatMap((code) => unit(code) ?? [])
}

function codesOf(written: string): readonly string[] {
  return [...new Set([...(EXACT.get(written) ?? []), ...(SMALL.get(written.toLowerCase()) ?? [])])]
}

/** `mg/L as CaCO3`, `ppm (as CaCO3)`, `mg/L NH4-N`, `mg CaCO3/L`. */
function basedCodes(written: string): readonly string[] {
  const after = /^(.+?)[ (]+(?:as )?([^ ]+?)\)?$/i.exec(written)
  const between = /^([nmu]?g|mmol) ([^ /]+)\/L$/i.exec(written)
  const [head = '', substance = ''] = between ? [`${between[1]}/L`, between[2]] : [after?.[1], after?.[2]]
  const basis = BASIS_SPELLINGS.get(substance.toLowerCase())
  return basis === undefined ? [] : codesOf(head).map((code) => `${code} as ${basis}`)
}

function answer(found: string, { choices, us }: Asked, wanted: Unit, { profile }: UnitContext): string | Problem {
  const meant = choices.flatMap((code) => unit(code) ?? [])
  const [first] = meant
  if (first !== undefined && meant.every((u) => u.dimension !== wanted.dimension)) {
    return wrongDimension(found, first, wanted)
  }
  if (us !== undefined && profile === 'us') return us
  return problem('ambiguous_unit', [], { found, choices })
}

/** The code under which a candidate stands for this quantity, or why it doesn't. */
function fitted(found: string, candidate: Unit, wanted: Unit, how: Reported): string | Problem {
  if (candidate.dimension === 'amount concentration' && wanted.dimension === 'concentration') {
    return byMole(found, candidate, wanted, how)
  }
  if (candidate.dimension !== wanted.dimension) return wrongDimension(found, candidate, wanted)
  if (candidate.basis === wanted.basis) return candidate.code
  if (candidate.basis === null) return `${candidate.code} as ${wanted.basis}`
  const accepted: readonly (Basis | null)[] = [...how.bases, how.own ?? null]
  return accepted.includes(candidate.basis) ? candidate.code : wrongBasis(found, wanted)
}

/** A bare mmol/L is counted in moles of what is reported; of hardness or alkalinity it must be known which. */
function byMole(found: string, candidate: Unit, wanted: Unit, how: Reported): string | Problem {
  const mole = how.mole ?? (wanted.basis === 'CaCO3' ? undefined : wanted.basis)
  if (candidate.code !== 'mmol/L' || mole === null) return wrongDimension(found, candidate, wanted)
  if (mole !== undefined) return `mmol/L as ${mole}`
  return problem('ambiguous_unit', [], { found, choices: ['mmol/L as CaCO3', 'mmol/L as HCO3'] })
}
