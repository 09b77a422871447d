import { type Failure, fail, isFailure } from './failure'
import { MOLAR_MASS } from './molarMass'
import { outside } from './outside'
import { productContent } from './productContent'
import { PRODUCTS, type ProductId, type StrengthBasis } from './products'
import type { Conserved } from './totals'

/** Readings that a product raises by its mass alone, whatever else is in the water. */
export const RISES_BY_MASS = ['salt', 'calcium_hardness', 'cyanuric_acid', 'borate'] as const
export type RisesByMass = (typeof RISES_BY_MASS)[number]

/** What of the water each of them reads, and g/mol as it is read: salt as NaCl by its chloride, borate as boron. */
const READ: Readonly<Record<RisesByMass, readonly [Conserved, number]>> = {
  salt: ['chloride', MOLAR_MASS.sodiumChloride],
  calcium_hardness: ['calcium', MOLAR_MASS.calciumCarbonate],
  cyanuric_acid: ['cyanurate', MOLAR_MASS.cyanuricAcid],
  borate: ['borate', 10.81],
}

/**
 * Mass, kg, by which an amount of a product shows in a reading: kg of NaCl for salt, of CaCO3 for calcium hardness, of cyanuric
 * acid, of boron. Two ends, because chlorine becomes chloride only when it has been used up; elsewhere they are the same.
 *
 * `amount` in kg, or in L for a liquid (over 0 to 100 000); `strength` and `basis` by the label. Errors: as
 * `productContent`; `out_of_range` for litres of a solid. Mass balance with the molar masses of the products.
 */
export function massAsRead(
  reading: RisesByMass,
  id: ProductId,
  amount: number,
  unit: 'kg' | 'L',
  strength: number,
  basis: StrengthBasis,
): readonly [least: number, most: number] | Failure {
  const refused = outside('amount', amount, 1e-6, 100_000)
  if (refused) return refused
  const content = productContent(id, strength, basis, `${id}_strength`)
  if (isFailure(content)) return content
  if (unit === 'L' && content.density === undefined)
    return fail('out_of_range', 'amount', { value: unit, accepted: 'kg' })
  const moles = (unit === 'L' ? amount * (content.density ?? 1) : amount) * content.moles
  const [conserved, molarMass] = READ[reading]
  const { gives, takes } = PRODUCTS[id]
  const least = gives[conserved] ?? 0
  const later = reading === 'salt' ? (gives.chlorine ?? 0) + (takes?.leaves.chloride ?? 0) : 0
  return [(moles * least * molarMass) / 1_000, (moles * (least + later) * molarMass) / 1_000]
}
