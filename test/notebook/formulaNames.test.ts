import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { toShown, toStored } from '../../src/notebook/formulaNames'
import type { Notebook } from '../../src/notebook/notebook'
import { isProblem } from '../../src/words/problem'
import { EMPTY, edited, refusal, scenario } from './samples'

const book = edited(EMPTY, scenario('V1St_x-5', 'a1', 'Drain a third'), scenario('quote', 'a2', "O'Hara"))

const stored = (text: string) => {
  const result = toStored(text, book)
  return typeof result === 'string' ? result : refusal(result)
}

describe('names of scenarios in formulas', () => {
  test('are kept by id and shown by name', () => {
    expect(stored("'Drain a third'.ph + 0.1")).toBe("'V1St_x-5'.ph + 0.1")
    expect(stored("'O''Hara'.ph-'drain  a third'.ph")).toBe("'quote'.ph-'V1St_x-5'.ph")
    expect(toShown("'quote'.ph-'V1St_x-5'.ph", book)).toBe("'O''Hara'.ph-'Drain a third'.ph")
  })

  test('follow a new name', () => {
    const renamed = edited(book, { type: 'change_scenario', scenario: 'V1St_x-5', set: { name: 'Half' } })
    expect(toShown("'V1St_x-5'.ph", renamed)).toBe("'Half'.ph")
  })

  test('the baseline stays a word', () => {
    expect(stored('baseline.ph * 2')).toBe('baseline.ph * 2')
    expect(stored("'Baseline'.ph")).toBe('baseline.ph')
    expect(stored("'As tested'.ph")).toBe("'first'.ph")
  })

  test('names of quantities, solves and text stay as they are', () => {
    expect(stored('water.lsi & "\'As tested\'.ph"')).toBe('water.lsi & "\'As tested\'.ph"')
  })

  test('one that is gone is said to be', () => {
    expect(toShown("'gone'.ph", book)).toBe("'removed scenario'.ph")
    expect(stored("'removed scenario'.ph")).toMatchInlineSnapshot(
      `"The formula names a scenario “removed scenario”, and none has that name."`,
    )
  })

  test('a formula that cannot be read is refused on the way in and left alone on the way out', () => {
    expect(stored('ph +')).toMatchInlineSnapshot(
      `"The formula ends after “+”, where a number, a quantity or a function has to follow."`,
    )
    expect(toShown('ph +', book)).toBe('ph +')
  })

  test('any names: shown and kept again is the same formula', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 12 }), (name) => {
        const named = apply(EMPTY, scenario('other', 'a1', name))
        fc.pre(!isProblem(named))
        const notebook: Notebook = isProblem(named) ? EMPTY : named.notebook
        const formula = "1 + 'other'.ph * baseline.salt"
        expect(toStored(toShown(formula, notebook), notebook)).toBe(formula)
      }),
      { seed: 20260501 },
    )
  })
})
