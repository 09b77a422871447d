import { describe, expect, test } from 'vitest'
import type { Sample } from '../../src/notebook/notebook'
import type { Addition, GivenStep, PlanRecord } from '../../src/notebook/record'
import { foretold } from '../../src/record/foretold'
import { moved } from '../../src/record/moved'
import { timeline } from '../../src/record/timeline'
import { EMPTY } from '../notebook/samples'

const ERRORS = new Map([
  ['ph', 0.1],
  ['salt', 200],
])
const errorOf = (quantity: string) => ERRORS.get(quantity)
const sample = (id: string, date: string, figures: Readonly<Record<string, number>>): Sample => ({
  id,
  name: id,
  date,
  elsewhere: false,
  readings: Object.fromEntries(
    Object.entries(figures).map(([name, canonical]) => [
      name,
      { kind: 'value', entered: String(canonical), unit: 'x', canonical },
    ]),
  ),
})
const step = (water: GivenStep['water']): GivenStep => ({
  kind: 'dose',
  says: '',
  how: [],
  cautions: [],
  at: 0,
  wait: 0,
  retest: [],
  rules: [],
  water,
})
const plan: PlanRecord = {
  id: 'plan',
  date: '2026-05-01T10:00',
  scenario: 'As tested',
  sample: 'a',
  swim: { now: 'yes', says: [] },
  steps: [step({ ph: 7.4, salt: 2000 }), step({ ph: 7.4, salt: 3200 })],
  verdicts: [],
  complete: true,
  water: { ph: 7.8, salt: 2000, volume: 50, volume_low: 45, volume_high: 55 },
  end: { ph: 7.4, salt: 3200 },
  versions: {},
}
const made = (id: string, at: number): Addition => ({
  id,
  date: '2026-05-01',
  product: 'salt',
  amount: 1,
  unit: 'kg',
  plan: 'plan',
  step: at,
  note: '',
})
const compared = (after: Readonly<Record<string, number>>, additions: readonly Addition[] = []) =>
  foretold(
    {
      plans: { plan },
      samples: { a: sample('a', '2026-05-01', { ph: 7.8, salt: 2000 }), b: sample('b', '2026-05-04', after) },
      additions: Object.fromEntries(additions.map((one) => [one.id, one])),
    },
    errorOf,
  )[0]

describe('what became of a plan', () => {
  test('by hand: 1200 mg/L foretold in 50 m³ are 1091 to 1333 in 55 to 45, and each of two tests is off by 200', () => {
    const [, salt] = compared({ ph: 7.4, salt: 3100 })?.comparisons ?? []
    expect(salt).toMatchObject({ quantity: 'salt', foretold: 3200, measured: 3100, side: 'as_foretold', meant: true })
    expect(salt?.expected.low).toBeCloseTo(2000 + 1090.9 - 400, 0)
    expect(salt?.expected.high).toBeCloseTo(2000 + 1333.3 + 400, 0)
  })

  test('beyond that it is more or less', () => {
    const sides = compared({ ph: 7.7, salt: 2500 })?.comparisons.map(({ side }) => side)
    expect(sides).toEqual(['more', 'less'])
  })

  test('is held against the water after what was marked as made', () => {
    expect(compared({ salt: 2050 }, [made('x', 0)])).toMatchObject({ done: 1, comparisons: [{ foretold: 2000 }] })
    expect(compared({ salt: 2050 }, [made('x', 0), made('y', 1)])).toMatchObject({ done: 'all' })
    expect(compared({ salt: 2050 })).toMatchObject({ done: 'unknown', comparisons: [{ foretold: 3200 }] })
    expect(compared({ salt: 2050 }, [made('y', 1)])).toBeUndefined()
  })

  test('chlorine is not compared, and a plan without a sample is no plan of this water', () => {
    expect(compared({ free_chlorine: 1 })).toBeUndefined()
    const supposed = { ...plan, sample: null }
    expect(
      foretold(
        { plans: { plan: supposed }, samples: { b: sample('b', '2026-05-04', { ph: 7 }) }, additions: {} },
        errorOf,
      ),
    ).toEqual([])
  })
})

test('a version that is another, or gone, has moved', () => {
  expect(moved({ A: 1, B: 2, C: 3 }, { A: 1, B: 3 })).toEqual([
    { name: 'B', was: 2, is: 3 },
    { name: 'C', was: 3, is: null },
  ])
})

test('the record stands by date, the last first, an addition of the day after its test and plan', () => {
  const notebook = {
    ...EMPTY,
    plans: { plan },
    samples: { a: sample('a', '2026-05-01', {}), z: sample('z', '', {}), b: sample('b', '2026-05-04', {}) },
    additions: { x: made('x', 0) },
    remarks: { r: { id: 'r', date: '2026-05-02', text: 'rain' } },
  }
  expect(timeline(notebook).map(({ id }) => id)).toEqual(['b', 'r', 'x', 'plan', 'a', 'z'])
})

test('what stands in the record stays the same thing when something else is written down, so that it stays unfolded', () => {
  const before = timeline({ ...EMPTY, plans: { plan } })
  const after = timeline({ ...EMPTY, plans: { plan }, additions: { x: made('x', 0) } })
  expect(after.find(({ kind }) => kind === 'plan')).toBe(before[0])
})
