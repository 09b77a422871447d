import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BASES, MOLAR_MASS } from '../../src/units/basis'
import { convert, convertDifference } from '../../src/units/convert'
import { isUnit, sameKind, UNITS, unit, unitsOfKind } from '../../src/units/unit'
import { isProblem } from '../../src/words/problem'
import { hasWords } from '../../src/words/say'

const SEED = { seed: 20260714 }

// Standard atomic weights, IUPAC 2007 (Pure and Applied Chemistry 81, 2131).
const WEIGHT: Readonly<Record<string, number>> = {
  H: 1.00794,
  B: 10.811,
  C: 12.0107,
  N: 14.0067,
  O: 15.9994,
  Na: 22.98976928,
  Mg: 24.305,
  P: 30.973762,
  Cl: 35.453,
  Ca: 40.078,
  Br: 79.904,
}

function summed(formula: string): number {
  return [...formula.matchAll(/([A-Z][a-z]?)(\d?)/g)].reduce(
    (sum, [, element = '', count]) => sum + (WEIGHT[element] ?? Number.NaN) * Number(count || 1),
    0,
  )
}

describe('molar masses', () => {
  test.each(BASES)('%s is the sum of its atomic weights', (basis) => {
    expect(Math.abs(MOLAR_MASS[basis] - summed(basis))).toBeLessThanOrEqual(0.0006)
  })
})

describe('trade units', () => {
  // From the definitions of the degrees (10 mg CaO/L, 10 mg CaCO3/L, a grain per gallon of each nation), to the last
  // digit that tables of hardness print, one unit of it either way.
  test.each([
    ['°dH', 'mg/L as CaCO3', 17.848],
    ['°fH', 'mg/L as CaCO3', 10],
    ['°e', 'mg/L as CaCO3', 14.254],
    ['gpg', 'mg/L as CaCO3', 17.118],
    ['mmol/L as CaCO3', 'mg/L as CaCO3', 100.087],
    ['mmol/L as Ca', 'mg/L as CaCO3', 100.087],
    ['meq/L', 'mg/L as CaCO3', 50.04],
    ['mmol/L as HCO3', 'mg/L as CaCO3', 50.04],
    ['mg/L as Ca', 'mg/L as CaCO3', 2.4973],
    ['mg/L as Mg', 'mg/L as CaCO3', 4.118],
    ['mg/L as HCO3', 'mg/L as CaCO3', 0.82016],
    ['mg/L as P', 'mg/L as PO4', 3.0662],
    ['mg/L as N', 'mg/L as NH4', 1.2878],
    ['mg/L as B', 'mg/L as H3BO3', 5.7194],
    ['g/L', 'mg/L', 1000],
    ['µg/L', 'mg/L', 0.001],
    ['mS/cm', 'µS/cm', 1000],
  ])('one %s is %s %d', (from, to, want) => {
    const printed = String(want).split('.')[1]?.length ?? 0
    expect(Math.abs(Number(convert(1, from, to)) - want)).toBeLessThanOrEqual(10 ** -printed)
  })

  test('one cubic foot is 7.48 US gallons (NIST Handbook 44, appendix C)', () => {
    expect(convert(1, 'ft³', 'US gal')).toBeCloseTo(7.480519, 6)
  })

  test.each([
    [59, '°F', '°C', 15],
    [32, '°F', '°C', 0],
    [212, '°F', '°C', 100],
    [-40, '°F', '°C', -40],
    [0, 'K', '°C', -273.15],
  ])('%d %s (fixed points of the scales)', (value, from, to, want) => {
    expect(convert(value, from, to)).toBe(want)
  })

  test('a rise of 1 °C is one of 1.8 °F', () => {
    expect(convertDifference(1, '°C', '°F')).toBeCloseTo(1.8, 12)
  })
})

describe('laws', () => {
  const pair = fc
    .constantFrom(...UNITS)
    .chain((from) => fc.tuple(fc.constant(from), fc.constantFrom(...unitsOfKind(from.code))))
  const value = fc.double({ min: -1e9, max: 1e9, noNaN: true })

  test('there and back is the same value', () => {
    fc.assert(
      fc.property(pair, value, ([from, to], x) => {
        const back = convert(Number(convert(x, from.code, to.code)), to.code, from.code)
        expect(Math.abs(Number(back) - x)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(x)))
      }),
      SEED,
    )
  })

  test('a difference converts as the difference of what was converted', () => {
    fc.assert(
      fc.property(pair, value, value, ([from, to], x, y) => {
        const apart = Number(convert(x, from.code, to.code)) - Number(convert(y, from.code, to.code))
        const scale = Math.max(1, Math.abs(Number(convert(1e9, from.code, to.code))))
        expect(Math.abs(Number(convertDifference(x - y, from.code, to.code)) - apart)).toBeLessThanOrEqual(1e-9 * scale)
      }),
      SEED,
    )
  })

  test('units that add convert; units of another dimension never do', () => {
    for (const a of UNITS) {
      for (const b of UNITS) {
        const converted = convert(1, a.code, b.code)
        if (sameKind(a.code, b.code)) expect(converted).toBeTypeOf('number')
        if (a.dimension !== b.dimension) expect(converted).toMatchObject({ code: 'wrong_dimension' })
      }
    }
  })
})

describe('bases', () => {
  test('mg/L as Ca and mg/L as CaCO3 do not add, though they convert', () => {
    expect(sameKind('mg/L as Ca', 'mg/L as CaCO3')).toBe(false)
    expect(convert(40.078, 'mg/L as Ca', 'mg/L as CaCO3')).toBeCloseTo(100.087, 9)
  })

  test('°dH, meq/L and ppm of hardness are of one kind', () => {
    expect(unitsOfKind('mg/L as CaCO3').map((u) => u.code)).toEqual(
      expect.arrayContaining(['°dH', '°fH', '°e', 'gpg', 'meq/L', 'ppm as CaCO3', 'mmol/L as CaCO3']),
    )
  })

  test.each([
    ['mg/L as Ca', 'mg/L as Mg'],
    ['mg/L as Ca', 'mg/L as HCO3'],
    ['mg/L as Cl2', 'mg/L as Br2'],
    ['mg/L as Cl', 'mg/L as NaCl'],
    ['mg/L as CaCO3', 'mg/L'],
    ['mg/L', 'mg/L as N'],
  ])('%s does not convert to %s', (from, to) => {
    expect(convert(1, from, to)).toMatchObject({ code: 'wrong_basis', facts: { found: from, wanted: to } })
  })

  test('chloride is salt only where it is asked for (58.443 / 35.453)', () => {
    expect(convert(1, 'mg/L as Cl', 'mg/L as NaCl', { chlorideIsSalt: true })).toBeCloseTo(1.6485, 4)
  })
})

describe('refusals', () => {
  test.each(['furlong', '', 'constructor', '__proto__'])('"%s" is not a unit', (code) => {
    expect(isUnit(code)).toBe(false)
    expect(convert(1, code, 'm')).toMatchObject({ code: 'unknown_unit', facts: { found: code } })
    expect(convert(1, 'm', code)).toMatchObject({ code: 'unknown_unit', facts: { found: code } })
  })

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%d is refused, not carried on', (value) => {
    expect(isProblem(convert(value, 'm', 'ft'))).toBe(true)
  })
})

describe('the table', () => {
  test('has each code once, and a name for each', () => {
    expect(new Set(UNITS.map((u) => u.code)).size).toBe(UNITS.length)
    const [plain, based] = [UNITS.filter((u) => !u.code.includes(' as ')), BASES]
    expect(plain.filter((u) => !hasWords(`unit.${u.code}`)).map((u) => u.code)).toEqual([])
    expect(based.filter((basis) => !hasWords(`basis.${basis}`))).toEqual([])
  })

  test('has all units that the worksheets and their readers use', () => {
    const wanted =
      'mg/L|mg/L as CaCO3|mg/L as Ca|mg/L as Cl2|mg/L as B|mg/L as NaCl|mg/L as Cl|mg/L as N|mg/L as NH4|mg/L as PO4|mg/L as P|mg/L as Br2|mg/L as HCO3|mg/L as Mg|meq/L|°dH|°fH|°e|gpg|g/L|µg/L|°C|°F|K|m|cm|ft|in|m²|ft²|m³|L|mL|US gal|imp gal|ft³|US fl oz|US qt|US pt|kg|g|lb|oz wt|g/h|lb/day|kg/day|m³/h|L/min|US gal/min|US gal/h|L/day|US gal/day|h|min|day|h/day|1/day|mol/L|mmol/L|mol|µS/cm|mS/cm|mV|V|NTU|A|ppm (air)|pH|1|%|choice|m/s|ft/min|mph|km/h|mg/L/day|mm/day|atm|kPa'
    expect(wanted.split('|').filter((code) => !isUnit(code))).toEqual([])
    expect(unit('mg/L as CaCO3')?.symbol).toBe('mg/L CaCO₃')
  })
})
