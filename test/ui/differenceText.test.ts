import { describe, expect, test } from 'vitest'
import { differences } from '../../src/notebook/differences'
import type { Edit } from '../../src/notebook/edit'
import { differenceText } from '../../src/ui/keeping/differenceText'
import { hasWords } from '../../src/words/say'
import { cell, EMPTY, edited, number, sample, scenario } from '../notebook/samples'

const said = (...edits: Edit[]): string[] => {
  const after = edited(EMPTY, ...edits)
  return differences(EMPTY, after).map((one) => differenceText(one, EMPTY, after))
}

describe('what was changed, in words', () => {
  test('names what a reader knows: quantity and scenario, sample, the name before', () => {
    expect(said(cell('first', 'ph', number(7.4)))).toEqual(['Entered: pH in “As tested”.'])
    expect(said(scenario('warm', 'a1', 'Warm'))).toEqual(['Scenario added: Warm.'])
    expect(said({ type: 'put_sample', sample: sample('one', {}) })).toEqual(['Sample added: Sample one.'])
    expect(said({ type: 'set_unit', quantity: 'temperature', unit: '°F' })).toEqual(['Unit chosen for Temperature.'])
    expect(said({ type: 'change_notebook', set: { name: 'Other' } })).toEqual(['Renamed from “Test pool”.'])
  })

  test('counts what is more than three', () => {
    const all = ['ph', 'salt', 'temperature', 'calcium_hardness', 'borate'].map((q) => cell('first', q, number(7)))
    expect(said(...all)[0]).toMatch(/ and 2 more\.$/)
  })

  test('has a sentence for every part of a notebook that is there', () => {
    const { format: _, version: __, id: ___, computedWith: ____, ...parts } = EMPTY
    for (const [part, value] of Object.entries(parts)) {
      const ways = typeof value === 'object' ? ['added', 'removed'] : ['changed']
      for (const how of ways) expect(hasWords(`keeping.${part}.${how}`), `${part} ${how}`).toBe(true)
    }
  })

  test('says that something changed where it has no sentence of its own', () => {
    expect(differenceText({ part: 'format', how: 'changed', keys: [] }, EMPTY, EMPTY)).toBe('Other parts changed.')
  })
})
