import { expect, test } from 'vitest'
import { nameFault } from '../../src/ui/rows/nameFault'
import { nameFrom } from '../../src/ui/rows/rowDraft'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const catalog = shippedCatalog()
const fault = (label: string, name = nameFrom(label), own?: string) => nameFault({ label, name }, catalog, own)?.code

test('a name that can stand has no fault, nor has a form in which nothing is written', () => {
  expect(fault('')).toBeUndefined()
  expect(fault('My dose, kg')).toBeUndefined()
  // its own name until now
  expect(fault('Volume', 'volume', 'volume')).toBeUndefined()
})

test.each([
  ['Volume', 'row_name_taken'],
  // what a solve fills is named so in formulas
  ['Water', 'row_name_taken'],
  ['If', 'name_is_function'],
  ['Salt mass for rise', undefined],
  ['LSI saturation', undefined],
  ['Baseline', 'name_reserved'],
  ['True', 'name_reserved'],
  ['100 %', 'rows_name'],
])('what the label %s makes: %s', (label, code) => {
  expect(fault(label)).toBe(code)
})

test('a name that is written by itself is held to the same', () => {
  expect(fault('', 'Two words')).toBe('rows_name')
  expect(fault('', 'sum')).toBe('name_is_function')
})
