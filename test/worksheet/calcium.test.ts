import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readTable } from '../published/readTable'
import { POUND, sheet, TEN_THOUSAND_GALLONS } from './sheet'

const calcium = sheet('calcium')
const seed = 20_260_715
const water = { ph: 7.5, temperature: 26, total_alkalinity: 80, cyanuric_acid: 40, salt: 3000, free_chlorine: 2 }
const flakes = { calcium_product: 'calcium_chloride', calcium_strength: 77, calcium_strength_basis: 'mass_percent' }

describe('calcium to add', () => {
  test('1.2 lb of 77 % raise 10 000 US gal by 10 mg/L (handbook, from memory), 0.9 lb of 100 %', () => {
    const given = { ...flakes, volume: TEN_THOUSAND_GALLONS, calcium_hardness: 200, target_calcium_hardness: 210 }
    expect(calcium(given).number('calcium_product_mass') / POUND).toBeCloseTo(1.2, 1)
    expect(calcium({ ...given, calcium_strength: 100 }).number('calcium_product_mass') / POUND).toBeCloseTo(0.92, 1)
  })

  const rows = readTable('product-doses.csv').filter(({ quantity }) => quantity === 'calcium')
  test.each(rows)('$product of $strength %: $gram g a m³ for +$step (product-doses.csv)', (row) => {
    const { number } = calcium({
      volume: 1,
      calcium_hardness: 100,
      target_calcium_hardness: 100 + Number(row.step),
      calcium_product: row.product,
      calcium_strength: row.strength,
      calcium_strength_basis: row.basis,
    })
    expect(1000 * number('calcium_product_mass')).toBeCloseTo(Number(row.gram), 2)
  })

  test('law: run forward the water has what was wanted, and its chloride counts as salt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 900, noNaN: true }),
        fc.double({ min: 10, max: 900, noNaN: true }),
        fc.double({ min: 70, max: 100, noNaN: true }),
        fc.constantFrom('calcium_chloride', 'calcium_chloride_dihydrate'),
        (now, target, strength, product) => {
          const { number } = calcium({
            ...water,
            volume: 47,
            calcium_hardness: now,
            target_calcium_hardness: target,
            calcium_product: product,
            calcium_strength: strength,
            calcium_strength_basis: 'mass_percent',
          })
          const rise = Math.max(0, target - now)
          expect(number('calcium_product_mass')).toBeGreaterThanOrEqual(0)
          expect(number('calcium_hardness_after')).toBeCloseTo(now + rise, 6)
          expect(number('salt_after_calcium') - water.salt).toBeCloseTo((rise * 2 * 58.443) / 100.087, 1)
        },
      ),
      { seed, numRuns: 100 },
    )
  })
})

describe('no dose', () => {
  const given = { ...water, volume: 50, calcium_hardness: 150, target_calcium_hardness: 200 }

  test('without product, strength or what the strength counts', () => {
    expect(calcium(given).missing('calcium_product_mass')).toEqual(['calcium_product'])
    const product = { ...given, calcium_product: 'calcium_chloride' }
    expect(calcium(product).missing('calcium_product_mass')).toEqual(['calcium_strength'])
    expect(calcium({ ...product, calcium_strength: 77 }).missing('calcium_product_mass')).toEqual([
      'calcium_strength_basis',
    ])
    expect(calcium(given).missing('calcium_hardness_after')).toEqual(['calcium_product'])
  })

  test('by a strength that the product is not sold by, with a sentence', () => {
    const { said } = calcium({ ...given, ...flakes, calcium_strength_basis: 'trade_percent' })
    expect(said('calcium_product_mass')).toBe('This product is not sold by trade_percent; use mass_percent.')
  })

  test('where there is more than wanted, and it says why', () => {
    const { number, notices } = calcium({ ...given, ...flakes, target_calcium_hardness: 100 })
    expect([number('calcium_product_mass'), number('calcium_hardness_after')]).toEqual([0, 150])
    expect(notices('calcium_product_mass')).toEqual(['above_target:calcium_hardness'])
  })
})

// by its definition the index rises by the calcium's ratio in logarithms, less what ionic strength and pH take off
test('doubled calcium raises the index by a little under log 2', () => {
  const given = { ...water, ...flakes, volume: 50, calcium_hardness: 150 }
  const index = (target: number) => calcium({ ...given, target_calcium_hardness: target }).number('lsi_after_calcium')
  expect(index(300) - index(150)).toBeLessThan(Math.log10(2))
  expect(index(300) - index(150)).toBeGreaterThan(Math.log10(2) - 0.06)
})
