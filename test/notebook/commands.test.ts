import { describe, expect, test } from 'vitest'
import {
  addSamples,
  addScenario,
  duplicateScenario,
  freeName,
  moveScenario,
  removeSample,
} from '../../src/notebook/commands'
import { copyNotebook, newNotebook } from '../../src/notebook/create'
import type { Edit } from '../../src/notebook/edit'
import type { Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { resolve } from '../../src/notebook/resolve'
import { together } from '../../src/notebook/together'
import { isProblem, type Problem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { cell, EMPTY, edited, number, refusal, sample, scenario } from './samples'
import { catalog } from './worksheets'

const names = (notebook: Notebook) => inOrder(notebook).map(({ name }) => name)

function done(notebook: Notebook, edit: Edit | Problem): Notebook {
  if (isProblem(edit)) throw new Error(sentence(edit))
  return edited(notebook, edit)
}

const three = edited(EMPTY, scenario('warm', 'a1', 'Warm'), scenario('cold', 'a2', 'Cold'))

describe('a new scenario', () => {
  test('stands right of the one it was made from, else last', () => {
    expect(names(edited(three, addScenario(three, 'Next', 'warm')))).toEqual(['As tested', 'Warm', 'Next', 'Cold'])
    expect(names(edited(three, addScenario(three, 'Next')))).toEqual(['As tested', 'Warm', 'Cold', 'Next'])
    expect(names(edited(three, addScenario(three, 'Next', 'first')))).toEqual(['As tested', 'Next', 'Warm', 'Cold'])
  })

  test('gets a number where its name is taken', () => {
    expect(freeName(three, 'Dry')).toBe('Dry')
    expect(freeName(three, ' warm ')).toBe('warm 2')
    expect(freeName(edited(three, addScenario(three, 'Warm')), 'Warm')).toBe('Warm 3')
    expect(freeName(three, 'baseline')).toBe('baseline 2')
    expect(freeName(edited(three, addScenario(three, 'x'.repeat(200))), 'x'.repeat(200))).toBe(`${'x'.repeat(198)} 2`)
  })
})

describe('a duplicate', () => {
  const book = edited(
    three,
    { type: 'put_sample', sample: sample('base', { ph: number(7.8) }) },
    { type: 'put_sample', sample: sample('other', { ph: number(7.2) }) },
    { type: 'change_scenario', scenario: 'first', set: { sample: 'base' } },
    { type: 'change_scenario', scenario: 'warm', set: { sample: 'other' } },
    cell('first', 'ph', number(7.5)),
    cell('warm', 'temperature', number(30, '°C')),
    cell('warm', 'lsi', number(0.1, '1')),
  )

  test.each(['first', 'warm', 'cold'])('of %s has the same values', (id) => {
    const copied = done(book, duplicateScenario(book, id, 'Copy'))
    const copy = Object.values(copied.scenarios).find(({ name }) => name === 'Copy')?.id ?? ''
    for (const quantity of catalog.quantities.keys())
      expect(resolve(copied, catalog, copy, quantity).cell).toEqual(resolve(book, catalog, id, quantity).cell)
  })

  test('of the baseline follows it', () => {
    const copied = done(book, duplicateScenario(book, 'first', 'Copy'))
    const copy = Object.values(copied.scenarios).find(({ name }) => name === 'Copy')?.id ?? ''
    expect(resolve(edited(copied, cell('first', 'ph', number(7.1))), catalog, copy, 'ph').cell).toEqual(number(7.1))
  })

  test('of what is not there is refused', () => {
    expect(refusal(duplicateScenario(book, 'gone', 'Copy'))).toBe('This scenario is no longer in the notebook.')
  })
})

describe('moving', () => {
  test('goes one place, and never past the baseline or the end', () => {
    expect(names(done(three, moveScenario(three, 'warm', 1)))).toEqual(['As tested', 'Cold', 'Warm'])
    expect(names(done(three, moveScenario(three, 'cold', -1)))).toEqual(['As tested', 'Cold', 'Warm'])
    expect(refusal(moveScenario(three, 'warm', -1))).toMatchInlineSnapshot(
      `"“Warm” cannot stand before “As tested”, which is the baseline that the other scenarios follow."`,
    )
    expect(refusal(moveScenario(three, 'cold', 1))).toMatchInlineSnapshot(`"“Cold” is the last scenario already."`)
    expect(refusal(moveScenario(three, 'first', 1))).toMatchInlineSnapshot(
      `"“As tested” is the baseline, which the other scenarios follow; it stays first and cannot be removed."`,
    )
  })

  test('to and fro a thousand times keeps the places apart', () => {
    let book = edited(three, addScenario(three, 'Third'))
    for (let time = 0; time < 1_000; time++) book = done(book, moveScenario(book, 'warm', time % 2 === 0 ? 1 : -1))
    expect(names(book)).toEqual(['As tested', 'Warm', 'Cold', 'Third'])
    expect(Math.max(...inOrder(book).map(({ order }) => order.length))).toBeLessThan(1_000)
  })
})

describe('samples', () => {
  test('come with a scenario each, as one step', () => {
    const edit = addSamples(three, [sample('one', {}), { ...sample('two', {}), name: 'Sample one' }])
    const book = edited(three, edit)
    expect(names(book)).toEqual(['As tested', 'Warm', 'Cold', 'Sample one', 'Sample one 2'])
    expect(inOrder(book).map(({ sample: tied }) => tied)).toEqual([null, null, null, 'one', 'two'])
  })

  test('a thousand at once', () => {
    const many = Array.from({ length: 990 }, (_, at) => sample(`s${at}`, { ph: number(7) }))
    expect(inOrder(edited(three, addSamples(three, many)))).toHaveLength(993)
  })

  test('leave their scenarios when they are removed', () => {
    const book = edited(three, addSamples(three, [sample('one', {})]))
    const now = edited(book, removeSample(book, 'one'))
    expect(now.samples).toEqual({})
    expect(inOrder(now).at(-1)?.sample).toBeNull()
  })
})

describe('notebooks', () => {
  test('a new one has its baseline and nothing else', () => {
    const book = newNotebook('Pool', 'As tested', 'us')
    expect(names(book)).toEqual(['As tested'])
    expect(book.cells).toEqual({})
  })

  test('a copy has an id of its own and the same content', () => {
    expect({ ...copyNotebook(three, 'Copy'), id: three.id, name: three.name }).toEqual(three)
    expect(copyNotebook(three, 'Copy').id).not.toBe(three.id)
  })

  test('edits put together are one step, flat', () => {
    const one = cell('first', 'ph', null)
    expect(together(together(one, one), one)).toEqual({ type: 'together', edits: [one, one, one] })
    expect(together(one)).toBe(one)
  })
})
