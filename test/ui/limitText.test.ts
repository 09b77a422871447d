import { afterEach, expect, test } from 'vitest'
import { limitText } from '../../src/ui/grid/limitText'
import { setLocale } from '../../src/words/locale'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const row = (name: string) => {
  const found = shippedCatalog().quantities.get(name)?.row
  if (!found) throw new Error(name)
  return found
}
const limit = (entered: string, unit: string, canonical: number, side: 'below' | 'above' = 'below') =>
  ({ kind: 'limit', side, entered, unit, canonical }) as const

afterEach(() => setLocale({ language: 'en', tag: 'en', decimal: '.' }))

// phosphate, copper and free chlorine are shown with fewer decimals than laboratories report limits with
test.each([
  ['0.05', 0.05, '< 0.05'],
  ['<0.05', 0.05, '< 0.05'],
  ['0.20', 0.2, '< 0.20'],
  ['5', 5, '< 5'],
  ['12000', 12_000, '< 12,000'],
])('a limit is shown as it was written: %s', (entered, canonical, text) => {
  const chlorine = row('free_chlorine')
  expect(limitText(limit(entered, chlorine.unit, canonical), chlorine, chlorine.unit)).toBe(text)
})

test('a limit in another unit keeps figures enough to be the same limit', () => {
  const temperature = row('temperature')
  expect(limitText(limit('99', '°F', 37.2222222222, 'above'), temperature, '°C')).toBe('> 37.2')
  const salt = row('salt')
  expect(limitText(limit('50', 'mg/L as NaCl', 50), salt, 'g/L as NaCl')).toBe('< 0.05')
  expect(limitText(limit('3.25', 'g/L as NaCl', 3250), salt, 'mg/L as NaCl')).toBe('< 3250')
})

test('a fraction is shown with the figures that it has', () => {
  const chlorine = row('free_chlorine')
  expect(limitText(limit('1/4', chlorine.unit, 0.25), chlorine, chlorine.unit)).toBe('< 0.25')
})

test('with the reader’s decimal mark', () => {
  setLocale({ language: 'es', tag: 'es', decimal: ',' })
  const chlorine = row('free_chlorine')
  expect(limitText(limit('0.05', chlorine.unit, 0.05), chlorine, chlorine.unit)).toBe('< 0,05')
})
