import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import type { PlanRecord } from '../../src/notebook/record'
import { toFile } from '../../src/notebook/toFile'
import { isProblem } from '../../src/words/problem'
import { randomWishes } from './randomEdits'
import { applied, EMPTY, edited, frozen, refusal } from './samples'

const given: PlanRecord = {
  id: 'kept',
  date: '2026-05-01T09:30',
  scenario: 'As tested',
  sample: null,
  swim: { now: 'no', says: ['Free chlorine was not tested.'] },
  steps: [],
  verdicts: [],
  complete: false,
  water: { ph: 7.8 },
  end: { ph: 7.4 },
  versions: {},
}

describe('the record of a pool', () => {
  test('a plan that was given is never another: whatever is edited later, it stays or is taken out whole', () => {
    fc.assert(
      fc.property(randomWishes(60), (wishes) => {
        let notebook: Notebook = edited(EMPTY, { type: 'put_plan_record', plan: frozen(structuredClone(given)) })
        const seen = new Map<string, PlanRecord>()
        for (const wish of wishes) {
          const edit = wish(notebook)
          const result = edit === null ? null : apply(notebook, edit)
          if (result === null || isProblem(result)) continue
          const before = notebook
          notebook = result.notebook
          for (const plan of Object.values(notebook.plans)) {
            const earlier = before.plans[plan.id]
            if (earlier !== undefined) expect(plan).toBe(earlier)
            seen.set(plan.id, plan)
          }
        }
        expect(notebook.plans.kept).toEqual(given)
        expect(seen.size).toBeLessThanOrEqual(3)
      }),
      { seed: 20260511, numRuns: 200 },
    )
  })

  test('a second plan under the same id is refused, and the first stays', () => {
    const notebook = edited(EMPTY, { type: 'put_plan_record', plan: given })
    const other = apply(notebook, { type: 'put_plan_record', plan: { ...given, end: { ph: 6 } } })
    expect(refusal(other)).toMatch(/stays as it was given/)
  })

  test('each change has a way back', () => {
    const addition = { id: 'a', date: '2026-05-02', product: 'salt', amount: 20, unit: 'kg', note: '' } as const
    const remark = { id: 'r', date: '2026-05-02', text: 'Pump replaced.' }
    const lesson = {
      id: 'l',
      date: '2026-05-02',
      kind: 'volume',
      values: { volume_low: 50 },
      from: [],
      note: '',
    } as const
    const full = edited(
      EMPTY,
      { type: 'put_addition', addition },
      { type: 'put_remark', remark },
      { type: 'put_lesson', lesson },
      { type: 'put_plan_record', plan: given },
    )
    for (const edit of [
      { type: 'remove_addition', addition: 'a' },
      { type: 'put_addition', addition: { ...addition, amount: 40 } },
      { type: 'remove_remark', remark: 'r' },
      { type: 'put_remark', remark: { ...remark, text: '' } },
      { type: 'remove_lesson', lesson: 'l' },
      { type: 'put_lesson', lesson: { ...lesson, values: {} } },
      { type: 'remove_plan_record', plan: 'kept' },
      { type: 'put_plan_record', plan: { ...given, id: 'new' } },
    ] as const) {
      const { notebook, inverse } = applied(full, edit)
      expect(notebook).not.toEqual(full)
      expect(applied(notebook, inverse).notebook).toEqual(full)
    }
    expect(fromFile(toFile(full), 'mine.json')).toEqual(full)
  })

  test('what is not there cannot be taken out', () => {
    expect(refusal(apply(EMPTY, { type: 'remove_plan_record', plan: 'constructor' }))).toMatch(/not in the record/)
    expect(refusal(apply(EMPTY, { type: 'remove_addition', addition: 'a' }))).toMatch(/not in the record/)
    expect(refusal(apply(EMPTY, { type: 'remove_remark', remark: 'a' }))).toMatch(/not in the record/)
    expect(refusal(apply(EMPTY, { type: 'remove_lesson', lesson: 'a' }))).toMatch(/not in the record/)
  })

  test('a file with an amount of nothing, an unknown unit or a changed key is refused with its place', () => {
    const text = toFile(
      edited(EMPTY, {
        type: 'put_addition',
        addition: { id: 'a', date: '2026-05-02', product: 'salt', amount: 20, unit: 'kg', note: '' },
      }),
    )
    for (const [from, to, why] of [
      ['"amount": 20', '"amount": 0', /additions\.a\.amount/],
      ['"unit": "kg"', '"unit": "bag"', /additions\.a\.unit/],
      ['"product": "salt"', '"product": "__proto__"', /additions\.a\.product/],
      ['"id": "a"', '"id": "b"', /additions\.a\.id/],
    ] as const) {
      const read = fromFile(text.replace(from, to), 'mine.json')
      expect(Array.isArray(read) ? JSON.stringify(read.map(({ path }) => path.join('.'))) : 'read').toMatch(why)
    }
  })
})
