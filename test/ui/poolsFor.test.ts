import { describe, expect, test } from 'vitest'
import { createFinder } from '../../src/storage/finder'
import { folded } from '../../src/storage/folded'
import { poolsFor } from '../../src/ui/desk/poolsFor'

const pool = (name: string, place: string, note = '') => ({ name, place, words: folded(`${name} ${place} ${note}`) })
const POOLS = [
  pool('Smith', '12 Alder Lane'),
  pool('Muñoz (heated)', '4 Elm Court'),
  pool('Example', '', 'cyanurate or bromine'),
  pool('Ruth Smithson', '9 Birch Way'),
]
const at = (typed: string) => poolsFor(typed, POOLS, createFinder(POOLS))
/** What Enter opens; undefined for a new pool. */
const opens = (typed: string) => {
  const { found, taken } = at(typed)
  return found[taken]?.name
}

describe('what Enter takes after a name typed at the desk', () => {
  test.each(['Smyth', 'Brom', 'Mith', 'Smitt', 'Alter', 'Smith Alder', 'Zed'])('%s is a new customer', (typed) => {
    expect(opens(typed)).toBeUndefined()
  })

  test.each([
    ['Smith', 'Smith'],
    ['smi', 'Smith'],
    ['SMITHS', 'Ruth Smithson'],
    ['munoz', 'Muñoz (heated)'],
    ['heat', 'Muñoz (heated)'],
    ['elm c', 'Muñoz (heated)'],
    ['12', 'Smith'],
    [' ruth  smi', 'Ruth Smithson'],
  ])('%s calls %s', (typed, name) => {
    expect(opens(typed)).toBe(name)
  })

  test('those that are only like it stay listed, to be chosen by hand', () => {
    expect(at('Smyth').found.map(({ name }) => name)).toContain('Smith')
    expect(at('Brom').found.map(({ name }) => name)).toEqual(['Example'])
  })

  test('a pool that is called so is offered before those whose note has the word', () => {
    const many = [...Array.from({ length: 9 }, (_, i) => pool(`Pool ${i}`, '', 'elm')), pool('Zoe', '3 Elm Court')]
    const { found, taken } = poolsFor('elm', many, createFinder(many))
    expect([found.length, found[taken]?.name]).toEqual([6, 'Zoe'])
  })

  test('nothing typed offers nothing', () => {
    expect(at(' ')).toEqual({ found: [], taken: 0 })
  })
})
