import fc from 'fast-check'
import { expect, test } from 'vitest'
import { SHIPPED_CASES } from '../../src/planner/cases/shippedCases'
import { POOL, type Values } from './bench'
import { caseBench } from './caseBench'

const RUNS = process.env.LONG ? 600 : 40
const bench = caseBench()

/** A reading to its last digit, as a kit or a person gives it. */
const within = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((hundredths) => hundredths / 100)

/** Invented waters, and what was seen of them. */
const pools: fc.Arbitrary<Values> = fc
  .record({
    water_look: fc.constantFrom(undefined, 'clear', 'green', 'stained'),
    occasion: fc.constantFrom(undefined, 'ordinary', 'first_fill', 'opening', 'closing', 'rain', 'incident_diarrhoea'),
    water_body: fc.constantFrom('pool', 'spa'),
    shell: fc.constantFrom('vinyl', 'plaster'),
    shell_age: within(1, 60),
    ph: within(6.8, 8.4),
    free_chlorine: within(0, 9),
    cyanuric_acid: within(0, 180),
    salt: within(500, 6000),
    calcium_hardness: within(60, 400),
    cell_symptom: fc.constantFrom(undefined, 'scale'),
  })
  .map((given) => ({ ...POOL, total_chlorine: given.free_chlorine, ...given }))
const chosen = fc.subarray(
  SHIPPED_CASES.map(({ definition }) => definition.id),
  { maxLength: 3 },
)

const STOPPED: Readonly<Record<string, RegExp>> = {
  all: /./,
  chlorine: /hypochlorite|dichlor|trichlor/,
  salt: /^salt$/,
  stabilizer: /^cyanuric_acid$/,
  calcium: /^calcium_chloride/,
  balance: /acid$|carbonate$/,
}

test('over random pools no plan doses what a case that it follows stops or bars', { timeout: 600_000 }, () => {
  fc.assert(
    fc.property(pools, chosen, (values, picked) => {
      const made = bench.plan(values, picked)
      const doses = made.steps.filter(({ kind }) => kind === 'dose').map(({ product }) => product ?? '')
      for (const { id } of made.cases) {
        const definition = SHIPPED_CASES.find((source) => source.definition.id === id)?.definition
        for (const stage of definition?.stops ?? []) {
          expect(
            doses.filter((product) => STOPPED[stage]?.test(product)),
            `${id} stops ${stage}`,
          ).toEqual([])
        }
        expect(doses.filter((product) => definition?.bars?.includes(product))).toEqual([])
        if (definition?.stops?.includes('cell')) expect(made.steps.some(({ kind }) => kind === 'cell')).toBe(false)
        if (definition?.closes) expect(made.swim.now).toBe('no')
      }
      for (const { amount, wait, at } of made.steps) {
        expect(amount === undefined || (Number.isFinite(amount.value) && amount.value > 0)).toBe(true)
        expect(Number.isFinite(wait) && Number.isFinite(at)).toBe(true)
      }
    }),
    { seed: 20_261_125, numRuns: RUNS, endOnFailure: true },
  )
})
