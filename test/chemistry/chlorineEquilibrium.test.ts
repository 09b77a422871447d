import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type ChlorineEquilibrium, chlorineEquilibrium, chlorineForHocl } from '../../src/chemistry/chlorineEquilibrium'
import type { HoclModel } from '../../src/chemistry/cyanurateModels'
import { type Failure, isFailure } from '../../src/chemistry/failure'
import { readTable } from '../published/readTable'

const ROOM = 298.15
const mol = (milligrams: number) => milligrams / 70_906
const cyanurate = (milligrams: number) => milligrams / 129_075

function found(result: ChlorineEquilibrium | Failure): ChlorineEquilibrium {
  if (isFailure(result)) throw new Error(JSON.stringify(result))
  return result
}

const hocl = (model: HoclModel, celsius: number, ph: number, fc: number, cya: number) =>
  found(chlorineEquilibrium(model, celsius + 273.15, ph, mol(fc), cyanurate(cya))).hocl * 70_906

/**
 * Every species from its own equilibrium, one after the other, and the chlorine balance closed by halving an interval of
 * log10 [HOCl] two hundred times. The constants are written here a second time, as the papers print them.
 */
function bruteForce(model: HoclModel, T: number, ph: number, chlorineTotal: number, cyanurateTotal: number) {
  const h = 10 ** -ph
  const full = model === 'obrien_1974'
  const pK = full
    ? { a: 7.54, k1a: 1.8, k2: 3.75, k4: 5.33, k6: 6.88, k7a: 4.51, k8: 10.12, k10: 11.4, k11a: 6.9, k12: 13.5 }
    : { a: 3000 / T - 10.0686 + 0.0253 * T, k6: 1743 / T + 1.12, k7a: 2028 / T - 2.15, k9a: 2229 / T - 1.65 }
  const k = (p: number) => 10 ** -p
  const species = (x: number): [bound: number, amount: number][] => {
    if ('k9a' in pK) {
      const h2cy = 1
      const hclcy = (h2cy * x) / k(pK.k9a ?? 0)
      return [
        [0, (h2cy * h) / k(pK.k6)],
        [0, h2cy],
        [1, hclcy],
        [2, (hclcy * x) / k(pK.k7a)],
      ]
    }
    const { k1a, k2, k4, k8, k10, k11a, k12 } = pK as Record<string, number> as Required<
      Record<'k1a' | 'k2' | 'k4' | 'k8' | 'k10' | 'k11a' | 'k12', number>
    >
    const hcy = 1
    const h2cy = (hcy * h) / k(k10)
    const clcy = (hcy * x) / k(k11a)
    const hclcy = (clcy * h) / k(k8)
    const cl2cy = (hclcy * x) / k(pK.k7a)
    const hcl2cy = (cl2cy * h) / k(k2)
    return [
      [0, (h2cy * h) / k(pK.k6)],
      [0, h2cy],
      [0, hcy],
      [0, (hcy * k(k12)) / h],
      [1, (hclcy * h) / k(k4)],
      [1, hclcy],
      [1, clcy],
      [2, cl2cy],
      [2, hcl2cy],
      [3, (hcl2cy * x) / k(k1a)],
    ]
  }
  const free = (x: number) => x * (1 + k(pK.a) / h)
  const balance = (x: number) => {
    const all = species(x)
    const sum = all.reduce((s, [, amount]) => s + amount, 0)
    const bound = [0, 1, 2, 3].map((n) => all.reduce((s, [m, amount]) => s + (m === n ? n * amount : 0), 0))
    return { free: free(x), bound: bound.map((b) => (b * cyanurateTotal) / sum) }
  }
  let low = -30
  let high = 0
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2
    const at = balance(10 ** middle)
    if (at.free + at.bound.reduce((s, b) => s + b, 0) > chlorineTotal) high = middle
    else low = middle
  }
  const x = 10 ** ((low + high) / 2)
  return { hocl: x, ...balance(x) }
}

const anyWater = fc.record({
  model: fc.constantFrom<HoclModel>('wahman_2019', 'obrien_1974'),
  T: fc.double({ min: 278.15, max: 308.15, noNaN: true }),
  ph: fc.double({ min: 5, max: 10, noNaN: true }),
  chlorine: fc.double({ min: -8, max: -2, noNaN: true }).map((p) => 10 ** p),
  cyanurate: fc.oneof(
    fc.constant(0),
    fc.double({ min: -8, max: -1, noNaN: true }).map((p) => 10 ** p),
  ),
})

describe('chlorine and cyanurate', () => {
  test('agree with an exact solve of every equilibrium, one by one', () => {
    fc.assert(
      fc.property(anyWater, ({ model, T, ph, chlorine, cyanurate: cy }) => {
        const water = found(chlorineEquilibrium(model, T, ph, chlorine, cy))
        const exact = bruteForce(model, T, ph, chlorine, cy)
        expect(Math.abs(water.hocl / exact.hocl - 1)).toBeLessThan(1e-9)
        water.bound.forEach((b, i) => {
          expect(Math.abs(b - (exact.bound[i + 1] ?? 0))).toBeLessThan(1e-9 * chlorine)
        })
      }),
      { seed: 20_260_714, numRuns: 2_000 },
    )
  })

  test('keep every mole of chlorine', () => {
    fc.assert(
      fc.property(anyWater, ({ model, T, ph, chlorine, cyanurate: cy }) => {
        const { hocl: x, ocl, bound, hoclShare } = found(chlorineEquilibrium(model, T, ph, chlorine, cy))
        expect(Math.abs(x + ocl + bound[0] + bound[1] + bound[2] - chlorine)).toBeLessThan(1e-9 * chlorine)
        expect(Math.abs(hoclShare * chlorine - x)).toBeLessThan(1e-9 * x)
      }),
      { seed: 20_260_714, numRuns: 2_000 },
    )
  })

  test('read backward, need the chlorine that was there', () => {
    fc.assert(
      fc.property(anyWater, ({ model, T, ph, chlorine, cyanurate: cy }) => {
        const { hocl: x } = found(chlorineEquilibrium(model, T, ph, chlorine, cy))
        expect(Math.abs(Number(chlorineForHocl(model, T, ph, x, cy)) - chlorine)).toBeLessThan(1e-9 * chlorine)
      }),
      { seed: 20_260_714, numRuns: 2_000 },
    )
  })

  test('have more HOCl with more chlorine and less with more cyanurate, without a jump', () => {
    fc.assert(
      fc.property(anyWater, ({ model, T, ph, chlorine, cyanurate: cy }) => {
        const at = (c: number, y: number, p = ph) => found(chlorineEquilibrium(model, T, p, c, y)).hocl
        const here = at(chlorine, cy)
        expect(at(chlorine * 0.999, cy)).toBeLessThan(here)
        expect(at(chlorine, cy * 0.999)).toBeGreaterThanOrEqual(here * (1 - 1e-12))
        // HOCl moves at most some tens of times as fast as chlorine, where all cyanurate holds two
        expect(Math.abs(at(chlorine * (1 - 1e-7), cy) / here - 1)).toBeLessThan(1e-5)
        expect(Math.abs(at(chlorine, cy, Math.min(10, ph + 1e-7)) / here - 1)).toBeLessThan(1e-6)
      }),
      { seed: 20_260_714, numRuns: 2_000 },
    )
  })

  test.each(readTable('hocl-obrien-1974.csv'))('1974: FC $free_chlorine, CYA $cyanuric_acid, pH $ph', (row) => {
    const got = hocl('obrien_1974', 10, Number(row.ph), Number(row.free_chlorine), Number(row.cyanuric_acid))
    expect(Math.abs(got - Number(row.hocl))).toBeLessThanOrEqual(5.5e-6 + 5e-5 * got)
  })

  // Morris, J. Phys. Chem. 70 (1966): pKa = 3000 / T - 10.0686 + 0.0253 T; 7.754 at 5 °C, 7.537 at 25, 7.463 at 35 (by hand)
  test.each([
    [5, 7.754],
    [25, 7.537],
    [35, 7.463],
  ])('without stabilizer at %d °C half is HOCl at pH %d', (celsius, pKa) => {
    expect(hocl('wahman_2019', celsius, pKa, 1, 0)).toBeCloseTo(0.5, 3)
  })

  // Falk et al., Water 11(6) (2019) 1314, abstract: HOCl at one ratio spreads by ±1.8 % over the pool range
  test.each([20, 45])('1974: at CYA : FC %d : 1 HOCl spreads by no more than 1.8 % either way, FC 1 to 5', (ratio) => {
    const all = [1, 2, 3, 4, 5].map((fc) => hocl('obrien_1974', 25, 7.5, fc, ratio * fc))
    const middle = (Math.max(...all) + Math.min(...all)) / 2
    expect(Math.max(...all) / middle - 1).toBeLessThanOrEqual(0.018)
    expect(Math.max(...all) / middle - 1).toBeGreaterThan(0.001)
  })

  // computed apart, from the same published constants: FC 4, CYA 80, pH 7.5
  test.each([
    [15, 0.0084],
    [25, 0.0134],
    [29.4, 0.0165],
  ])('2019: 4 and 80 mg/L at %d °C leave %d mg/L', (celsius, want) => {
    expect(Math.abs(hocl('wahman_2019', celsius, 7.5, 4, 80) - want)).toBeLessThanOrEqual(6e-5)
  })

  // computed apart, from the same constants: from pH 7.0 to 8.0 HOCl falls by 67 % without stabilizer, by 38 % at 4 in 50
  test('1974: pH counts less with stabilizer', () => {
    expect(1 - hocl('obrien_1974', 25, 8, 4, 0) / hocl('obrien_1974', 25, 7, 4, 0)).toBeCloseTo(0.67, 2)
    expect(1 - hocl('obrien_1974', 25, 8, 4, 50) / hocl('obrien_1974', 25, 7, 4, 50)).toBeCloseTo(0.38, 2)
  })

  test.each([
    [4.99 + 273.15, 'temperature'],
    [35.01 + 273.15, 'temperature'],
    [Number.NaN, 'temperature'],
  ])('2019: at %d K there is no verdict', (T, quantity) => {
    expect(chlorineEquilibrium('wahman_2019', T, 7.5, mol(3), cyanurate(30))).toMatchObject({
      failure: 'out_of_range',
      quantity,
    })
    expect(chlorineForHocl('wahman_2019', T, 7.5, mol(0.02), cyanurate(30))).toMatchObject({ failure: 'out_of_range' })
  })

  test('with no chlorine the share is that of the first trace', () => {
    const none = found(chlorineEquilibrium('wahman_2019', ROOM, 7.5, 0, cyanurate(50)))
    const trace = found(chlorineEquilibrium('wahman_2019', ROOM, 7.5, 1e-12, cyanurate(50)))
    expect(none.hocl).toBe(0)
    expect(none.hoclShare).toBeCloseTo(trace.hoclShare, 6)
  })
})
