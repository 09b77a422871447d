import { acidAgainstRise } from '../chemistry/acidAgainstRise'
import { acidDoses } from '../chemistry/acidDoses'
import { withChlorine } from '../chemistry/chlorineInWater'
import {
  type AcidProduct,
  type BaseProduct,
  type BorateProduct,
  type Dose,
  doseForTargets,
} from '../chemistry/doseForTargets'
import { type Failure, fail, isFailure } from '../chemistry/failure'
import { outside } from '../chemistry/outside'
import { type ProductAmount, productAmount } from '../chemistry/productAmount'
import { PRODUCTS, STRENGTH_BASES, type StrengthBasis } from '../chemistry/products'
import type { Water } from '../chemistry/water'
import { waterAgainstAir } from '../chemistry/waterAgainstAir'
import { waterByAir } from '../chemistry/waterByAir'
import { chlorineOf, countedIn, readingsAfter } from './additions'
import type { Parameter, Solve, Value } from './define'
import { VOLUME } from './volume'
import { PER_BORON, PER_EQUIVALENT, WATER_READINGS, type WaterReadings, waterFromReadings } from './waterReadings'

const ACIDS = ['hydrochloric_acid', 'sulfuric_acid', 'sodium_bisulfate'] as const
const BASES = ['sodium_carbonate', 'sodium_bicarbonate', 'sodium_hydroxide'] as const
const BORATES = ['borax_decahydrate', 'borax_pentahydrate', 'boric_acid'] as const

const labelled = (of: string, choices: readonly string[]): readonly Parameter[] => [
  { name: `${of}_product`, unit: 'choice', choices, optional: true },
  { name: `${of}_strength`, unit: '1', min: 0.01, max: 2_000, optional: true },
  { name: `${of}_strength_basis`, unit: 'choice', choices: STRENGTH_BASES, optional: true },
]

const wanted: readonly Parameter[] = [
  VOLUME,
  { name: 'target_ph', unit: 'pH', min: 6, max: 9.5, optional: true },
  { name: 'target_total_alkalinity', unit: 'mg/L as CaCO3', min: 1, max: 2_000, optional: true },
  { name: 'target_borate', unit: 'mg/L as B', min: 0, max: 250, optional: true },
  { name: 'ph_rise_per_week', unit: 'pH', min: 0, max: 3, optional: true },
  { name: 'air_co2', unit: 'ppm (air)', min: 50, max: 100_000, optional: true },
]

type Maybe<T> = T | undefined
type Wanted = readonly [
  volume: number,
  ph: Maybe<number>,
  totalAlkalinity: Maybe<number>,
  borate: Maybe<number>,
  phRisePerWeek: Maybe<number>,
  airCo2: Maybe<number>,
]
type Label<Product> = readonly [product: Maybe<Product>, strength: Maybe<number>, basis: Maybe<StrengthBasis>]
type Args = readonly [
  ...WaterReadings,
  ...Wanted,
  ...Label<AcidProduct>,
  ...Label<BaseProduct>,
  ...Label<BorateProduct>,
]

const READINGS = WATER_READINGS.length
const LABELS = READINGS + wanted.length

/** How much of what takes pH, alkalinity and borate to their targets, and the water right after. */
export const BALANCE_DOSE: Solve = {
  name: 'BALANCE_DOSE',
  version: 1,
  parameters: [
    ...WATER_READINGS,
    ...wanted,
    ...labelled('acid', ACIDS),
    ...labelled('base', BASES),
    ...labelled('borate', BORATES),
  ],
  outputs: [
    { name: 'acid_equivalents', unit: 'mol' },
    { name: 'acid_volume', unit: 'L' },
    { name: 'acid_mass', unit: 'kg' },
    { name: 'bicarbonate_mass', unit: 'kg' },
    { name: 'soda_ash_mass', unit: 'kg' },
    { name: 'caustic_mass', unit: 'kg' },
    { name: 'borate_mass', unit: 'kg' },
    { name: 'acid_doses', unit: '1' },
    { name: 'ph_after', unit: 'pH' },
    { name: 'ph_after_aeration', unit: 'pH' },
    { name: 'total_alkalinity_after', unit: 'mg/L as CaCO3' },
    { name: 'aeration_needed', unit: 'truth' },
    { name: 'acid_per_week', unit: 'L' },
    { name: 'borate_after', unit: 'mg/L as B' },
    { name: 'lsi_after', unit: '1' },
    { name: 'calcite_si_after', unit: '1' },
  ],
  source:
    'Two conserved quantities, alkalinity and total carbonate, brought to those of the wanted water; stoichiometry of the products; constants as for WATER. Parts of an acid dose: New York State Sanitary Code 6-1.30 (a pint in 5000 US gal), pH floors by common practice.',
  equation: String.raw`\Delta A = \mathrm{Alk}^* - \mathrm{Alk},\ \Delta C = C_T^* - C_T;\quad n_{\mathrm{NaHCO_3}} + n_{\mathrm{Na_2CO_3}} = \Delta C,\quad n_{\mathrm{NaHCO_3}} + 2 n_{\mathrm{Na_2CO_3}} + n_{\mathrm{NaOH}} - n_{\mathrm{H^+}} = \Delta A`,
  solve: (...args: Args) => {
    const readings = args.slice(0, READINGS) as unknown as WaterReadings
    const [volume, ph, alkalinity, borate, rise, air] = args.slice(READINGS, LABELS) as unknown as Wanted
    const acid = args.slice(LABELS, LABELS + 3) as unknown as Label<AcidProduct>
    const base = args.slice(LABELS + 3, LABELS + 6) as unknown as Label<BaseProduct>
    const borated = args.slice(LABELS + 6, LABELS + 9) as unknown as Label<BorateProduct>
    for (const [i, { name, min = 0, max = 0 }] of wanted.entries()) {
      const value = args[READINGS + i]
      const refused = value === undefined ? undefined : outside(name, Number(value), min, max)
      if (refused) return refused
    }
    const from = waterFromReadings(readings)
    if (isFailure(from)) return from
    const chlorine = chlorineOf(readings)
    const dose = targetDose(from, chlorine, { ph, alkalinity, borate }, acid[0], base[0], borated[0])
    const litres = volume * 1000
    const start = withChlorine(from, chlorine)
    if (isFailure(start)) return start

    const read = (of: (dose: Dose) => Value | Failure): Value | Failure => (isFailure(dose) ? dose : of(dose))
    const amounts = (label: Label<AcidProduct | BaseProduct | BorateProduct>, of: string, moles: number) =>
      amountOf(label, of, moles * litres)
    const after = isFailure(dose) ? undefined : readingsAfter(dose.water, countedIn(readings))
    const pick = (i: number) => read(() => after?.[i] ?? fail('missing', 'target_ph'))
    const weekly = weeklyAcid(
      isFailure(dose) ? from : dose.water,
      isFailure(dose) ? from.ph : (ph ?? dose.water.ph),
      rise,
    )
    return [
      read((d) => d.acid * perMole(acid[0]) * litres),
      read((d) => part(amounts(acid, 'acid', d.acid), 'volume', 'acid_product')),
      read((d) => part(amounts(acid, 'acid', d.acid), 'mass', 'acid_product')),
      read((d) => d.bicarbonate * litres * kilograms('sodium_bicarbonate')),
      read((d) => d.sodaAsh * litres * kilograms('sodium_carbonate')),
      read((d) => part(amounts(base, 'base', d.caustic), 'mass', 'base_product')),
      read((d) => part(amounts(borated, 'borate', d.borate), 'mass', 'borate_product')),
      read((d) => acidDoses(from, start, d.acid * perMole(acid[0]), d.aerationNeeded)),
      pick(0),
      read((d) => phAfterAeration(d, ph, air)),
      read((d) => alkalinityAfter(d, ph, countedIn(readings))),
      read((d) => d.aerationNeeded),
      isFailure(weekly) ? weekly : part(amounts(acid, 'acid', weekly / perMole(acid[0])), 'volume', 'acid_product'),
      pick(5),
      pick(9),
      pick(10),
    ]
  },
  checks: [
    {
      args: [...plain(7.2, 120), 1, 6.9603],
      output: 'acid_equivalents',
      expect: 0.2,
      tolerance: 0.01,
      where:
        'PHREEQC 3.8.9 (USGS), phreeqc.dat, test/published/phreeqc-24.json, water 256 with 0.2 mmol/L of HCl, run back',
    },
    {
      args: [...plain(7.2, 120), 1, 7.2645, 144.584],
      output: 'bicarbonate_mass',
      expect: 0.5 * 0.084007,
      tolerance: 0.001,
      where:
        'PHREEQC 3.8.9 (USGS), phreeqc.dat, test/published/phreeqc-24.json, water 256 with 0.5 mmol/L of NaHCO3, run back',
    },
  ],
}

/** The readings of water 256 of the reference. */
function plain(ph: number, alkalinity: number): readonly Maybe<Value>[] {
  return [ph, 25, alkalinity, 50, 3058.4, undefined, 50, 0, undefined, undefined, undefined, undefined]
}

function targetDose(
  from: Water,
  chlorine: number,
  target: { ph: Maybe<number>; alkalinity: Maybe<number>; borate: Maybe<number> },
  acid: Maybe<AcidProduct>,
  base: Maybe<BaseProduct>,
  borate: Maybe<BorateProduct>,
): Dose | Failure {
  const { ph, alkalinity } = target
  if (ph === undefined && alkalinity === undefined && target.borate === undefined) return fail('missing', 'target_ph')
  const wantedWater = {
    ph,
    titratedAlkalinity: alkalinity === undefined ? undefined : alkalinity / PER_EQUIVALENT,
    borate: target.borate === undefined ? undefined : target.borate / PER_BORON,
  }
  if ((target.borate ?? 0) / PER_BORON > from.totals.borate && borate === undefined)
    return fail('missing', 'borate_product')
  return doseForTargets(from, chlorine, wantedWater, { acid, base, borate })
}

/** Equivalents of H+ in a mole of an acid. */
function perMole(acid: Maybe<AcidProduct>): number {
  return -(PRODUCTS[acid ?? 'hydrochloric_acid'].gives.alkalinity ?? -1)
}

/** kg of pure substance in a mole; the usual products are 99 % and more. */
function kilograms(id: BaseProduct): number {
  return PRODUCTS[id].molarMass / 1000
}

/** Nothing needed is 0, whatever the product; something needed asks for product, strength and basis. */
function amountOf(
  [product, strength, basis]: Label<AcidProduct | BaseProduct | BorateProduct>,
  of: string,
  moles: number,
): ProductAmount | Failure {
  if (moles === 0) return { mass: 0, volume: 0 }
  if (product === undefined) return fail('missing', `${of}_product`)
  return productAmount(product, moles, strength, basis, `${of}_strength`)
}

function part(amount: ProductAmount | Failure, of: 'mass' | 'volume', product: string): number | Failure {
  if (isFailure(amount)) return amount
  return amount[of] ?? fail('out_of_range', product, { value: 'solid', accepted: 'liquid' })
}

/** Alkalinity kept: the target, or the pH against air where that is lower; right after the products where no air is needed. */
function phAfterAeration(dose: Dose, target: Maybe<number>, air: Maybe<number>): number | Failure {
  if (!dose.aerationNeeded || target === undefined) return dose.water.ph
  if (air === undefined) return fail('missing', 'air_co2')
  const aired = waterAgainstAir(dose.water, air)
  return isFailure(aired) ? aired : Math.min(target, aired.ph)
}

/**
 * The titration's reading once the wanted pH is reached: with chlorine in the water it moves a little while CO2 leaves, though
 * alkalinity does not.
 */
function alkalinityAfter(dose: Dose, target: Maybe<number>, counted: boolean): Value | Failure {
  const { totals, temperature, ionicStrength } = dose.water
  const aired = dose.aerationNeeded && target !== undefined
  const water = aired ? waterByAir(totals, temperature, target, ionicStrength) : dose.water
  return isFailure(water) ? water : (readingsAfter(water, counted)[1] ?? fail('missing', 'target_ph'))
}

function weeklyAcid(water: Water, ph: number, rise: Maybe<number>): number | Failure {
  if (rise === undefined) return fail('missing', 'ph_rise_per_week')
  return acidAgainstRise(water.totals, water, ph, rise)
}
