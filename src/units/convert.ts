import { type Problem, problem } from '../words/problem'
import { basisFactor } from './basis'
import { type Unit, unit } from './unit'

export interface Asked {
  /** chloride is all taken as sodium chloride: mg/L as Cl ↔ mg/L as NaCl */
  readonly chlorideIsSalt?: boolean
}

/**
 * A value in another unit. It neither rounds nor clamps.
 *
 * Bases with known stoichiometry convert (Ca, Mg and HCO3 ↔ CaCO3; N, NH3, NH4; P ↔ PO4; B ↔ H3BO3); others are refused.
 * Problems: `unknown_unit`, `wrong_dimension`, `wrong_basis`, `not_finite`.
 */
export function convert(value: number, from: string, to: string, asked: Asked = {}): number | Problem {
  const units = pair(value, from, to, asked)
  if (!('ratio' in units)) return units
  if (from === to) return value
  return ((value - units.from.offset) * units.from.factor * units.ratio) / units.to.factor + units.to.offset
}

/** The difference of two values in another unit: a rise of 1 °C is one of 1.8 °F. Problems as for `convert`. */
export function convertDifference(value: number, from: string, to: string): number | Problem {
  const units = pair(value, from, to, {})
  if (!('ratio' in units)) return units
  return from === to ? value : (value * units.from.factor * units.ratio) / units.to.factor
}

function pair(
  value: number,
  from: string,
  to: string,
  asked: Asked,
): { from: Unit; to: Unit; ratio: number } | Problem {
  const [source, target] = [unit(from), unit(to)]
  if (source === undefined) return problem('unknown_unit', [], { found: from })
  if (target === undefined) return problem('unknown_unit', [], { found: to })
  if (!Number.isFinite(value)) return problem('not_finite', [], { found: String(value), unit: from })
  if (source.dimension !== target.dimension) return wrongDimension(from, source, target)
  const ratio = basisFactor(source.basis, target.basis, asked.chlorideIsSalt)
  return ratio === null ? wrongBasis(from, target) : { from: source, to: target, ratio }
}

export function wrongDimension(found: string, source: Unit, wanted: Unit): Problem {
  return problem('wrong_dimension', [], {
    found,
    found_kind: source.dimension,
    wanted: wanted.code,
    wanted_kind: wanted.dimension,
  })
}

export function wrongBasis(found: string, wanted: Unit): Problem {
  return problem('wrong_basis', [], { found, wanted: wanted.code })
}
