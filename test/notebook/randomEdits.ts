import fc from 'fast-check'
import { apply } from '../../src/notebook/apply'
import { addSamples, addScenario, duplicateScenario, moveScenario, removeSample } from '../../src/notebook/commands'
import type { Edit } from '../../src/notebook/edit'
import type { Cell, Notebook, Reading } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import type { PlanRecord } from '../../src/notebook/record'
import { together } from '../../src/notebook/together'
import { isProblem } from '../../src/words/problem'

/** A wish that any notebook can be asked: it picks its scenario and sample by a number, so it shrinks well. */
export interface Wish {
  readonly toString: () => string
  readonly edit: (notebook: Notebook) => Edit | null
}

const value = fc.record({
  kind: fc.constant('value' as const),
  entered: fc.string({ maxLength: 20 }),
  unit: fc.constantFrom('pH', '°F', 'mg/L'),
  // JSON has no negative zero
  canonical: fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0),
})
const limit = fc.record({
  kind: fc.constant('limit' as const),
  side: fc.constantFrom('above' as const, 'below' as const),
  entered: fc.string({ maxLength: 20 }),
  unit: fc.constantFrom('pH', 'mg/L'),
  canonical: fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0),
})
const choice = fc.record({ kind: fc.constant('choice' as const), id: fc.constantFrom('vinyl', 'plaster') })
const reading: fc.Arbitrary<Reading> = fc.oneof(value, choice, limit)
const cell: fc.Arbitrary<Cell> = fc.oneof(
  reading,
  fc.constant({ kind: 'not_taken' as const }),
  fc.constant({ kind: 'not_taken' as const, plan: 'first' }),
  value.map((one) => ({ ...one, plan: 'first' })),
  fc.constantFrom('baseline.ph + 0.1', 'total_hardness * 0.7').map((text) => ({ kind: 'formula' as const, text })),
)
const quantity = fc.constantFrom('ph', 'salt', 'volume', 'lsi', 'shell')
const name = fc.oneof(
  fc.constantFrom('As tested', 'Warm', 'cold', 'baseline', ' ', "O'Hara’s"),
  fc.string({ maxLength: 8 }),
)
const text = fc.string({ maxLength: 30, unit: 'grapheme' })
const pick = fc.nat({ max: 30 })

const scenarioAt = (notebook: Notebook, at: number) => {
  const all = inOrder(notebook)
  return all[at % all.length]?.id ?? ''
}
const sampleAt = (notebook: Notebook, at: number) => {
  const all = Object.keys(notebook.samples).sort()
  return all[at % all.length] ?? null
}
const planRecord = (id: string, says: string, ph: number): PlanRecord => ({
  id,
  date: '2026-05-02T10:00',
  scenario: 'As tested',
  sample: 'one',
  swim: { now: 'yes', says: [says] },
  steps: [
    {
      kind: 'dose',
      says,
      how: [],
      cautions: [says],
      product: 'salt',
      amount: { value: 20, unit: 'kg' },
      at: 0,
      wait: 24,
      retest: ['salt'],
      rules: ['low_volume'],
      water: { ph, salt: 3200 },
    },
  ],
  verdicts: [{ quantity: 'ph', verdict: 'nothing', says }],
  complete: true,
  water: { ph, shell: 'vinyl' },
  end: { ph },
  versions: { LANGELIER_INDEX: 1 },
})
const worksheet = (id: string, note: string) => ({ format: 'basinbook-worksheet', version: 1, id, note })

const wishes: readonly fc.Arbitrary<Wish['edit']>[] = [
  fc.tuple(pick, quantity, fc.option(cell)).map(([at, q, c]) => (n) => ({
    type: 'set_cell',
    scenario: scenarioAt(n, at),
    quantity: q,
    cell: c,
  })),
  fc.tuple(pick, name).map(
    ([at, wanted]) =>
      (n) =>
        addScenario(n, wanted, scenarioAt(n, at)),
  ),
  fc.tuple(pick, name).map(
    ([at, wanted]) =>
      (n) =>
        usable(duplicateScenario(n, scenarioAt(n, at), wanted)),
  ),
  fc
    .tuple(fc.constantFrom('r1', 'r2'), fc.constantFrom('my_sum', 'my_gap'), fc.constantFrom('a0', 'a1', 'a0V'))
    .map(([id, rowName, order]) => () => ({
      type: 'put_row',
      row: {
        id,
        worksheet: 'salt',
        after: 'salt_mass',
        order,
        row: { name: rowName, label: 'Mine', unit: 'kg', range: [0, 100], formula: '2 * salt_mass' },
      },
    })),
  fc.constantFrom('r1', 'r2').map((row) => () => ({ type: 'remove_row', row })),
  pick.map((at) => (n) => ({ type: 'remove_scenario', scenario: scenarioAt(n, at) })),
  fc.tuple(pick, fc.constantFrom(-1 as const, 1 as const)).map(
    ([at, by]) =>
      (n) =>
        usable(moveScenario(n, scenarioAt(n, at), by)),
  ),
  fc.tuple(pick, name).map(([at, wanted]) => (n) => ({
    type: 'change_scenario',
    scenario: scenarioAt(n, at),
    set: { name: wanted },
  })),
  fc.tuple(pick, text).map(([at, note]) => (n) => ({
    type: 'change_scenario',
    scenario: scenarioAt(n, at),
    set: { note },
  })),
  fc.tuple(pick, pick).map(([at, of]) => (n) => ({
    type: 'change_scenario',
    scenario: scenarioAt(n, at),
    set: { sample: sampleAt(n, of) },
  })),
  fc
    .tuple(
      fc.constantFrom('one', 'two', 'three'),
      fc.dictionary(quantity, reading),
      fc.boolean(),
      fc.option(fc.dictionary(quantity, fc.array(reading, { maxLength: 3 }))),
    )
    .map(([id, readings, elsewhere, others]) => () => ({
      type: 'put_sample',
      sample: {
        id,
        name: `Sample ${id}`,
        date: '2026-05-01',
        elsewhere,
        readings: { ...readings },
        ...(others === null ? {} : { others: { ...others } }),
      },
    })),
  fc.tuple(fc.constantFrom('four', 'five'), name).map(
    ([id, sampleName]) =>
      (n) =>
        addSamples(n, [
          { id, name: sampleName, date: '', elsewhere: false, readings: {}, origin: { file: 'a.csv', row: 2 } },
        ]),
  ),
  pick.map((at) => (n) => {
    const sample = sampleAt(n, at)
    return sample === null ? null : removeSample(n, sample)
  }),
  fc
    .record({ name, note: text, profile: fc.constantFrom('metric' as const, 'us' as const) }, { requiredKeys: [] })
    .map((set) => () => ({ type: 'change_notebook', set: { ...set } })),
  fc.tuple(quantity, fc.option(fc.constantFrom('°F', 'mg/L'))).map(([q, unit]) => () => ({
    type: 'set_unit',
    quantity: q,
    unit,
  })),
  fc
    .tuple(fc.constantFrom('mine', 'yours', 'ours'), text, fc.constantFrom(undefined, 'mine', 'ours'))
    .map(([id, note, before]) => () => ({
      type: 'put_worksheet',
      id,
      definition: worksheet(id, note),
      ...(before === undefined ? {} : { before }),
    })),
  fc.constantFrom('mine', 'yours', 'ours').map((id) => () => ({ type: 'remove_worksheet', id })),
  fc
    .tuple(fc.constantFrom('acid', 'salt'), fc.option(fc.double({ min: 0.5, max: 40, noNaN: true })))
    .map(([id, price]) => () => ({
      type: 'put_product',
      product: { id, role: id, product: 'salt', ...(price === null ? {} : { price }) },
    })),
  fc.constantFrom('acid', 'salt').map((product) => () => ({ type: 'remove_product', product })),
  fc
    .tuple(fc.constantFrom('one', 'two'), name, fc.array(quantity, { minLength: 1, maxLength: 3 }), fc.boolean())
    .map(([id, chartName, outputs, swept]) => () => ({
      type: 'put_chart',
      chart: {
        id,
        name: chartName,
        outputs,
        scenarios: [],
        ...(swept ? { kind: 'sweep', input: 'ph', from: 7, to: 8, points: 11 } : { kind: 'comparison' }),
      },
    })),
  fc.constantFrom('one', 'two').map((chart) => () => ({ type: 'remove_chart', chart })),
  fc
    .tuple(
      quantity,
      fc.constantFrom(
        null,
        { kind: 'method' as const, method: 'strip' },
        { kind: 'value' as const, entered: '0.2', unit: 'pH', canonical: 0.2 },
      ),
    )
    .map(([q, precision]) => () => ({ type: 'set_precision', quantity: q, precision })),
  fc
    .tuple(fc.constantFrom('given', 'again'), text, fc.double({ min: 0, max: 40, noNaN: true }))
    .map(([id, says, ph]) => () => ({ type: 'put_plan_record', plan: planRecord(id, says, ph) })),
  fc.constantFrom('given', 'again').map((plan) => () => ({ type: 'remove_plan_record', plan })),
  fc
    .tuple(fc.constantFrom('salt1', 'acid1'), fc.double({ min: 0.1, max: 400, noNaN: true }), text)
    .map(([id, amount, note]) => () => ({
      type: 'put_addition',
      addition: { id, date: '2026-05-02', product: 'salt', amount, unit: 'kg', note },
    })),
  fc.constantFrom('salt1', 'acid1').map((addition) => () => ({ type: 'remove_addition', addition })),
  text.map((written) => () => ({ type: 'put_remark', remark: { id: 'remark', date: '2026-05-03', text: written } })),
  fc.constant(() => ({ type: 'remove_remark', remark: 'remark' })),
  fc.double({ min: 1, max: 99, noNaN: true }).map((low) => () => ({
    type: 'put_lesson',
    lesson: {
      id: 'lesson',
      date: '2026-05-04',
      kind: 'volume',
      values: { volume_low: low, volume_high: low + 1 },
      from: ['salt1'],
      note: '',
    },
  })),
  fc.constant(() => ({ type: 'remove_lesson', lesson: 'lesson' })),
  fc.tuple(text, quantity).map(([note, q]) => (n) => ({
    type: 'go_back',
    to: { ...n, note, units: { [q]: 'mg/L' }, samples: { ...n.samples } },
  })),
  fc.tuple(fc.constantFrom('storm', 'flood'), text).map(([id, label]) => () => ({
    type: 'put_case',
    id,
    definition: { format: 'basinbook-case', version: 1, id, label },
  })),
  fc.constantFrom('storm', 'flood').map((id) => () => ({ type: 'remove_case', id })),
  fc.tuple(pick, fc.subarray(['storm', 'green_water'])).map(([at, cases]) => (n) => ({
    type: 'change_scenario',
    scenario: scenarioAt(n, at),
    set: { cases },
  })),
  fc
    .tuple(fc.constantFrom('acid_cap.ph_least', 'test_errors.ph'), fc.option(fc.constantFrom(0.1, 7.3)))
    .map(([rule, value]) => () => ({ type: 'set_rule', rule, value })),
]

const wish: fc.Arbitrary<Wish['edit']> = fc.oneof(...wishes)

/** Two wishes as one step: the second is asked of the document after the first. */
const pair: fc.Arbitrary<Wish['edit']> = fc.tuple(wish, wish).map(([one, two]) => (notebook) => {
  const first = one(notebook)
  const next = first === null ? null : apply(notebook, first)
  if (first === null || next === null || isProblem(next)) return first
  const second = two(next.notebook)
  return second === null ? first : together(first, second)
})

/** Wishes of every kind; some of them cannot be and are refused. */
export const randomWishes = (most = 25) =>
  fc.array(fc.oneof({ weight: 5, arbitrary: wish }, { weight: 1, arbitrary: pair }), { maxLength: most, size: 'large' })

function usable<T extends object>(edit: T): Exclude<T, { code: string }> | null {
  return isProblem(edit) ? null : (edit as Exclude<T, { code: string }>)
}
