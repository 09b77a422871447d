import { describe, expect, test } from 'vitest'
import { isProblem } from '../../src/words/problem'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import { missingNames, type Standing } from '../../src/worksheet/missingNames'
import { parseFormula } from '../../src/worksheet/parse'
import { choice, computed, definition, input, own, registry } from './definitions'

const sheet = definition(
  'mine',
  [
    ...['a', 'b', 'c', 'd'].map((name) => input(name)),
    choice('kind', ['x', 'y']),
    computed('total', 'a + b * (-c)%'),
    computed('deep', 'total + d'),
    computed('either', 'DEFAULT(a; b)'),
    computed('any', 'DEFAULT(a; DEFAULT(b; c + d))'),
    computed('is_missing', 'IF(MISSING(a); 1; 2)'),
    computed('chosen', 'IF(a > 1; b; c)'),
    computed('locked', 'TWICE(a; b)'),
    computed('solved', 'pair.sum + d'),
    computed('other', 'baseline.a + b'),
    computed('stand_in', 'a', { when_missing: { of: 'a', value: 0, source: 's' } }),
    computed('after', 'stand_in + b'),
  ],
  { solves: [{ id: 'pair', function: 'BOTH', inputs: { x: 'a', y: 'b' } }] },
)
const catalog = buildCatalog([own(sheet)], registry)
if (!isCatalog(catalog)) throw new Error('the catalog of this test is wrong')

/** What a quantity waits for when these have no value, and all else that is computed stands as given. */
function waits(quantity: string, missing: string, more: Readonly<Record<string, Standing>> = {}): readonly string[] {
  if (!isCatalog(catalog)) return []
  const names = missing.split(' ')
  return missingNames(catalog, quantity, (name) => more[name] ?? (names.includes(name) ? { waits: '' } : 'value'))
}

describe('names every reading that is waited for', () => {
  test('through operators and other rows, in the order of the formula', () => {
    expect(waits('total', 'total a b c')).toEqual(['a', 'b', 'c'])
    expect(waits('deep', 'deep total c d')).toEqual(['c', 'd'])
  })

  test('an input waits for itself', () => {
    expect(waits('a', 'a')).toEqual(['a'])
  })

  test('not through a row that has a value, nor one that was refused', () => {
    expect(waits('deep', 'deep a b c d')).toEqual(['d'])
    expect(waits('deep', 'deep a b c d', { total: 'refused' })).toEqual(['d'])
    expect(waits('total', 'a b c')).toEqual([])
  })

  test('through a locked function and a solve, but for what they can do without', () => {
    expect(waits('locked', 'locked a b')).toEqual(['a'])
    expect(waits('solved', 'solved a b d')).toEqual(['a', 'd'])
  })

  test('what a function asks for although it can mostly do without', () => {
    expect(waits('locked', 'b', { locked: { waits: 'b' } })).toEqual(['b'])
    expect(waits('locked', 'deep d', { locked: { waits: 'deep' } })).toEqual(['d'])
  })

  test('past a declared default, which has a value', () => {
    expect(waits('after', 'after a b')).toEqual(['b'])
  })

  test('not in another scenario', () => {
    expect(waits('other', 'other a b')).toEqual(['b'])
  })

  test('of the formula that was entered in a cell', () => {
    const formula = parseFormula('= c * d')
    const tree = isProblem(formula) ? undefined : formula.tree
    expect(waits('b', 'c d', { b: { waits: '', ...(tree ? { tree } : {}) } })).toEqual(['c', 'd'])
  })
})

describe('alternatives', () => {
  test('are joined', () => {
    expect(waits('either', 'either a b')).toEqual(['a|b'])
    expect(waits('any', 'any a b c d')).toEqual(['a|b|c'])
    expect(waits('any', 'any a b d')).toEqual(['a|b|d'])
  })

  test('are none where one of them has a value', () => {
    expect(waits('either', 'either a')).toEqual([])
  })

  test('MISSING waits for nothing, and IF first for what decides', () => {
    expect(waits('is_missing', 'is_missing a')).toEqual([])
    expect(waits('chosen', 'chosen a b c')).toEqual(['a'])
    expect(waits('chosen', 'chosen c')).toEqual(['c'])
  })
})
