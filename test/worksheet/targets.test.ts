import { describe, expect, test } from 'vitest'
import { sentence } from '../../src/words/say'
import { bandFor, conditionsOf } from '../../src/worksheet/bandFor'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Definition } from '../../src/worksheet/definition'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { choice, definition, input, own } from './definitions'

const band = (quantity: string, values: Record<string, string | number>) => {
  const row = shippedCatalog().quantities.get(quantity)?.row
  if (!row) throw new Error(quantity)
  expect(conditionsOf(row)).toContain('target_set')
  const { low, high } = bandFor(row, values) ?? {}
  return [low, high]
}

describe('a set of ranges that is chosen', () => {
  // each as its code has it
  test('goes before the row’s own', () => {
    expect(band('ph', {})).toEqual([7.2, 7.8])
    expect(band('ph', { target_set: 'us_new_york' })).toEqual([7.4, 7.8])
    expect(band('ph', { target_set: 'fr_2021' })).toEqual([6.9, 7.7])
    expect(band('free_chlorine', { target_set: 'de_din_19643', water_body: 'pool' })).toEqual([0.3, 0.6])
    expect(band('free_chlorine', { target_set: 'de_din_19643', water_body: 'spa' })).toEqual([0.7, 1])
    expect(band('free_chlorine', { target_set: 'who_2006', water_body: 'spa' })).toEqual([2, 5])
  })

  test('goes by setting, stabilizer and pH where the code does (New South Wales: 3, and 1 more over pH 7.6)', () => {
    const outdoor = { target_set: 'au_new_south_wales', setting: 'outdoor' }
    expect(band('free_chlorine', { ...outdoor, cyanuric_acid: 0, ph: 7.4 })).toEqual([1, undefined])
    expect(band('free_chlorine', { ...outdoor, cyanuric_acid: 30, ph: 7.4 })).toEqual([3, undefined])
    expect(band('free_chlorine', { ...outdoor, cyanuric_acid: 30, ph: 7.7 })).toEqual([4, undefined])
  })

  test('limits active chlorine in France, where there is next to no stabilizer', () => {
    expect(band('hocl', { target_set: 'fr_2021', cyanuric_acid: 5 })).toEqual([0.4, 1.4])
    expect(band('hocl', { target_set: 'fr_2021', cyanuric_acid: 30 })).toEqual([undefined, undefined])
  })

  test('leaves the shell its own: a vinyl wall has no calcium to lose', () => {
    expect(band('calcium_hardness', { target_set: 'who_2006', shell: 'vinyl' })).toEqual([150, undefined])
    expect(band('calcium_hardness', { target_set: 'us_apsp_11', shell: 'vinyl' })).toEqual([150, 1000])
  })
})

describe('a reader’s own set', () => {
  const pool = definition('home', [
    choice('target_set', ['one', 'two']),
    input('reading', { target: [{ low: 1, source: 'own row' }], range: [0, 9] }),
  ])
  const set = (id: string, bands: NonNullable<Definition['targets']>[number]['bands']) => ({
    id,
    source: 'by hand',
    bands,
  })
  const built = (...targets: NonNullable<Definition['targets']>) => {
    const catalog = buildCatalog([own({ ...pool, targets })], [])
    return isCatalog(catalog) ? catalog : catalog.map(sentence)
  }

  test('is one more choice, with its source', () => {
    const catalog = built(set('mine', { reading: [{ low: 3 }] }))
    if (Array.isArray(catalog)) throw new Error(catalog.join('\n'))
    const rowOf = (name: string) => catalog.quantities.get(name)?.row
    expect(rowOf('target_set')).toMatchObject({ choices: ['one', 'two', 'mine'] })
    const reading = rowOf('reading')
    expect(reading && bandFor(reading, { target_set: 'mine' })).toMatchObject({ low: 3, source: 'by hand' })
    expect(reading && bandFor(reading, { target_set: 'one' })).toMatchObject({ low: 1 })
  })

  test('is refused with a place and a reason', () => {
    expect(built(set('mine', { nothing: [{ low: 3 }] }), set('mine', { reading: [{ low: 3, high: 2 }] }))).toEqual([
      'home.json, targets[0].bands.nothing: there is no quantity “nothing”.',
      'home.json, targets[1].id: “mine” is there already, in home.json; a name means one quantity in all worksheets.',
      'home.json, targets[1].bands.reading[0]: the low end, 3, is not under the high end, 2.',
    ])
  })
})
