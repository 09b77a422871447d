import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { editSchema } from '../../src/notebook/editSchema'
import { fromFile } from '../../src/notebook/file'
import { checked } from '../../src/notebook/schemaProblems'
import { toFile } from '../../src/notebook/toFile'
import { givenPlan, keptAs } from '../../src/ui/record/givenPlan'
import { keepPlan } from '../../src/ui/record/keepPlan'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { shippedOutline } from '../../src/worksheet/shippedOutline'
import { cell, EMPTY, edited, number } from '../notebook/samples'
import { column, plan } from '../planner/bench'
import { pools } from '../planner/pools'

const reader = {
  catalog: shippedOutline(),
  profile: 'us' as const,
  unit: (quantity: string) => shippedOutline().quantities.get(quantity)?.row.unit ?? '1',
  water: column({}),
  changes: {},
}
const typed = edited(EMPTY, cell('first', 'ph', number(7.8)))

test('any plan can be kept as given, read back from a file as it was, and known again', () => {
  let steps = 0
  fc.assert(
    fc.property(pools, (values) => {
      const water = column(values)
      const given = givenPlan(plan(values), water, { ...reader, water })
      const { edits, plan: record } = keepPlan(typed, reader.catalog, 'first', given, '2026-05-01T09:30', 'Test')
      const edit = { type: 'together', edits } as const
      expect(checked(editSchema, JSON.parse(JSON.stringify(edit)), ['edit'])).toEqual({ value: edit })
      const kept = apply(typed, edit)
      if (isProblem(kept)) throw new Error(sentence(kept))
      expect(Object.values(kept.notebook.samples)).toMatchObject([{ readings: { ph: { canonical: 7.8 } } }])
      expect(fromFile(toFile(kept.notebook), 'mine.json')).toEqual(kept.notebook)
      expect(keptAs(kept.notebook.plans, 'As tested', given)).toEqual(record)
      expect(keptAs(kept.notebook.plans, 'As tested', { ...given, complete: !given.complete })).toBeNull()
      steps += given.steps.length
    }),
    { seed: 20260517, numRuns: process.env.LONG ? 300 : 25 },
  )
  expect(steps).toBeGreaterThan(50)
}, 120_000)
