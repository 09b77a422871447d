import { afterEach, describe, expect, test } from 'vitest'
import { figures } from '../../src/ui/grid/figures'
import { formatValue } from '../../src/units/format'
import { parseEntry } from '../../src/units/parseEntry'
import { reopen } from '../../src/units/reopen'
import { type Locale, locale, localeFor, setLocale } from '../../src/words/locale'
import { numberText, timeText } from '../../src/words/written'

const ENGLISH = locale()
const NOTHING = { language: null, decimal: null }
afterEach(() => setLocale(ENGLISH))

describe('a reader', () => {
  test.each<[what: string, preferred: string[], chosen: Parameters<typeof localeFor>[1], expected: Partial<Locale>]>([
    ['in the United States', ['en-US', 'en'], NOTHING, { language: 'en', tag: 'en-US', decimal: '.' }],
    ['in Berlin, whose language we do not have', ['de-DE', 'en'], NOTHING, { language: 'en', decimal: ',' }],
    ['in Berlin who chose the point', ['de-DE'], { language: null, decimal: '.' }, { language: 'en', decimal: '.' }],
    ['in Mexico', ['es-MX'], NOTHING, { language: 'es', tag: 'es-MX', decimal: '.' }],
    ['in Spain', ['es-ES', 'en'], NOTHING, { language: 'es', tag: 'es-ES', decimal: ',' }],
    ['in Spain who chose English', ['es-ES'], { language: 'en', decimal: null }, { language: 'en', decimal: ',' }],
    ['whose browser says nothing', [], NOTHING, { language: 'en', tag: 'en', decimal: '.' }],
    ['whose browser says nonsense', ['x_y', '!'], NOTHING, { language: 'en', tag: 'en', decimal: '.' }],
  ])('%s', (_, preferred, chosen, expected) => {
    expect(localeFor(preferred, chosen)).toMatchObject(expected)
  })
})

describe('with a decimal comma', () => {
  const comma = () => setLocale(localeFor(['de-DE'], NOTHING))

  test('what is shown is read back, and opens in the editor as it was typed', () => {
    comma()
    const entry = parseEntry('7,65', 'pH', { profile: 'metric' })
    expect(entry).toEqual({ entered: '7.65', unit: 'pH', canonical: 7.65 })
    expect(reopen({ entered: '7.65', unit: 'pH' }, 'pH')).toBe('7,65')
    expect(formatValue(56_780.5, 'm³', 'm³', 1)).toBe('56.780,5')
    expect(parseEntry('56.780,5', 'm³', { profile: 'metric' })).toMatchObject({ canonical: 56_780.5 })
    expect(figures('56.780,5')).toEqual({ whole: '56.780', fraction: ',5' })
    expect(parseEntry('7.65', 'pH', { profile: 'metric' })).toMatchObject({ code: 'unreadable_number' })
  })

  test('numbers and days inside sentences follow', () => {
    comma()
    expect(numberText(-1.5)).toBe('−1,5')
    expect(timeText('2026-07-14T09:30', 'day')).toMatch(/14.*2026/)
    expect(timeText('not a day')).toBe('not a day')
  })
})
