import { describe, expect, test } from 'vitest'
import type { Edit } from '../../src/notebook/edit'
import { createHistory, type History, redo, remember, undo } from '../../src/notebook/history'
import type { Notebook } from '../../src/notebook/notebook'
import { applied, cell, EMPTY, edited, number, scenario } from './samples'

/** A document and its history after edits. */
function tab(notebook: Notebook, ...edits: readonly Edit[]): { notebook: Notebook; history: History } {
  return edits.reduce((now, edit) => does(now, edit), { notebook, history: createHistory() })
}

function does({ notebook, history }: { notebook: Notebook; history: History }, edit: Edit) {
  const result = applied(notebook, edit)
  return { notebook: result.notebook, history: remember(history, edit, result) }
}

const note = (text: string): Edit => ({ type: 'change_notebook', set: { note: text } })

describe('history', () => {
  test('of nothing has nothing to take back or do again', () => {
    expect(undo(createHistory())).toBeNull()
    expect(redo(createHistory())).toBeNull()
  })

  test('an edit after taking back ends what could be done again', () => {
    const now = tab(EMPTY, cell('first', 'ph', number(7.4)), cell('first', 'ph', number(7.6)))
    const back = undo(now.history)
    expect(back?.edit).toEqual(cell('first', 'ph', number(7.4)))
    const other = does(
      { notebook: edited(now.notebook, back?.edit ?? note('')), history: back?.history ?? now.history },
      note('x'),
    )
    expect(redo(other.history)).toBeNull()
    expect(other.history.past).toHaveLength(2)
  })

  test('writing on in one note is one step, another note another', () => {
    const two = edited(EMPTY, scenario('warm', 'a1'))
    const mine = (text: string): Edit => ({ type: 'change_scenario', scenario: 'warm', set: { note: text } })
    const { notebook, history } = tab(two, note('a'), note('ab'), mine('x'), mine('xy'))
    expect(history.past).toHaveLength(2)
    const once = undo(history)
    expect(edited(notebook, once?.edit ?? note('')).scenarios.warm?.note).toBe('')
    const twice = once && undo(once.history)
    expect(edited(notebook, twice?.edit ?? note('?')).note).toBe('')
    const again = twice && redo(twice.history)
    expect(again?.edit).toEqual(note('ab'))
  })

  test('a note is not joined to a step that was taken back to', () => {
    const { history } = tab(EMPTY, note('a'), cell('first', 'ph', number(7.4)))
    const back = undo(history)
    const edit = note('b')
    expect(remember(back?.history ?? history, edit, applied(EMPTY, edit)).past).toHaveLength(2)
  })

  test('what the notebook was computed with is no step', () => {
    expect(tab(EMPTY, { type: 'computed_with', versions: { LSI: 2 } }).history.past).toHaveLength(0)
  })

  test('keeps the last 500 steps', () => {
    const edits = Array.from({ length: 510 }, (_, at) => cell('first', 'ph', number(at)))
    const { history } = tab(EMPTY, ...edits)
    expect(history.past).toHaveLength(500)
    expect(history.past[0]?.edit).toEqual(cell('first', 'ph', number(10)))
  })
})
