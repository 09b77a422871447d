import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { editSchema } from '../../src/notebook/editSchema'
import { createHistory, type History, redo, remember, undo } from '../../src/notebook/history'
import type { Notebook } from '../../src/notebook/notebook'
import { toFile } from '../../src/notebook/toFile'
import { isProblem } from '../../src/words/problem'
import { randomWishes } from './randomEdits'
import { applied, cell, EMPTY, edited, frozen, number, refusal, sample, scenario } from './samples'

const SEED = { seed: 20260501, numRuns: process.env.LONG ? 5_000 : 400 }

describe('any sequence of edits', () => {
  test('taken back whole gives the first notebook, and done again the last', () => {
    let done = 0
    fc.assert(
      fc.property(randomWishes(), (wishes) => {
        let notebook: Notebook = frozen(EMPTY)
        let history: History = createHistory()
        for (const wish of wishes) {
          const edit = wish(notebook)
          const result = edit === null ? null : apply(notebook, edit)
          if (edit === null || result === null || isProblem(result)) continue
          notebook = frozen(result.notebook)
          history = remember(history, edit, result)
          done++
        }
        const last = notebook
        for (let step = undo(history); step !== null; step = undo(history)) {
          notebook = applied(notebook, step.edit).notebook
          history = step.history
        }
        expect(notebook).toEqual(EMPTY)
        expect(toFile(notebook)).toBe(toFile(EMPTY))
        for (let step = redo(history); step !== null; step = redo(history)) {
          notebook = applied(notebook, step.edit).notebook
          history = step.history
        }
        expect(notebook).toEqual(last)
        expect(toFile(notebook)).toBe(toFile(last))
      }),
      SEED,
    )
    expect(done).toBeGreaterThan(SEED.numRuns * 3)
  })

  test('never leaves two scenarios of one name or place, nor a scenario before the baseline', () => {
    fc.assert(
      fc.property(randomWishes(), (wishes) => {
        let notebook = EMPTY
        for (const wish of wishes) {
          const edit = wish(notebook)
          const result = edit === null ? null : apply(notebook, edit)
          if (result !== null && !isProblem(result)) notebook = result.notebook
        }
        const scenarios = Object.values(notebook.scenarios)
        expect(new Set(scenarios.map(({ name }) => name.trim().toLowerCase())).size).toBe(scenarios.length)
        expect(new Set(scenarios.map(({ order }) => order)).size).toBe(scenarios.length)
        expect(scenarios.every(({ id, order }) => id === 'first' || order > 'a0')).toBe(true)
      }),
      SEED,
    )
  })

  test('is made of edits that the schema knows, inverses too', () => {
    fc.assert(
      fc.property(randomWishes(), (wishes) => {
        let notebook = EMPTY
        for (const wish of wishes) {
          const edit = wish(notebook)
          const result = edit === null ? null : apply(notebook, edit)
          if (edit === null || result === null || isProblem(result)) continue
          expect(editSchema.parse(edit)).toEqual(edit)
          expect(editSchema.parse(result.inverse)).toEqual(result.inverse)
          notebook = result.notebook
        }
      }),
      { ...SEED, numRuns: 100 },
    )
  })
})

describe('apply', () => {
  test('shares what an edit does not touch', () => {
    const before = edited(EMPTY, scenario('warm', 'a1'), { type: 'put_sample', sample: sample('one', {}) })
    const now = edited(before, cell('warm', 'ph', number(7.4)))
    expect(now.scenarios).toBe(before.scenarios)
    expect(now.samples).toBe(before.samples)
    expect(before.cells).toEqual({})
  })

  test('clearing a cell in which nothing was typed changes nothing and makes no step', () => {
    const result = applied(EMPTY, cell('first', 'ph', null))
    expect(result.notebook).toBe(EMPTY)
    expect(result.history).toBe('none')
  })

  test('a step of several is refused whole', () => {
    const edits = [cell('first', 'ph', number(7.4)), cell('nowhere', 'ph', number(7.4))] as never
    expect(refusal(apply(EMPTY, { type: 'together', edits }))).toBe('This scenario is no longer in the notebook.')
  })

  test('a removed scenario comes back with its cells', () => {
    const before = edited(
      EMPTY,
      scenario('warm', 'a1'),
      cell('warm', 'ph', number(7.4)),
      cell('first', 'ph', number(7.8)),
    )
    const { notebook, inverse } = applied(before, { type: 'remove_scenario', scenario: 'warm' })
    expect(notebook.cells).toEqual({ 'first/ph': number(7.8) })
    expect(edited(notebook, inverse)).toEqual(before)
  })

  test('a removed worksheet comes back in its place', () => {
    const put = (id: string) => ({ type: 'put_worksheet', id, definition: { id } }) as const
    const before = edited(EMPTY, put('one'), put('two'), put('three'))
    const { notebook, inverse } = applied(before, { type: 'remove_worksheet', id: 'two' })
    expect(Object.keys(edited(notebook, inverse).worksheets)).toEqual(['one', 'two', 'three'])
  })

  test('finds nothing under the names that every object has', () => {
    expect(refusal(apply(EMPTY, cell('constructor', 'ph', null)))).toBe('This scenario is no longer in the notebook.')
    expect(refusal(apply(EMPTY, { type: 'remove_sample', sample: 'toString' }))).toBe(
      'This sample is no longer in the notebook.',
    )
  })
})

describe('refusals', () => {
  const two = edited(EMPTY, scenario('warm', 'a1', 'Warm'), { type: 'put_sample', sample: sample('one', {}) })
  const tied = edited(two, { type: 'change_scenario', scenario: 'warm', set: { sample: 'one' } })
  const change = (id: string, set: object) => refusal(apply(two, { type: 'change_scenario', scenario: id, set }))

  test('of scenarios', () => {
    expect(refusal(apply(two, { type: 'remove_scenario', scenario: 'first' }))).toMatchInlineSnapshot(
      `"“As tested” is the baseline, which the other scenarios follow; it stays first and cannot be removed."`,
    )
    expect(refusal(apply(two, scenario('cold', 'Zz', 'Cold')))).toMatchInlineSnapshot(
      `"“Cold” cannot stand before “As tested”, which is the baseline that the other scenarios follow."`,
    )
    expect(refusal(apply(two, scenario('cold', 'a1', 'Cold')))).toMatchInlineSnapshot(
      `"“Cold” and “Warm” cannot have the same place."`,
    )
    expect(refusal(apply(two, scenario('cold', 'a', 'Cold')))).toMatchInlineSnapshot(
      `"The place of “Cold” among the scenarios cannot be read."`,
    )
    expect(refusal(apply(two, scenario('warm', 'a2', 'Cold')))).toMatchInlineSnapshot(
      `"The scenario “Cold” is in the notebook already."`,
    )
    expect(refusal(apply(two, scenario('cold', 'a2', ' WARM ')))).toMatchInlineSnapshot(
      `"A scenario named “Warm” is there already; choose another name."`,
    )
    expect(refusal(apply(two, scenario('cold', 'a2', 'Baseline')))).toMatchInlineSnapshot(
      `"“Baseline” cannot be a scenario’s name: in formulas that word always means the first scenario. Choose another name."`,
    )
    expect(refusal(apply(two, scenario('cold', 'a2', 'Cold', 'gone')))).toMatchInlineSnapshot(
      `"This sample is no longer in the notebook."`,
    )
    expect(change('first', { order: 'a2' })).toMatchInlineSnapshot(
      `"“As tested” is the baseline, which the other scenarios follow; it stays first and cannot be removed."`,
    )
    expect(change('warm', { order: 'Zz' })).toMatchInlineSnapshot(
      `"“Warm” cannot stand before “As tested”, which is the baseline that the other scenarios follow."`,
    )
    expect(change('warm', { name: ' ' })).toMatchInlineSnapshot(`"The name is empty; enter one."`)
    expect(change('warm', { name: 'x'.repeat(201) })).toMatchInlineSnapshot(
      `"The name has 201 characters; at most 200 are kept."`,
    )
    expect(change('warm', { name: 'a\nb' })).toMatchInlineSnapshot(
      `"A name is one line, without tabs, line breaks and other control characters."`,
    )
    expect(change('warm', { note: 'x'.repeat(10_001) })).toMatchInlineSnapshot(
      `"The note has 10001 characters; at most 10000 are kept."`,
    )
    expect(change('gone', { name: 'x' })).toMatchInlineSnapshot(`"This scenario is no longer in the notebook."`)
  })

  test('of samples and worksheets', () => {
    expect(refusal(apply(tied, { type: 'remove_sample', sample: 'one' }))).toMatchInlineSnapshot(
      `"The sample “Sample one” is used by Warm; choose another sample there first."`,
    )
    expect(refusal(apply(tied, { type: 'remove_sample', sample: 'two' }))).toMatchInlineSnapshot(
      `"This sample is no longer in the notebook."`,
    )
    expect(refusal(apply(two, { type: 'remove_worksheet', id: 'mine' }))).toMatchInlineSnapshot(
      `"The worksheet “mine” is no longer in the notebook."`,
    )
    expect(
      refusal(apply(two, { type: 'put_worksheet', id: 'mine', definition: { id: 'yours' } })),
    ).toMatchInlineSnapshot(`"The definition says another id than “mine”."`)
    expect(refusal(apply(two, { type: 'change_notebook', set: { name: '' } }))).toMatchInlineSnapshot(
      `"The name is empty; enter one."`,
    )
  })

  test('a scenario may be renamed to its own name in other letters', () => {
    expect(change('warm', { name: 'WARM' })).toBe('not refused')
  })
})
