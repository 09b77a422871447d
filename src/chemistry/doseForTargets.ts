import { changedTotals, type WaterChange } from './changedTotals'
import { readingWithoutChlorine, withChlorine } from './chlorineInWater'
import { type Failure, fail, isFailure } from './failure'
import { measuredWater } from './measuredWater'
import { PRODUCTS, type ProductId } from './products'
import { rootNear } from './rootNear'
import type { Totals } from './totals'
import type { Water } from './water'
import { waterAfter } from './waterAfter'

export type AcidProduct = 'hydrochloric_acid' | 'sulfuric_acid' | 'sodium_bisulfate'
export type BaseProduct = 'sodium_carbonate' | 'sodium_bicarbonate' | 'sodium_hydroxide'
export type BorateProduct = 'borax_decahydrate' | 'borax_pentahydrate' | 'boric_acid'

/** What is wanted, pH and titrated alkalinity in eq/L; at least one of them, or a borate. */
export interface DoseTargets {
  readonly ph: number | undefined
  readonly titratedAlkalinity: number | undefined
  /** mol/L of boron */
  readonly borate: number | undefined
}

/** With what. Acid not chosen is hydrochloric; a base not chosen is bicarbonate and soda ash, never caustic. */
export interface DoseProducts {
  readonly acid: AcidProduct | undefined
  readonly base: BaseProduct | undefined
  readonly borate: BorateProduct | undefined
}

/** Amounts in mol of substance per litre of pool water; the water right after all of them, no CO2 lost. */
export interface Dose {
  readonly acid: number
  readonly bicarbonate: number
  readonly sodaAsh: number
  readonly caustic: number
  readonly borate: number
  /** only a loss of CO2 gets from here to the wanted pH */
  readonly aerationNeeded: boolean
  readonly water: Water
}

const NOTHING = { acid: 0, bicarbonate: 0, sodaAsh: 0, caustic: 0 }
type Amounts = typeof NOTHING

/**
 * The amounts that take a water to its targets. `chlorine` is the oxidising chlorine in the pool, mol/L, which the
 * alkalinity reading leaves out.
 *
 * Both targets: with dA the alkalinity and dC the total carbonate still needed, dC < 0 means that CO2 has to leave: amounts
 * meet alkalinity only. dA <= dC is acid and bicarbonate, dA <= 2 dC bicarbonate and soda ash, else soda ash and caustic. Only
 * pH: the least of one product. Only alkalinity: bicarbonate or acid. Borate goes in first and its base is reckoned with.
 *
 * Tolerance: 1e-9 in pH and 1e-9 relative in alkalinity. Errors: `unreachable` (quantity `total_alkalinity` where no water has
 * both targets, `ph` where the product cannot get there or only caustic could), those of the solves.
 */
export function doseForTargets(
  from: Water,
  chlorine: number,
  targets: DoseTargets,
  products: DoseProducts,
): Dose | Failure {
  const start = withChlorine(from, chlorine)
  if (isFailure(start)) return start
  const borate = borateNeeded(from, targets.borate, products.borate)
  if (isFailure(borate)) return borate
  const first = borate > 0 ? [change(products.borate ?? 'boric_acid', borate)] : []
  const { ph, titratedAlkalinity } = targets
  const acid = products.acid ?? 'hydrochloric_acid'
  const after = (amounts: Amounts) => waterAfter(start, from, [...first, ...changes(amounts, acid)])

  let amounts: Amounts | Failure = NOTHING
  let aerationNeeded = false
  if (ph !== undefined && titratedAlkalinity !== undefined) {
    const both = meetBoth(from, changedTotals(start, first), ph, titratedAlkalinity, products)
    if (isFailure(both)) return both
    amounts = both.amounts
    aerationNeeded = both.aerationNeeded
  } else if (ph !== undefined) {
    amounts = meetOne(after, (water) => water.ph, ph, 'ph', products.base ?? 'sodium_carbonate')
  } else if (titratedAlkalinity !== undefined) {
    amounts = meetOne(after, readingWithoutChlorine, titratedAlkalinity, 'total_alkalinity', 'sodium_bicarbonate')
  }
  if (isFailure(amounts)) return amounts
  const water = after(amounts)
  return isFailure(water) ? water : { ...amounts, borate, aerationNeeded, water }
}

function borateNeeded(from: Water, wanted: number | undefined, product: BorateProduct | undefined): number | Failure {
  if (wanted === undefined || wanted <= from.totals.borate) return 0
  return (wanted - from.totals.borate) / (PRODUCTS[product ?? 'boric_acid'].gives.borate ?? 1)
}

/** Alkalinity and total carbonate of the wanted water, less those of the water as it stands. */
function meetBoth(
  from: Water,
  start: Totals,
  ph: number,
  titratedAlkalinity: number,
  products: DoseProducts,
): { amounts: Amounts; aerationNeeded: boolean } | Failure {
  const acid = PRODUCTS[products.acid ?? 'hydrochloric_acid']
  const perEquivalent = -1 / (acid.gives.alkalinity ?? -1)
  let amounts: Amounts = NOTHING
  let aerationNeeded = false
  // acid's own chloride or sulfate moves ionic strength a little, so the wanted water is looked up again with it
  for (let pass = 0; pass < 50; pass++) {
    const wanted = measuredWater({
      ph,
      temperature: from.temperature,
      titratedAlkalinity,
      calcium: start.calcium,
      magnesium: start.magnesium,
      sulfate: start.sulfate + amounts.acid * (acid.gives.sulfate ?? 0),
      chloride: start.chloride + amounts.acid * (acid.gives.chloride ?? 0),
      borate: start.borate,
      cyanurate: start.cyanurate,
      chlorine: 0,
    })
    if (isFailure(wanted)) {
      return wanted.failure === 'no_such_water'
        ? fail('unreachable', 'total_alkalinity', { wanted: titratedAlkalinity, ph })
        : wanted
    }
    const chlorinated = withChlorine(wanted, start.chlorine)
    if (isFailure(chlorinated)) return chlorinated
    const alkalinity = chlorinated.alkalinity - start.alkalinity
    const missing = wanted.totals.carbonate - start.carbonate
    const carbonate = Math.abs(missing) <= SLACK ? 0 : missing
    const next = split(alkalinity, carbonate, perEquivalent, products.base === 'sodium_hydroxide')
    if (isFailure(next)) return next
    aerationNeeded = carbonate < 0
    const moved = Math.abs(next.acid - amounts.acid)
    amounts = next
    if (moved <= 1e-12) return { amounts, aerationNeeded }
  }
  return fail('no_convergence', 'ph')
}

/** Carbonate to within this, mol/L, counts as met: 0.00001 mg/L. */
const SLACK = 1e-10

function split(dA: number, dC: number, acidPerEquivalent: number, caustic: boolean): Amounts | Failure {
  if (dC < 0) {
    return dA < 0 ? { ...NOTHING, acid: -dA * acidPerEquivalent } : { ...NOTHING, sodaAsh: dA / 2 }
  }
  if (dA <= dC) return { ...NOTHING, bicarbonate: dC, acid: (dC - dA) * acidPerEquivalent }
  if (dA <= 2 * dC) return { ...NOTHING, bicarbonate: 2 * dC - dA, sodaAsh: dA - dC }
  if (caustic) return { ...NOTHING, sodaAsh: dC, caustic: dA - 2 * dC }
  return dA - 2 * dC <= SLACK ? { ...NOTHING, sodaAsh: dA / 2 } : fail('unreachable', 'ph', { caustic: dA - 2 * dC })
}

/** The least of one product, acid down and a base up, that brings one reading to its target. */
function meetOne(
  after: (amounts: Amounts) => Water | Failure,
  read: (water: Water) => number | Failure,
  wanted: number,
  quantity: 'ph' | 'total_alkalinity',
  base: BaseProduct,
): Amounts | Failure {
  const dose = (signed: number): Amounts => {
    if (signed <= 0) return { ...NOTHING, acid: -signed }
    if (base === 'sodium_bicarbonate') return { ...NOTHING, bicarbonate: signed }
    return base === 'sodium_carbonate' ? { ...NOTHING, sodaAsh: signed } : { ...NOTHING, caustic: signed }
  }
  const reading = (signed: number): number => {
    const water = after(dose(signed))
    const value = isFailure(water) ? water : read(water)
    return isFailure(value) ? Number.NaN : value
  }
  const scale = quantity === 'ph' ? 1e-9 : 1e-9 * wanted
  const found = rootNear((x) => reading(x) - wanted, 0, 2e-5, -MOST, MOST, 1e-14)
  if (found === undefined || !(Math.abs(reading(found) - wanted) <= 10 * scale)) {
    return fail('unreachable', quantity, { wanted })
  }
  return dose(found)
}

/** Most of one product that a dose may hold, mol/L: over 40 000 mg/L of soda ash lies outside any pool. */
const MOST = 0.05

function changes(amounts: Amounts, acid: AcidProduct): readonly WaterChange[] {
  return [
    change(acid, amounts.acid),
    change('sodium_bicarbonate', amounts.bicarbonate),
    change('sodium_carbonate', amounts.sodaAsh),
    change('sodium_hydroxide', amounts.caustic),
  ]
}

function change(product: ProductId, amount: number): WaterChange {
  return { kind: 'product', product, amount }
}
