import { BASES, type Basis, MOLAR_MASS, MOLAR_MASS_CAO } from './basis'

/** What a unit measures. Units of different dimensions never convert. */
export type Dimension =
  | 'concentration'
  | 'concentration a day'
  | 'amount concentration'
  | 'amount'
  | 'temperature'
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'mass flow'
  | 'flow'
  | 'time'
  | 'hours a day'
  | 'rate'
  | 'depth a day'
  | 'speed'
  | 'pressure'
  | 'conductivity'
  | 'voltage'
  | 'current'
  | 'turbidity'
  | 'share of air'
  | 'pH'
  | 'number'
  | 'choice'

export interface Unit {
  /** how definitions, files and functions name it */
  readonly code: string
  /** how it is written beside a figure; empty for pH, plain numbers and choices */
  readonly symbol: string
  readonly dimension: Dimension
  /** what a concentration is counted as; null where nothing needs saying */
  readonly basis: Basis | null
  /** a reading `x` is `(x - offset) × factor` in the first unit of its dimension below */
  readonly factor: number
  readonly offset: number
  /** code of the Unified Code for Units of Measure, null where it has none of the same meaning */
  readonly ucum: string | null
}

// Exact by definition: the international yard and pound (United States and Commonwealth, 1959), the US gallon of 231
// cubic inches, as in NIST SP 811 (2008), appendix B; the imperial gallon as in the Units of Measurement Regulations 1995.
const INCH = 0.0254
const FOOT = 0.3048
const MILE = 1609.344
const POUND = 0.45359237
const GRAIN_MG = 64.79891
const US_GALLON_L = 3.785411784
const IMPERIAL_GALLON_L = 4.54609

type Row = readonly [code: string, factor: number, ucum: string | null, offset?: number]

/** The first of each is what the others are multiples of. */
const ROWS: Readonly<Record<Exclude<Dimension, 'concentration'>, readonly Row[]>> = {
  'concentration a day': [
    ['mg/L/day', 1, 'mg/L/d'],
    ['ppm/day', 1, null],
  ],
  'amount concentration': [
    ['mol/L', 1, 'mol/L'],
    ['mmol/L', 1e-3, 'mmol/L'],
  ],
  amount: [
    ['mol', 1, 'mol'],
    ['mmol', 1e-3, 'mmol'],
  ],
  temperature: [
    ['°C', 1, 'Cel'],
    ['°F', 5 / 9, '[degF]', 32],
    ['K', 1, 'K', 273.15],
  ],
  length: [
    ['m', 1, 'm'],
    ['cm', 0.01, 'cm'],
    ['mm', 0.001, 'mm'],
    ['ft', FOOT, '[ft_i]'],
    ['in', INCH, '[in_i]'],
  ],
  area: [
    ['m²', 1, 'm2'],
    ['ft²', FOOT ** 2, '[ft_i]2'],
  ],
  volume: [
    ['m³', 1, 'm3'],
    ['L', 1e-3, 'L'],
    ['mL', 1e-6, 'mL'],
    ['US gal', US_GALLON_L / 1000, '[gal_us]'],
    ['US qt', US_GALLON_L / 4000, '[qt_us]'],
    ['US pt', US_GALLON_L / 8000, '[pt_us]'],
    ['US fl oz', US_GALLON_L / 128_000, '[foz_us]'],
    ['imp gal', IMPERIAL_GALLON_L / 1000, '[gal_br]'],
    ['imp qt', IMPERIAL_GALLON_L / 4000, '[qt_br]'],
    ['imp pt', IMPERIAL_GALLON_L / 8000, '[pt_br]'],
    ['imp fl oz', IMPERIAL_GALLON_L / 160_000, '[foz_br]'],
    ['ft³', FOOT ** 3, '[ft_i]3'],
  ],
  mass: [
    ['kg', 1, 'kg'],
    ['g', 1e-3, 'g'],
    ['mg', 1e-6, 'mg'],
    ['t', 1000, 't'],
    ['lb', POUND, '[lb_av]'],
    ['oz wt', POUND / 16, '[oz_av]'],
    ['US ton', POUND * 2000, '[ston_av]'],
    ['imp ton', POUND * 2240, '[lton_av]'],
  ],
  'mass flow': [
    ['g/h', 1, 'g/h'],
    ['kg/day', 1000 / 24, 'kg/d'],
    ['lb/day', (POUND * 1000) / 24, '[lb_av]/d'],
  ],
  flow: [
    ['m³/h', 1, 'm3/h'],
    ['L/s', 3.6, 'L/s'],
    ['L/min', 0.06, 'L/min'],
    ['L/h', 1e-3, 'L/h'],
    ['L/day', 1e-3 / 24, 'L/d'],
    ['US gal/min', (US_GALLON_L * 60) / 1000, '[gal_us]/min'],
    ['US gal/h', US_GALLON_L / 1000, '[gal_us]/h'],
    ['US gal/day', US_GALLON_L / 24_000, '[gal_us]/d'],
    ['imp gal/min', (IMPERIAL_GALLON_L * 60) / 1000, '[gal_br]/min'],
    ['imp gal/h', IMPERIAL_GALLON_L / 1000, '[gal_br]/h'],
    ['imp gal/day', IMPERIAL_GALLON_L / 24_000, '[gal_br]/d'],
  ],
  time: [
    ['h', 1, 'h'],
    ['min', 1 / 60, 'min'],
    ['day', 24, 'd'],
    ['week', 168, 'wk'],
    // the Julian year of 365.25 days
    ['year', 8766, 'a'],
  ],
  'hours a day': [['h/day', 1, 'h/d']],
  rate: [
    ['1/day', 1, '/d'],
    ['1/week', 1 / 7, '/wk'],
  ],
  'depth a day': [
    ['mm/day', 1, 'mm/d'],
    ['in/day', INCH * 1000, '[in_i]/d'],
  ],
  speed: [
    ['m/s', 1, 'm/s'],
    ['km/h', 1 / 3.6, 'km/h'],
    ['mph', MILE / 3600, '[mi_i]/h'],
    ['ft/min', FOOT / 60, '[ft_i]/min'],
  ],
  // the standard atmosphere, 101 325 Pa
  pressure: [
    ['kPa', 1, 'kPa'],
    ['atm', 101.325, 'atm'],
  ],
  conductivity: [
    ['µS/cm', 1, 'uS/cm'],
    ['mS/cm', 1000, 'mS/cm'],
  ],
  voltage: [
    ['mV', 1, 'mV'],
    ['V', 1000, 'V'],
  ],
  current: [['A', 1, 'A']],
  turbidity: [['NTU', 1, null]],
  'share of air': [['ppm (air)', 1, '[ppm]']],
  pH: [['pH', 1, '[pH]']],
  number: [
    ['1', 1, '1'],
    ['%', 0.01, '%'],
  ],
  choice: [['choice', 1, null]],
}

/** Each of these also counted as every basis. `ppm` is read as mg/L: one part of a million by mass, water at 1 kg/L. */
const CONCENTRATION: readonly Row[] = [
  ['mg/L', 1, 'mg/L'],
  ['g/L', 1000, 'g/L'],
  ['µg/L', 1e-3, 'ug/L'],
  ['ng/L', 1e-6, 'ng/L'],
  ['ppm', 1, null],
]

/** Hardness and alkalinity by their charge, all counted as CaCO3. */
const AS_CALCIUM_CARBONATE: readonly Row[] = [
  ['meq/L', MOLAR_MASS.CaCO3 / 2, 'meq/L'],
  // 10 mg of CaO in a litre (DIN 38409-6)
  ['°dH', (10 * MOLAR_MASS.CaCO3) / MOLAR_MASS_CAO, null],
  // 10 mg of CaCO3 in a litre
  ['°fH', 10, null],
  // one grain of CaCO3 in an imperial gallon (Clark), in a US gallon
  ['°e', GRAIN_MG / IMPERIAL_GALLON_L, '[gr]/[gal_br]'],
  ['gpg', GRAIN_MG / US_GALLON_L, '[gr]/[gal_us]'],
]

const SYMBOLS: Readonly<Record<string, string>> = { '1': '', pH: '', choice: '', 'ppm (air)': 'ppm' }
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉'

function made(dimension: Dimension, [code, factor, ucum, offset = 0]: Row, basis: Basis | null = null): Unit {
  return { code, symbol: SYMBOLS[code] ?? code, dimension, basis, factor, offset, ucum }
}

function countedAs(basis: Basis, [code, factor, ucum]: Row): Unit {
  const formula = basis.replace(/\d/g, (digit) => SUBSCRIPTS.charAt(Number(digit)))
  return { ...made('concentration', [`${code} as ${basis}`, factor, ucum], basis), symbol: `${code} ${formula}` }
}

/** Every unit, those that definitions mostly use first. */
export const UNITS: readonly Unit[] = [
  ...CONCENTRATION.map((row) => made('concentration', row)),
  ...AS_CALCIUM_CARBONATE.map((row) => made('concentration', row, 'CaCO3')),
  ...BASES.flatMap((basis) => [
    ...CONCENTRATION.map((row) => countedAs(basis, row)),
    countedAs(basis, ['mmol/L', MOLAR_MASS[basis], 'mmol/L']),
  ]),
  ...Object.entries(ROWS).flatMap(([dimension, rows]) => rows.map((row) => made(dimension as Dimension, row))),
]

const BY_CODE: ReadonlyMap<string, Unit> = new Map(UNITS.map((u) => [u.code, u]))

export function unit(code: string): Unit | undefined {
  return BY_CODE.get(code)
}

export function isUnit(code: string): boolean {
  return BY_CODE.has(code)
}

/** Whether values in the two units add without a word: same dimension, and counted as the same substance. */
export function sameKind(a: string, b: string): boolean {
  const [left, right] = [unit(a), unit(b)]
  return left !== undefined && left.dimension === right?.dimension && left.basis === right.basis
}

/** The units that a row in this unit may be shown in, itself included. Empty for a code that is not a unit. */
export function unitsOfKind(code: string): readonly Unit[] {
  return UNITS.filter((u) => sameKind(u.code, code))
}
