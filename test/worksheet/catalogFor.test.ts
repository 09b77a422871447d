import { expect, test } from 'vitest'
import { sentence } from '../../src/words/say'
import { catalogFor, catalogWith } from '../../src/worksheet/catalogFor'
import { missingNames } from '../../src/worksheet/missingNames'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { computed, definition, input } from './definitions'

const good = definition('mine', [computed('my_lsi', 'ph - ph_saturation')], { takes: ['ph', 'ph_saturation'] })

test('without own worksheets it is the shipped catalog', () => {
  expect(catalogFor({})).toBe(shippedCatalog())
})

test('own worksheets come after the shipped ones', () => {
  const catalog = catalogFor({ mine: good })
  expect(catalog.worksheets.map(({ id }) => id)).toEqual([...shippedCatalog().worksheets.map(({ id }) => id), 'mine'])
  expect(catalog.quantities.get('my_lsi')?.reads).toEqual(['ph', 'ph_saturation'])
})

test('one that is refused is left out, with those that need it, and the others stay', () => {
  const bad = definition('bad', [input('ph'), input('x')])
  const needing = definition('needing', [computed('y', 'x')], { takes: ['x'] })
  const { catalog, refused } = catalogWith({ bad, mine: good, needing, broken: { format: 'other' } })
  expect(catalog.quantities.has('my_lsi')).toBe(true)
  expect(['x', 'y'].filter((name) => catalog.quantities.has(name))).toEqual([])
  expect(new Set(refused.map(({ path }) => path[0]))).toEqual(new Set(['bad', 'needing', 'broken']))
  expect(refused.map(sentence)).toContain(
    'bad, groups[0].rows[0].name: “ph” comes with the app, in sample.json, and cannot be replaced; use another name, such as my_ph.',
  )
})

test('the deepest graph that is accepted is walked without overflow', () => {
  const sum = (name: string) =>
    `MAX(${'ABS('.repeat(30)}${[name, ...Array(200).fill('1')].join('+')}${')'.repeat(30)}; 1)`
  const rows = Array.from({ length: 190 }, (_, i) => computed(`r${i}`, sum(i === 0 ? 'ph' : `r${i - 1}`)))
  const catalog = catalogFor({ mine: definition('mine', rows, { takes: ['ph'] }) })
  expect(missingNames(catalog, 'r189', () => ({ waits: '' }))).toEqual(['ph'])
})
