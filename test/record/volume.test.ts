import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Notebook, Reading, Sample } from '../../src/notebook/notebook'
import type { Addition } from '../../src/notebook/record'
import { narrowVolume } from '../../src/record/narrowVolume'
import { volumeEvidence } from '../../src/record/volumeEvidence'

const ERRORS = new Map([
  ['salt', 200],
  ['calcium_hardness', 10],
  ['cyanuric_acid', 15],
  ['borate', 10],
])

const errorOf = (quantity: string) => ERRORS.get(quantity)
const value = (canonical: number): Reading => ({ kind: 'value', entered: String(canonical), unit: 'mg/L', canonical })
const tested = (id: string, date: string, figures: Readonly<Record<string, number>>): Sample => ({
  id,
  name: id,
  date,
  elsewhere: false,
  readings: Object.fromEntries(Object.entries(figures).map(([name, figure]) => [name, value(figure)])),
})
const added = (id: string, date: string, product: string, amount: number, more: Partial<Addition> = {}): Addition => ({
  id,
  date,
  product,
  amount,
  unit: 'kg',
  note: '',
  ...more,
})
const record = (
  samples: readonly Sample[],
  additions: readonly Addition[],
): Pick<Notebook, 'samples' | 'additions'> => ({
  samples: Object.fromEntries(samples.map((one) => [one.id, one])),
  additions: Object.fromEntries(additions.map((one) => [one.id, one])),
})
const evidence = (samples: readonly Sample[], additions: readonly Addition[]) =>
  volumeEvidence(record(samples, additions), errorOf).map(({ quantity, low, high }) => [quantity, low, high])

describe('what retests say of the volume', () => {
  const before = tested('a', '2026-05-01', { salt: 2000, calcium_hardness: 150 })
  const after = tested('b', '2026-05-04', { salt: 3000, calcium_hardness: 250 })

  test('50 kg of salt and a rise of 1000 mg/L: 50 / 1.4 to 50 / 0.6 m³ (by hand)', () => {
    expect(evidence([before, after], [added('x', '2026-05-02', 'salt', 50)])).toEqual([
      ['salt', expect.closeTo(50 / 1.4, 9), expect.closeTo(50 / 0.6, 9)],
    ])
  })

  test('calcium by its label: 7 kg of 100 % dihydrate, 100 mg/L, 10 each way (by hand: 4.7655 kg as CaCO3)', () => {
    const flakes = added('x', '2026-05-01', 'calcium_chloride_dihydrate', 7, { strength: 100, basis: 'mass_percent' })
    const [salt, calcium] = evidence([before, after], [flakes])
    expect(calcium?.[0]).toBe('calcium_hardness')
    expect(calcium?.[1]).toBeCloseTo(4765.5 / 120, 1)
    expect(calcium?.[2]).toBeCloseTo(4765.5 / 80, 1)
    // the chloride that came with it shows in the salt reading too, and is far too little for that rise
    expect(salt?.[0]).toBe('salt')
  })

  test.each([
    ['nothing was added', []],
    [
      'water was renewed too',
      [added('x', '2026-05-02', 'salt', 50), added('w', '2026-05-02', 'water', 5, { unit: 'm³' })],
    ],
    [
      'an acid without a label brought chloride',
      [added('x', '2026-05-02', 'salt', 50), added('y', '2026-05-02', 'hydrochloric_acid', 2, { unit: 'L' })],
    ],
    ['it may have come after the second test', [added('x', '2026-05-04', 'salt', 50)]],
    ['it came before the first', [added('x', '2026-04-30', 'salt', 50)]],
    ['it has no date', [added('x', '', 'salt', 50)]],
  ] as const)('nothing where %s', (_, additions) => expect(evidence([before, after], additions)).toEqual([]))

  test('nothing where three weeks lie between, or the sample is of another pool', () => {
    const salt = [added('x', '2026-05-02', 'salt', 50)]
    expect(evidence([before, { ...after, date: '2026-05-23' }], salt)).toEqual([])
    expect(evidence([before, { ...after, elsewhere: true }], salt)).toEqual([])
  })

  test('a reading that is only a limit says nothing', () => {
    const limit: Reading = { kind: 'limit', side: 'above', entered: '3000', unit: 'mg/L', canonical: 3000 }
    expect(evidence([before, { ...after, readings: { salt: limit } }], [added('x', '2026-05-02', 'salt', 50)])).toEqual(
      [],
    )
  })
})

describe('narrowing', () => {
  const one = (low: number, high: number) => {
    const [found] = volumeEvidence(
      record(
        [tested('a', '2026-05-01', { salt: 2000 }), tested('b', '2026-05-03', { salt: 3000 })],
        [added('x', '2026-05-02', 'salt', 50)],
      ),
      errorOf,
    )
    if (found === undefined) throw new Error('no evidence')
    return { ...found, low, high }
  }

  test('cuts, and says when it does not', () => {
    expect(narrowVolume({ low: 45, high: 55 }, [one(40, 50)])).toMatchObject({
      kind: 'narrower',
      interval: { low: 45, high: 50 },
    })
    expect(narrowVolume({ low: 45, high: 55 }, [one(40, 60)])).toMatchObject({ kind: 'as_known' })
    expect(narrowVolume({ low: 45, high: 55 }, [])).toEqual({ kind: 'none' })
    expect(narrowVolume(null, [one(40, Number.POSITIVE_INFINITY)])).toMatchObject({ kind: 'as_known' })
  })

  test('contradictions are said to be', () => {
    expect(narrowVolume({ low: 45, high: 55 }, [one(40, 46), one(48, 60)])).toMatchObject({ kind: 'contradiction' })
    expect(narrowVolume({ low: 45, high: 55 }, [one(60, 70)])).toMatchObject({ kind: 'against_known' })
  })

  test('of simulated pools: the truth is always inside, what was known never widens, more evidence never widens', () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true })
    const season = fc.array(
      fc.record({
        product: fc.constantFrom('salt', 'calcium_chloride_dihydrate', 'cyanuric_acid', 'boric_acid'),
        dose: fc.double({ min: 0.02, max: 1.5, noNaN: true }),
        errors: fc.tuple(share, share, share, share),
        gap: fc.integer({ min: 2, max: 16 }),
      }),
      { minLength: 1, maxLength: 12 },
    )
    let narrowed = 0
    fc.assert(
      fc.property(fc.double({ min: 2, max: 900, noNaN: true }), share, season, (truth, off, steps) => {
        const water: Record<string, number> = { salt: 1000, calcium_hardness: 150, cyanuric_acid: 40, borate: 20 }
        // mg/L that a kilogram in a cubic metre gives, by molar masses (by hand)
        const per: Record<string, Record<string, number>> = {
          salt: { salt: 1000 },
          calcium_chloride_dihydrate: { calcium_hardness: 680.8, salt: 795.1 },
          cyanuric_acid: { cyanuric_acid: 1000 },
          boric_acid: { borate: 174.83 },
        }
        const samples: Sample[] = []
        const additions: Addition[] = []
        let day = 1
        const dated = (n: number) => new Date(Date.UTC(2026, 0, n)).toISOString().slice(0, 10)
        const read = (errors: readonly number[]) => {
          const names = ['salt', 'calcium_hardness', 'cyanuric_acid', 'borate']
          // 0.999: the molar masses of this test are rounded
          const figures = names.map((name, i) => [
            name,
            Math.max(0, (water[name] ?? 0) + (errors[i] ?? 0) * 0.999 * (ERRORS.get(name) ?? 0)),
          ])
          samples.push(tested(`s${day}`, dated(day), Object.fromEntries(figures)))
        }
        read([0, 0, 0, 0])
        for (const { product, dose, errors, gap } of steps) {
          const kilograms = dose * truth
          additions.push(added(`x${day}`, dated(day + 1), product, kilograms, { strength: 100, basis: 'mass_percent' }))
          for (const [name, rise] of Object.entries(per[product] ?? {}))
            water[name] = (water[name] ?? 0) + (rise * kilograms) / truth
          day += gap
          read(errors)
        }
        const known = { low: truth * (1 - 0.1 - 0.09 * off), high: truth * (1 + 0.1 - 0.09 * off) }
        const all = volumeEvidence(record(samples, additions), errorOf)
        let width = known.high - known.low
        for (let count = 0; count <= all.length; count++) {
          const found = narrowVolume(known, all.slice(0, count))
          if (found.kind === 'contradiction' || found.kind === 'against_known') throw new Error(found.kind)
          if (found.kind !== 'narrower') continue
          narrowed++
          const { low, high } = found.interval
          expect(low).toBeLessThanOrEqual(truth * 1.0005)
          expect(high).toBeGreaterThanOrEqual(truth * 0.9995)
          expect(low).toBeGreaterThanOrEqual(known.low)
          expect(high).toBeLessThanOrEqual(known.high)
          expect(high - low).toBeLessThanOrEqual(width)
          width = high - low
        }
      }),
      { seed: 20260515, numRuns: process.env.LONG ? 5000 : 500 },
    )
    expect(narrowed).toBeGreaterThan(100)
  })
})
