import { describe, expect, test } from 'vitest'
import { changedTotals, type WaterChange } from '../../src/chemistry/changedTotals'
import { isFailure } from '../../src/chemistry/failure'
import { productContent } from '../../src/chemistry/productContent'
import { type Gives, PRODUCT_IDS, PRODUCTS, type ProductId, type StrengthBasis } from '../../src/chemistry/products'
import { type Conserved, NO_TOTALS, type Totals } from '../../src/chemistry/totals'
import { readTable } from '../published/readTable'
import { AS_ALKALINITY, AS_CALCIUM, number } from './referenceWater'

/** mg/L of one mol/L, as the trade counts each quantity */
const PER: Partial<Record<Conserved, number>> = {
  alkalinity: AS_ALKALINITY,
  calcium: AS_CALCIUM,
  cyanurate: 129_075,
  chloride: 58_443,
  borate: 10_810,
  chlorine: 70_906,
}

/** What strong ions say the alkalinity is. */
function strongIons(t: Gives): number {
  const of = (name: Conserved) => t[name] ?? 0
  return of('sodium') + 2 * of('calcium') + 2 * of('magnesium') - of('chloride') - 2 * of('sulfate') + of('inert')
}

describe.each(PRODUCT_IDS)('%s', (id) => {
  const { gives, takes } = PRODUCTS[id]

  test('brings as much alkalinity as its strong ions say', () => {
    expect(gives.alkalinity ?? 0).toBe(strongIons(gives))
  })

  test.skipIf(!takes)('leaves as much too', () => {
    expect(takes?.leaves.alkalinity ?? 0).toBe(strongIons(takes?.leaves ?? {}))
  })
})

describe.each(readTable('product-doses.csv'))('$product $strength $basis, $quantity $step', (row) => {
  test('dose', () => {
    const id = row.product as ProductId
    const quantity = row.quantity as Conserved
    const { gives, takes } = PRODUCTS[id]
    const perMole = Number(row.step) < 0 && takes ? -takes.chlorine : (gives[quantity] ?? Number.NaN)
    const moles = Number(row.step) / ((PER[quantity] ?? Number.NaN) * perMole)
    const content = number(productContent(id, Number(row.strength), row.basis as StrengthBasis, 'strength'))
    const kilograms = moles / content.moles
    const expected = Number(row.gram || row.millilitre)
    const amount = row.gram ? 1000 * kilograms * 1000 : (1e6 * kilograms) / (content.density ?? Number.NaN)
    expect(Math.abs(amount / expected - 1)).toBeLessThan(0.006)
  })
})

test('a label without a basis is no dose, nor one that the product is not sold by, nor more than pure', () => {
  expect(productContent('hydrochloric_acid', 31.45, undefined, 'acid_strength')).toMatchObject({
    failure: 'missing',
    quantity: 'acid_strength_basis',
  })
  expect(productContent('hydrochloric_acid', undefined, 'mass_percent', 'acid_strength')).toMatchObject({
    failure: 'missing',
    quantity: 'acid_strength',
  })
  const refused: readonly [ProductId, number, StrengthBasis][] = [
    ['sodium_bicarbonate', 99, 'g_per_L'],
    ['trichlor', 95, 'available_mass_percent'],
    ['salt', 120, 'mass_percent'],
    ['hydrochloric_acid', 60, 'mass_percent'],
    ['hydrochloric_acid', 30, 'baume'],
    ['sodium_hypochlorite', 900, 'g_per_L'],
    ['salt', 0, 'mass_percent'],
    ['salt', Number.NaN, 'mass_percent'],
    ['hydrochloric_acid', Number.NaN, 'g_per_L'],
  ]
  for (const [id, strength, basis] of refused) {
    expect(isFailure(productContent(id, strength, basis, 'strength')), `${id} ${strength} ${basis}`).toBe(true)
  }
})

test('12.5 trade per cent is 125 g/L of available chlorine and about 10.7 % of it by mass', () => {
  // Handbook of Chlorination (1972), as quoted: weight % available = trade % / specific gravity, at 1.17
  const trade = number(productContent('sodium_hypochlorite', 12.5, 'trade_percent', 's'))
  const litre = number(productContent('sodium_hypochlorite', 125, 'g_per_L', 's'))
  const mass = number(productContent('sodium_hypochlorite', 10.68, 'available_mass_percent', 's'))
  expect(trade.moles).toBeCloseTo(litre.moles, 9)
  expect(mass.moles / trade.moles).toBeCloseTo(1, 2)
  expect(trade.density).toBeCloseTo(1.17, 2)
})

/** Side effects in trade units for 1 mg/L of the main effect, all chlorine used up. Stoichiometry, by hand. */
describe('side effects', () => {
  const result = (changes: readonly WaterChange[]): Totals => changedTotals(NO_TOTALS, changes)
  const product = (id: ProductId, amount: number): WaterChange => ({ kind: 'product', product: id, amount })
  const used: WaterChange = { kind: 'chlorine_used', amount: 1 }
  const one = 1 / 70_906

  test.each<[ProductId, number, Partial<Record<Conserved, number>>]>([
    ['sodium_hypochlorite', one, { alkalinity: 0, calcium: 0, cyanurate: 0, chloride: 1.648 }],
    ['calcium_hypochlorite', one / 2, { alkalinity: 0, calcium: 0.706, cyanurate: 0, chloride: 0.824 }],
    ['dichlor', one / 2, { alkalinity: -0.353, calcium: 0, cyanurate: 0.91, chloride: 0.824 }],
    ['trichlor', one / 3, { alkalinity: -0.706, calcium: 0, cyanurate: 0.607, chloride: 0.824 }],
  ])('chlorine from %s', (id, amount, expected) => {
    const totals = result([product(id, amount), used])
    expect(totals.chlorine).toBeCloseTo(0, 12)
    for (const [name, value] of Object.entries(expected)) {
      expect(Math.abs(totals[name as Conserved] * (PER[name as Conserved] ?? 0) - value), name).toBeLessThan(0.001)
    }
  })

  test.each<[ProductId, Conserved, number, Conserved, number]>([
    ['hydrochloric_acid', 'alkalinity', -1, 'chloride', 1.168],
    ['calcium_chloride', 'calcium', 1, 'chloride', 1.168],
    ['borax_pentahydrate', 'borate', 1, 'alkalinity', 2.314],
    ['boric_acid', 'borate', 1, 'alkalinity', 0],
  ])('%s for %s %d', (id, main, step, side, expected) => {
    const totals = result([product(id, step / (PER[main] ?? 0) / (PRODUCTS[id].gives[main] ?? 0))])
    expect(totals[main] * (PER[main] ?? 0)).toBeCloseTo(step, 9)
    expect(Math.abs(totals[side] * (PER[side] ?? 0) - expected)).toBeLessThan(0.001)
  })

  test.each<[ProductId, number]>([
    ['sulfuric_acid', 0.96],
    ['sodium_bisulfate', 1.919],
  ])('sulfate from %s', (id, expected) => {
    const totals = result([product(id, -1 / AS_ALKALINITY / (PRODUCTS[id].gives.alkalinity ?? 0))])
    expect(Math.abs(totals.sulfate * 96_056 - expected)).toBeLessThan(0.001)
  })

  test('a cell makes chlorine with base, and takes both back when it is used', () => {
    const salted = { ...NO_TOTALS, sodium: 0.05, chloride: 0.05 }
    const made = changedTotals(salted, [{ kind: 'chlorine_made', amount: one }])
    expect(made.alkalinity * AS_ALKALINITY).toBeCloseTo(0.7058, 3)
    expect(changedTotals(made, [used])).toEqual({ ...salted, chlorine: 0 })
  })

  test.each<[ProductId, number]>([
    ['sodium_thiosulfate', 0.706],
    ['hydrogen_peroxide', -0.706],
    ['ascorbic_acid', -0.706],
  ])('%s takes chlorine away', (id, alkalinity) => {
    const start = { ...NO_TOTALS, alkalinity: one, sodium: one, chlorine: one }
    const totals = changedTotals(start, [product(id, one / (PRODUCTS[id].takes?.chlorine ?? 0))])
    expect(totals.chlorine).toBeCloseTo(0, 15)
    expect((totals.alkalinity - start.alkalinity) * AS_ALKALINITY).toBeCloseTo(alkalinity, 3)
  })
})
