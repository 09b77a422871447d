import { describe, expect, test } from 'vitest'
import { readUnit } from '../../src/units/readUnit'
import { UNITS } from '../../src/units/unit'

describe('the day in a unit', () => {
  // a reader of another language sees its UCUM letter, and must be able to type it
  test.each(UNITS.filter(({ symbol }) => /\bday$/.test(symbol)))(
    '$code is read with d in its place',
    ({ code, symbol }) => {
      expect(readUnit(symbol.replace(/\bday$/, 'd'), code, { profile: 'metric' })).toBe(code)
    },
  )
})
