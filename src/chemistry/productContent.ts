import { type Failure, fail, isFailure } from './failure'
import { MOLAR_MASS } from './molarMass'
import { outside } from './outside'
import { PRODUCTS, type ProductId, type StrengthBasis } from './products'

/** What a kilogram of a product holds. */
export interface ProductContent {
  /** moles of the substance in a kilogram */
  readonly moles: number
  /** kg/L; undefined for a solid */
  readonly density: number | undefined
}

/**
 * The content of a product at a label strength. `mass_percent` is of the substance as its formula stands; a chlorine product's
 * `g_per_L` and `trade_percent` are available chlorine, any other's `g_per_L` is the substance.
 * Range: over 0 % to 100 % of the pure substance (a label may round up by 1.5 %), Baumé and density within their tables.
 * Errors: `missing` without a strength or a basis (no basis, no dose), `out_of_range` for a basis that the product is not
 * sold by, or a strength over the pure substance. `quantity` names the strength's row: `acid_strength`.
 */
export function productContent(
  id: ProductId,
  strength: number | undefined,
  basis: StrengthBasis | undefined,
  quantity: string,
): ProductContent | Failure {
  if (strength === undefined) return fail('missing', quantity)
  if (basis === undefined) return fail('missing', `${quantity}_basis`)
  const product = PRODUCTS[id]
  if (!product.bases.includes(basis)) {
    return fail('out_of_range', `${quantity}_basis`, { value: basis, accepted: product.bases.join(', ') })
  }
  const percent = massPercent(id, strength, basis, quantity)
  if (isFailure(percent)) return percent
  const refused = outside(quantity, percent, 0.01, product.most ?? PURE)
  if (refused) return refused
  const density = product.density && between(product.density, percent, quantity)
  if (isFailure(density)) return density
  return { moles: (10 * percent) / product.molarMass, density }
}

/** Labels round: dichlor is sold as 56 % available chlorine, and pure dihydrate has 55.40. It counts as the label says. */
const PURE = 101.5

function massPercent(id: ProductId, strength: number, basis: StrengthBasis, quantity: string): number | Failure {
  const { molarMass, gives, baume } = PRODUCTS[id]
  const perChlorine = molarMass / ((gives.chlorine ?? 1) * MOLAR_MASS.chlorine)
  switch (basis) {
    case 'mass_percent':
      return strength
    case 'available_mass_percent':
      return strength * perChlorine
    case 'baume':
      return between(baume ?? [], strength, quantity)
    case 'trade_percent':
      return percentOfGrams(id, strength * 10 * perChlorine, quantity)
    case 'g_per_L':
      return percentOfGrams(id, strength * (gives.chlorine ? perChlorine : 1), quantity)
  }
}

/** Mass percent of a solution that holds so many g/L of the substance: percent x density x 10 = g/L along its table. */
function percentOfGrams(id: ProductId, grams: number, quantity: string): number | Failure {
  const table = PRODUCTS[id].density ?? []
  const wanted = outside(quantity, grams, 0, gramsAt(table.at(-1)))
  if (wanted) return wanted
  let low = 0
  let high = table.at(-1)?.[0] ?? 0
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    const density = between(table, middle, quantity)
    if (isFailure(density)) return density
    if (10 * middle * density < grams) low = middle
    else high = middle
  }
  return high
}

function gramsAt(row: readonly [number, number] | undefined): number {
  return row ? 10 * row[0] * row[1] : 0
}

function between(table: readonly (readonly [number, number])[], x: number, quantity: string): number | Failure {
  const after = table.findIndex(([at]) => at >= x)
  const upper = table[after]
  const lower = table[after - 1] ?? upper
  if (!upper || !lower || x < lower[0]) {
    return outside(quantity, x, table[0]?.[0] ?? 0, table.at(-1)?.[0] ?? 0) ?? fail('not_a_number', quantity)
  }
  if (upper[0] === lower[0]) return upper[1]
  return lower[1] + ((upper[1] - lower[1]) * (x - lower[0])) / (upper[0] - lower[0])
}
