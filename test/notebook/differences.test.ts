import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { differences } from '../../src/notebook/differences'
import type { Notebook } from '../../src/notebook/notebook'
import { isProblem } from '../../src/words/problem'
import { randomWishes } from './randomEdits'
import { cell, EMPTY, edited, number, sample, scenario } from './samples'

const BOOK = edited(EMPTY, cell('first', 'ph', number(7.4)), { type: 'put_sample', sample: sample('one', {}) })

describe('how two states of a notebook differ', () => {
  test('is told part by part', () => {
    const later = edited(
      BOOK,
      cell('first', 'ph', number(7.6)),
      cell('first', 'salt', number(3000)),
      { type: 'remove_sample', sample: 'one' },
      scenario('warm', 'a1', 'Warm'),
      { type: 'change_notebook', set: { note: 'Green in spring', profile: 'us' } },
    )
    expect(differences(BOOK, later)).toEqual(
      expect.arrayContaining([
        { part: 'note', how: 'changed', keys: [] },
        { part: 'profile', how: 'changed', keys: [] },
        { part: 'scenarios', how: 'added', keys: ['warm'] },
        { part: 'samples', how: 'removed', keys: ['one'] },
        { part: 'cells', how: 'added', keys: ['first/salt'] },
        { part: 'cells', how: 'changed', keys: ['first/ph'] },
      ]),
    )
    expect(differences(BOOK, later)).toHaveLength(6)
  })

  test('is nothing where the data are the same', () => {
    expect(differences(BOOK, structuredClone(BOOK))).toEqual([])
    expect(differences(BOOK, edited(BOOK, { type: 'computed_with', versions: { X: 2 } }))).toEqual([])
  })

  test('turns round: what came from one to the other goes on the way back; none means equal', () => {
    fc.assert(
      fc.property(randomWishes(), (wishes) => {
        let notebook: Notebook = BOOK
        for (const wish of wishes) {
          const edit = wish(notebook)
          const result = edit === null ? null : apply(notebook, edit)
          if (result !== null && !isProblem(result)) notebook = result.notebook
        }
        const there = differences(BOOK, notebook)
        const back = differences(notebook, BOOK)
        const turned = { added: 'removed', removed: 'added', changed: 'changed' } as const
        const told = (all: readonly (typeof there)[number][]) =>
          all.map(({ part, how, keys }) => `${part} ${how} ${[...keys].sort()}`).sort()
        expect(told(there)).toEqual(told(back.map((one) => ({ ...one, how: turned[one.how] }))))
        if (there.length === 0) expect({ ...notebook, computedWith: {} }).toEqual({ ...BOOK, computedWith: {} })
      }),
      { seed: 20260501, numRuns: 200 },
    )
  })
})
