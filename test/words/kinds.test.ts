import { afterAll, expect, test } from 'vitest'
import { convert } from '../../src/units/convert'
import { UNITS } from '../../src/units/unit'
import { en } from '../../src/words/en/catalogue'
import { es } from '../../src/words/es/catalogue'
import { isProblem } from '../../src/words/problem'
import { sentence, translate } from '../../src/words/say'

afterAll(() => translate({}))

test('every kind of unit has its word in both languages', () => {
  const keys = [...new Set(UNITS.map(({ dimension }) => `unit_kind.${dimension}`))]
  expect(keys.filter((key) => !(key in en && key in es))).toEqual([])
})

test('a Spanish sentence speaks of kinds of units in Spanish', () => {
  translate(es)
  const fault = convert(1, 'kg', '°C')
  expect(isProblem(fault) && sentence(fault)).toBe(
    '«kg» es una unidad de masa; aquí se quiere una de temperatura, como °C.',
  )
})

test('a date in Spanish follows “del”', () => {
  const dates = ['page.desk.bottle_of', 'handout.sample.date', 'handout.sample.date_age', 'trace.sample_dated']
  expect(dates.filter((key) => !/ del \{date\}/.test(es[key] ?? ''))).toEqual([])
})
