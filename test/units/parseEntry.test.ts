import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { convert } from '../../src/units/convert'
import { type Entry, type EntryContext, parseEntry } from '../../src/units/parseEntry'
import { reopen } from '../../src/units/reopen'
import { UNITS, unitsOfKind } from '../../src/units/unit'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'

const METRIC: EntryContext = { profile: 'metric' }
const US: EntryContext = { profile: 'us' }
const SEED = { seed: 20260714 }

function read(text: string, canonical: string, context: EntryContext): Entry {
  const entry = parseEntry(text, canonical, context)
  if (entry === null || entry === 'not_taken' || isProblem(entry)) throw new Error(JSON.stringify(entry))
  return entry
}

describe('what a person types', () => {
  // Expected values by hand from the exact definitions of NIST SP 811, appendix B.
  test.each<[string, string, EntryContext, string, number]>([
    ['7.6', 'pH', METRIC, 'pH', 7.6],
    ['7,6', 'pH', { ...METRIC, decimal: ',' }, 'pH', 7.6],
    ['59 °F', '°C', METRIC, '°F', 15],
    ['59F', '°C', METRIC, '°F', 15],
    ['59 ºF', '°C', METRIC, '°F', 15],
    ['59', '°C', US, '°F', 15],
    ['59', '°C', METRIC, '°C', 59],
    ['59', '°C', { ...METRIC, displayed: '°F' }, '°F', 15],
    ['15000 gal', 'm³', US, 'US gal', 56.78117676],
    ['15,000 gal', 'm³', US, 'US gal', 56.78117676],
    ['15\u202f000 US gal', 'm³', METRIC, 'US gal', 56.78117676],
    ['56,8', 'm³', { ...METRIC, decimal: ',' }, 'm³', 56.8],
    ['1.250,5 mg/l', 'mg/L', { ...METRIC, decimal: ',' }, 'mg/L', 1250.5],
    ["1'250 mg/l", 'mg/L', METRIC, 'mg/L', 1250],
    ['40 lb', 'kg', METRIC, 'lb', 18.1436948],
    ['2 lb 3 oz wt', 'kg', METRIC, 'lb', 0.992233309375],
    ['2 lb 3 oz', 'kg', US, 'lb', 0.992233309375],
    ['5 ft 6 in', 'm', METRIC, 'ft', 1.6764],
    ['5\'6"', 'm', METRIC, 'ft', 1.6764],
    ['5 ft 6 1/2 in', 'm', METRIC, 'ft', 1.6891],
    ['-5 ft 6 in', 'm', METRIC, 'ft', -1.6764],
    ['5½ ft', 'm', METRIC, 'ft', 1.6764],
    ['1/2 lb', 'kg', METRIC, 'lb', 0.226796185],
    ['-0.3', '1', METRIC, '1', -0.3],
    ['−0.3', '1', METRIC, '1', -0.3],
    ['+.5', '1', METRIC, '1', 0.5],
    ['1.2e3', 'mg/L as NaCl', METRIC, 'mg/L as NaCl', 1200],
    ['90 ppm', 'mg/L as CaCO3', METRIC, 'ppm as CaCO3', 90],
    ['3.2 g/L', 'mg/L as NaCl', METRIC, 'g/L as NaCl', 3200],
    ['50 ppb', 'mg/L', METRIC, 'µg/L', 0.05],
    ['1/3', '1', METRIC, '1', 1 / 3],
    ['1/3', '1', { ...METRIC, displayed: '%' }, '1', 1 / 3],
    ['33 %', '1', METRIC, '%', 0.33],
    ['33', '1', { ...METRIC, displayed: '%' }, '%', 0.33],
    ['84 [degF]', '°C', METRIC, '°F', 28.88888888888889],
    ['28 Cel', '°C', US, '°C', 28],
    ['6.05 mS/cm', 'µS/cm', METRIC, 'mS/cm', 6050],
    ['6050 µS/cm (25 °C)', 'µS/cm', METRIC, 'µS/cm', 6050],
    ['8 h', 'h/day', METRIC, 'h/day', 8],
    ['15 gpm', 'm³/h', US, 'US gal/min', 3.4068706056],
    ['420 ppm', 'ppm (air)', METRIC, 'ppm (air)', 420],
    ['3 weeks', 'day', METRIC, 'week', 21],
  ])('"%s" for a quantity in %s (%o) is read in %s', (text, canonical, context, unit, want) => {
    const entry = read(text, canonical, context)
    expect(entry.unit).toBe(unit)
    expect(entry.canonical).toBeCloseTo(want, 10)
  })

  // Hardness and alkalinity: factors of the definitions, as in convert.test.ts.
  test.each<[string, string, string | undefined, string, number]>([
    ['14.8 °dH', 'mg/L as CaCO3', undefined, '°dH', 14.8 * 17.848],
    ['12 °f', 'mg/L as CaCO3', undefined, '°fH', 120],
    ['1.9 meq/L', 'mg/L as CaCO3', undefined, 'meq/L', 1.9 * 50.0435],
    ['1.9 mmol/L', 'mg/L as CaCO3', 'total_alkalinity', 'mmol/L as HCO3', 1.9 * 50.0435],
    ['1.9 mmol/L', 'mg/L as CaCO3', 'fill_calcium_hardness', 'mmol/L as Ca', 1.9 * 100.087],
    ['1.9 mmol/L', 'mg/L as CaCO3', 'total_hardness', 'mmol/L as CaCO3', 1.9 * 100.087],
    ['120 mg/L as Ca', 'mg/L as CaCO3', 'calcium_hardness', 'mg/L as Ca', 120 * 2.4973],
    ['120 mg Ca/L', 'mg/L as CaCO3', 'calcium_hardness', 'mg/L as Ca', 120 * 2.4973],
    ['120 ppm (as CaCO₃)', 'mg/L as CaCO3', undefined, 'ppm as CaCO3', 120],
    ['0.3 mg/L NH4', 'mg/L as N', 'ammonia', 'mg/L as NH4', 0.3 / 1.28785],
    ['0.3 mg/L NH4-N', 'mg/L as N', 'ammonia', 'mg/L as N', 0.3],
    ['20 mg/L Cl-', 'mg/L', 'chloride', 'mg/L as Cl', 20],
    ['20 mg/L as CaCO3', 'mg/L', 'magnesium', 'mg/L as CaCO3', 20 / 4.11796],
  ])('"%s" (%s, %s) is read in %s', (text, canonical, quantity, unit, want) => {
    const entry = read(text, canonical, quantity === undefined ? METRIC : { ...METRIC, quantity })
    expect(entry.unit).toBe(unit)
    expect(Math.abs(entry.canonical / want - 1)).toBeLessThan(3e-5)
  })

  test.each(['', '   ', '\u00a0'])('"%s" is nothing typed', (text) => {
    expect(parseEntry(text, 'pH', METRIC)).toBeNull()
  })

  test.each(['-', '−', '–', ' - '])('"%s" is a reading not taken', (text) => {
    expect(parseEntry(text, 'pH', METRIC)).toBe('not_taken')
  })

  test('the figures are kept, so that a reading keeps its resolution', () => {
    expect(read('7.60', 'pH', METRIC).entered).toBe('7.60')
    expect(read('15,000 gal', 'm³', US).entered).toBe('15000')
  })
})

describe('refusals', () => {
  test.each<[string, string, EntryContext, string]>([
    ['7,6', 'pH', METRIC, '“7,6” is not a number here; the decimal mark is “.”.'],
    ['7.6', 'pH', { ...METRIC, decimal: ',' }, '“7.6” is not a number here; the decimal mark is “,”.'],
    ['0,250', 'mg/L', METRIC, '“0,250” is not a number here; the decimal mark is “.”.'],
    ['15,00', 'mg/L', METRIC, '“15,00” is not a number here; the decimal mark is “.”.'],
    ['15,0000', 'mg/L', METRIC, '“15,0000” is not a number here; the decimal mark is “.”.'],
    ['1,000 000', 'mg/L', METRIC, '“1,000 000” is not a number here; the decimal mark is “.”.'],
    ['7.4.2', 'pH', METRIC, '“7.4.2” is not a number here; the decimal mark is “.”.'],
    ['abc', 'pH', METRIC, '“abc” is not a number here; the decimal mark is “.”.'],
    ['7/8', 'pH', METRIC, '“/8” is not a unit we know here; use for example pH.'],
    ['1/0', '1', METRIC, '“/0” is not a unit we know here; use for example 1.'],
    ['7 6', 'pH', METRIC, '“7 6” is not a number here; the decimal mark is “.”.'],
    ['１２', 'pH', METRIC, '“１２” is not a number here; the decimal mark is “.”.'],
    ['10³', 'mg/L', METRIC, '“³” is not a unit we know here; use for example mg/L, ppm.'],
    ['<0.2', 'mg/L', METRIC, '“<0.2” is a limit, not a reading. Here a number is wanted, or “-” where there is none.'],
    ['1e999', 'mg/L', METRIC, '“1e999” is beyond what can be computed.'],
    ['15000 gal', 'm³', METRIC, '“gal” can mean US gal, imp gal. Type the one that is meant.'],
    ['8 oz', 'L', US, '“oz” can mean US fl oz, imp fl oz, oz wt. Type the one that is meant.'],
    ['8 oz', 'kg', US, '“oz” can mean US fl oz, imp fl oz, oz wt. Type the one that is meant.'],
    ['3 ppt', 'mg/L', US, '“ppt” can mean g/L, ng/L. Type the one that is meant.'],
    ['9 grains', 'mg/L as CaCO3', US, '“grains” can mean gpg, °e. Type the one that is meant.'],
    ['1 ton', 'kg', US, '“ton” can mean t, US ton, imp ton. Type the one that is meant.'],
    [
      '2 mmol/L',
      'mg/L as CaCO3',
      METRIC,
      '“mmol/L” can mean mmol/L as CaCO3, mmol/L as HCO3. Type the one that is meant.',
    ],
    ['7 ft', 'm³', METRIC, '“ft” is a unit of length; here a unit of volume is wanted, such as m³.'],
    [
      '84 °F',
      'mg/L as CaCO3',
      METRIC,
      '“°F” is a unit of temperature; here a unit of concentration is wanted, such as mg/L as CaCO3.',
    ],
    ['5 gal', '°C', US, '“gal” is a unit of volume; here a unit of temperature is wanted, such as °C.'],
    ['90 furlongs', 'm', METRIC, '“furlongs” is not a unit we know here; use for example m, ft.'],
    ['9 constructor', 'm', METRIC, '“constructor” is not a unit we know here; use for example m, ft.'],
    [
      '9 mg/L as constructor',
      'mg/L',
      METRIC,
      '“mg/L as constructor” is not a unit we know here; use for example mg/L, ppm.',
    ],
    ['120 mg/L as Ca', 'mg/L as CaCO3', METRIC, '“mg/L as Ca” counts another substance; here mg/L as CaCO3 is wanted.'],
    [
      '120 mg/L as Mg',
      'mg/L as CaCO3',
      { ...METRIC, quantity: 'calcium_hardness' },
      '“mg/L as Mg” counts another substance; here mg/L as CaCO3 is wanted.',
    ],
    [
      '1900 mg/L as Cl',
      'mg/L as NaCl',
      { ...METRIC, quantity: 'salt' },
      '“mg/L as Cl” counts another substance; here mg/L as NaCl is wanted.',
    ],
    ['5 ft 14 in', 'm', METRIC, '“5 ft 14 in” is not one amount. Type a whole number of ft and a smaller rest in in.'],
    [
      '5.5 ft 6 in',
      'm',
      METRIC,
      '“5.5 ft 6 in” is not one amount. Type a whole number of ft and a smaller rest in in.',
    ],
    ['5 °C 1 °F', '°C', METRIC, '“5 °C 1 °F” is not one amount. Type a whole number of °C and a smaller rest in °F.'],
    ['x'.repeat(101), 'm', METRIC, '“xxxxxxxxxxxxxxxxxxxx…” is too long; an entry has at most 100 characters.'],
    ['plaster', 'choice', METRIC, '“choice” is not a unit we know.'],
  ])('"%s" for a quantity in %s', (text, canonical, context, said) => {
    const entry = parseEntry(text, canonical, context)
    expect(isProblem(entry) ? sentence(entry) : entry).toBe(said)
  })
})

describe('laws', () => {
  const context = fc.record({
    profile: fc.constantFrom<'metric' | 'us'>('metric', 'us'),
    decimal: fc.constantFrom<'.' | ','>('.', ','),
    quantity: fc.constantFrom('calcium_hardness', 'total_alkalinity', 'magnesium', 'ammonia', 'ph'),
  })
  const canonical = fc.constantFrom(...UNITS.map((u) => u.code))
  const scraps = fc.constantFrom(
    ...'0 1 7.6 , . - − e3 1/3 ½ ppm gal oz °F \' " ft in lb mg/L as CaCO3 ( ) ^ ³ µ NaN Infinity __proto__ toString'.split(
      ' ',
    ),
    ' ',
    '\u00a0',
    '\n',
  )

  test('any text gives an entry with a finite number, a problem with a sentence, or one of the two signals', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(scraps, { maxLength: 9 }).map((parts) => parts.join('')),
    )
    fc.assert(
      fc.property(text, canonical, context, (typed, code, how) => {
        const entry = parseEntry(typed, code, how)
        if (entry === null || entry === 'not_taken') return
        if (isProblem(entry)) expect(sentence(entry)).toMatch(/\.$/)
        else expect(Number.isFinite(entry.canonical)).toBe(true)
      }),
      { ...SEED, numRuns: 5_000 },
    )
  })

  test('an entry opened again is the same entry, whatever the row shows by then', () => {
    const shown = canonical
      .filter((code) => code !== 'choice')
      .chain((code) => {
        const codes = unitsOfKind(code).map((u) => u.code)
        return fc.tuple(fc.constant(code), fc.constantFrom(...codes), fc.constantFrom(...codes))
      })
    const figures = fc.oneof(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }).map(String),
      fc.constantFrom('7.60', '15000', '0', '-0.3', '1/3', '5 1/2'),
    )
    fc.assert(
      fc.property(shown, figures, context, ([code, then, now], typed, how) => {
        const first = parseEntry(typed.replace('.', how.decimal), code, { ...how, displayed: then })
        if (first === null || first === 'not_taken' || isProblem(first)) return
        const again = read(reopen(first, now, how.decimal), code, { ...how, displayed: now })
        expect(Math.abs(again.canonical - first.canonical)).toBeLessThanOrEqual(1e-12 * Math.abs(first.canonical))
        if (first.unit !== '1') expect({ ...again }).toEqual(first)
      }),
      { ...SEED, numRuns: 2_000 },
    )
  })

  test.each([
    ['5 ft 6 in', 'm'],
    ['2 lb 3.5 oz wt', 'kg'],
    ['-1 h 30 min', 'h'],
    ['3/day', '1/day'],
  ])('"%s" opened again is the same entry', (text, code) => {
    const first = read(text, code, METRIC)
    for (const { code: now } of unitsOfKind(code)) {
      expect(read(reopen(first, now, ','), code, { ...METRIC, decimal: ',', displayed: now })).toEqual(first)
    }
  })

  test('a value that is typed in any unit of its kind converts as that unit does', () => {
    for (const u of UNITS.filter((candidate) => candidate.dimension !== 'choice' && candidate.code !== '1')) {
      const text = u.code.startsWith('1/') ? `8 ${u.code.slice(1)}` : `8 ${u.code}`
      const target = unitsOfKind(u.code)[0]?.code ?? u.code
      expect([u.code, read(text, target, US).canonical]).toEqual([u.code, convert(8, u.code, target)])
    }
  })
})

test('a fraction of one per cent opens again as that, and not as the fraction', () => {
  const context = { profile: 'metric', decimal: '.', displayed: '%' } as const
  const entry = parseEntry('1/8 %', '1', context)
  expect(entry).toMatchObject({ canonical: 0.00125 })
  expect(parseEntry(reopen(entry as never, '%', '.'), '1', context)).toEqual(entry)
})
