import { describe, expect, test } from 'vitest'
import { calciteEquilibrium } from '../../src/chemistry/calciteEquilibrium'
import type { WaterChange } from '../../src/chemistry/changedTotals'
import type { ProductId } from '../../src/chemistry/products'
import { titratedAlkalinity } from '../../src/chemistry/titratedAlkalinity'
import { waterAfter } from '../../src/chemistry/waterAfter'
import { waterAgainstAir } from '../../src/chemistry/waterAgainstAir'
import reference from '../published/phreeqc-24.json'
import { AS_ALKALINITY, AS_CALCIUM, number, referenceWater } from './referenceWater'

/** Everything here is held against a rigorous geochemistry program; source and units in the header of its file. */
describe.each(reference.saturation)('water $id ($T °C, pH $pH)', (row) => {
  const water = referenceWater(row)

  test('calcite index', () => {
    // where cyanurate and borate hold more than a fifth of the alkalinity, their small errors weigh more
    const mostlyCarbonate = row.carbAlk > 0.8 * row.TA
    expect(Math.abs(water.calciteIndex - row.SI)).toBeLessThan(mostlyCarbonate ? 0.05 : 0.1)
  })

  test('carbonate alkalinity and total carbonate', () => {
    expect(Math.abs(water.carbonateAlkalinity * AS_ALKALINITY - row.carbAlk)).toBeLessThan(1)
    expect(Math.abs(water.totals.carbonate / row.CT - 1)).toBeLessThan(0.025)
  })

  test('ionic strength, sodium and CO2', () => {
    expect(Math.abs(water.ionicStrength / row.I - 1)).toBeLessThan(0.01)
    expect(Math.abs(water.totals.sodium / row.Na - 1)).toBeLessThan(0.01)
    expect(Math.abs(water.pco2 / row.pCO2 - 1)).toBeLessThan(0.05)
  })

  test('calcium carbonate precipitation potential', () => {
    const { precipitated, water: left } = number(calciteEquilibrium(water))
    expect(Math.abs(precipitated * AS_CALCIUM - row.CCPP)).toBeLessThan(2 + 0.15 * Math.abs(row.CCPP))
    expect(Math.abs(left.ph - row.pHccpp)).toBeLessThan(0.05)
    expect(Math.abs(left.calciteIndex)).toBeLessThan(1e-9)
    expect(Math.sign(precipitated)).toBe(Math.sign(water.calciteIndex))
  })
})

test('the calcite index is within 0.02 of the reference at the median', () => {
  const off = reference.saturation
    .map((row) => Math.abs(referenceWater(row).calciteIndex - row.SI))
    .sort((a, b) => a - b)
  expect(off[Math.floor(off.length / 2)]).toBeLessThan(0.02)
})

const PRODUCT: Record<string, ProductId> = {
  HCl: 'hydrochloric_acid',
  NaOH: 'sodium_hydroxide',
  NaHCO3: 'sodium_bicarbonate',
  Na2CO3: 'sodium_carbonate',
}

describe.each(reference.additions)('water $id with $mmol mmol/L of $add', (row) => {
  const from = referenceWater(row)
  const product = PRODUCT[row.add]
  if (!product) throw new Error(row.add)
  const change: WaterChange = { kind: 'product', product, amount: row.mmol / 1000 }
  const after = number(waterAfter(from.totals, from, [change]))

  test('pH', () => {
    expect(Math.abs(after.ph - row.newPH)).toBeLessThan(0.05)
  })

  test('titrated alkalinity', () => {
    expect(Math.abs(titratedAlkalinity(after) * AS_ALKALINITY - row.newTA)).toBeLessThan(0.2)
  })

  test('calcite index', () => {
    expect(Math.abs(after.calciteIndex - row.newSI)).toBeLessThan(0.1)
  })
})

describe.each(reference.air)('water $id against air', (row) => {
  const air = number(waterAgainstAir(referenceWater(row), 1e6 * 10 ** -3.38))

  test('pH', () => {
    expect(Math.abs(air.ph - row.eqPH)).toBeLessThan(0.06)
  })

  test('total carbonate, titrated alkalinity and index', () => {
    expect(Math.abs(air.totals.carbonate / row.eqCT - 1)).toBeLessThan(0.02)
    expect(Math.abs(titratedAlkalinity(air) * AS_ALKALINITY - row.eqTA)).toBeLessThan(0.3)
    expect(Math.abs(air.calciteIndex - row.eqSI)).toBeLessThan(0.1)
  })
})
