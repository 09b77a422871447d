import { isFailure } from '../chemistry/failure'
import { POOL_SHAPES, type PoolShape, poolArea } from '../chemistry/poolArea'
import { poolMeanDepth } from '../chemistry/poolMeanDepth'
import { poolVolume } from '../chemistry/poolVolume'
import { shareFiltered, turnoversPerDay, turnoverTime } from '../chemistry/turnover'
import { volumeFromSaltRise } from '../chemistry/volumeFromSaltRise'
import { SALT_RISE_ERROR, volumeInterval } from '../chemistry/volumeInterval'
import type { LockedFunction, Parameter } from './define'
import { VOLUME } from './volume'

type Maybe = number | undefined

const side = (name: string): Parameter => ({ name, unit: 'm', min: 0.1, max: 500, optional: true })
const shape: Parameter = { name: 'shape', unit: 'choice', choices: POOL_SHAPES }
const surfaceArea: Parameter = { name: 'surface_area', unit: 'm²', min: 0.01, max: 100_000, optional: true }
const pumpFlow: Parameter = { name: 'pump_flow', unit: 'm³/h', min: 0.01, max: 10_000 }
const saltBefore: Parameter = { name: 'salt_before', unit: 'mg/L as NaCl', min: 0, max: 100_000 }
const salt: Parameter = { name: 'salt', unit: 'mg/L as NaCl', min: 0, max: 100_000 }
const saltAdded: Parameter = { name: 'salt_mass_added', unit: 'kg', min: 0.001, max: 100_000 }

const interval =
  (end: 0 | 1) => (measured: Maybe, byShape: Maybe, added: Maybe, before: Maybe, after: Maybe, error: Maybe) => {
    const both = volumeInterval({
      measured,
      byShape,
      saltAdded: added,
      saltBefore: before,
      saltAfter: after,
      riseError: error ?? SALT_RISE_ERROR,
    })
    return isFailure(both) ? both : both[end]
  }

const intervalParameters: readonly Parameter[] = [
  { ...VOLUME, name: 'measured_volume', optional: true },
  { ...VOLUME, name: 'shape_volume', optional: true },
  { ...saltAdded, optional: true },
  { ...saltBefore, optional: true },
  { ...salt, optional: true },
  { name: 'salt_rise_error', unit: 'mg/L as NaCl', min: 0, max: 5_000, optional: true },
]

/** Surface, depth, volume, and how often the pump moves it. */
export const POOL_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'POOL_AREA',
    version: 1,
    parameters: [shape, side('length'), side('width'), side('diameter'), surfaceArea],
    result: { name: 'surface_area', unit: 'm²' },
    source: 'Plane geometry; ellipse π/4 × length × width, stadium (length - width) × width + π/4 × width².',
    equation: String.raw`A = L W,\quad \tfrac{\pi}{4} D^2,\quad \tfrac{\pi}{4} L W,\quad (L - W) W + \tfrac{\pi}{4} W^2`,
    evaluate: (kind: PoolShape, length: Maybe, width: Maybe, diameter: Maybe, surface: Maybe) =>
      poolArea(kind, { length, width, diameter, surfaceArea: surface }),
    checks: [
      {
        args: ['round', undefined, undefined, 2],
        expect: Math.PI,
        tolerance: 1e-12,
        where: 'area of the unit circle, π',
      },
      {
        args: ['stadium', 5, 1],
        expect: 4 + Math.PI / 4,
        tolerance: 1e-12,
        where: 'geometry: a 4 by 1 rectangle and a circle of diameter 1',
      },
      {
        args: ['oval', 30, 15],
        expect: 353.43,
        tolerance: 0.005,
        where: 'trade factor π/4 = 0.7854 of the box, by hand: 0.7854 × 450',
      },
    ],
  },
  {
    name: 'POOL_MEAN_DEPTH',
    version: 1,
    parameters: [
      { name: 'depth_shallow', unit: 'm', min: 0.02, max: 30 },
      { name: 'depth_deep', unit: 'm', min: 0.02, max: 30, optional: true },
      surfaceArea,
      side('hopper_length'),
      side('hopper_width'),
      { name: 'hopper_depth', unit: 'm', min: 0.02, max: 30, optional: true },
    ],
    result: { name: 'water_depth_mean', unit: 'm' },
    source: 'Geometry: an evenly sloping floor has the mean of its two ends; a hopper adds its own volume below it.',
    equation: String.raw`\bar d = \frac{d_s + d_d}{2} + \frac{L_h W_h (d_h - d_d)}{A}`,
    evaluate: (
      shallow: number,
      deep: Maybe,
      area: Maybe,
      hopperLength: Maybe,
      hopperWidth: Maybe,
      hopperDepth: Maybe,
    ) => poolMeanDepth({ shallow, deep, area, hopperLength, hopperWidth, hopperDepth }),
    checks: [
      { args: [0.9, 2.4], expect: 1.65, tolerance: 1e-12, where: 'trade rule (shallow + deep) / 2 for an even slope' },
      {
        args: [1, undefined, 50, 4, 2.5, 2.5],
        expect: 1.3,
        tolerance: 1e-12,
        where: 'by hand: 1 + 4 × 2.5 × 1.5 / 50',
      },
    ],
  },
  {
    name: 'POOL_VOLUME',
    version: 1,
    parameters: [
      shape,
      { name: 'water_depth_mean', unit: 'm', min: 0.02, max: 30 },
      side('length'),
      side('width'),
      side('diameter'),
      surfaceArea,
    ],
    result: { name: 'volume', unit: 'm³' },
    source: 'Geometry: surface × mean depth of the water, upright walls. 1 ft³ is 7.48052 US gal.',
    equation: String.raw`V = A \, \bar d`,
    evaluate: (kind: PoolShape, depth: number, length: Maybe, width: Maybe, diameter: Maybe, surface: Maybe) =>
      poolVolume(kind, { length, width, diameter, surfaceArea: surface }, depth),
    checks: [
      {
        args: ['rectangle', 0.3048, 0.3048, 0.3048],
        expect: 7.48052 * 0.003785411784,
        tolerance: 1e-8,
        where: '1 ft³ = 7.48052 US gal (NIST SP 811: 1 ft = 0.3048 m, 1 US gal = 231 in³)',
      },
      {
        args: ['round', 4 * 0.3048, undefined, undefined, 15 * 0.3048],
        expect: 5288 * 0.003785411784,
        tolerance: 0.002,
        where: 'round, 15 ft, 4 ft of water: 5288 US gal (π × 7.5² × 4 × 7.48052, by hand)',
      },
      {
        args: ['rectangle', 5 * 0.3048, 36 * 0.3048, 18 * 0.3048],
        expect: 24_237 * 0.003785411784,
        tolerance: 0.002,
        where: '18 × 36 ft, 5 ft mean: 24 237 US gal (18 × 36 × 5 × 7.48052, by hand)',
      },
      {
        args: ['oval', 4 * 0.3048, 30 * 0.3048, 15 * 0.3048],
        expect: 10_575 * 0.003785411784,
        tolerance: 0.002,
        where: 'ellipse 15 × 30 ft, 4 ft: 10 575 US gal (trade factor 5.875 US gal a ft³ of box, by hand)',
      },
    ],
  },
  {
    name: 'VOLUME_FROM_SALT_RISE',
    version: 1,
    parameters: [saltAdded, saltBefore, salt],
    result: { name: 'volume_from_salt_rise', unit: 'm³' },
    source: 'Mass balance: 1 kg in 1 m³ is 1000 mg/L.',
    equation: String.raw`V = \frac{m}{c_1 - c_0}`,
    evaluate: volumeFromSaltRise,
    checks: [
      {
        args: [83.454 * 0.45359237, 2000, 3000],
        expect: 37.8541,
        tolerance: 0.001,
        where: '83.454 lb raise 10 000 US gal by 1000 mg/L (definitions of lb and gal)',
      },
    ],
  },
  {
    name: 'VOLUME_LOW',
    version: 1,
    parameters: intervalParameters,
    result: { name: 'volume_low', unit: 'm³' },
    source:
      'Common practice, no source: 2 % of a metered volume, 10 % of one by shape, a rise of salt within 300 mg/L.',
    equation: String.raw`V_{low} = 0.98 V_m,\quad 0.9 V_s,\quad \frac{m}{\Delta c + e}`,
    evaluate: interval(0),
    checks: [
      { args: [50], expect: 49, tolerance: 1e-9, where: 'by hand: 50 m³ less 2 %' },
      {
        args: [undefined, undefined, 50, 2000, 3000],
        expect: 50 / 1.3,
        tolerance: 1e-9,
        where: 'by hand: 50 kg / (1000 + 300 mg/L)',
      },
    ],
  },
  {
    name: 'VOLUME_HIGH',
    version: 1,
    parameters: intervalParameters,
    result: { name: 'volume_high', unit: 'm³' },
    source:
      'Common practice, no source: 2 % of a metered volume, 10 % of one by shape, a rise of salt within 300 mg/L.',
    equation: String.raw`V_{high} = 1.02 V_m,\quad 1.1 V_s,\quad \frac{m}{\Delta c - e}`,
    evaluate: interval(1),
    checks: [
      { args: [undefined, 50], expect: 55, tolerance: 1e-9, where: 'by hand: 50 m³ and 10 %' },
      {
        args: [undefined, undefined, 50, 2000, 3000],
        expect: 50 / 0.7,
        tolerance: 1e-9,
        where: 'by hand: 50 kg / (1000 - 300 mg/L)',
      },
    ],
  },
  {
    name: 'TURNOVER_TIME',
    version: 1,
    parameters: [VOLUME, pumpFlow],
    result: { name: 'turnover_time', unit: 'h' },
    source: 'Definition: volume / flow.',
    equation: String.raw`t = \frac{V}{Q}`,
    evaluate: turnoverTime,
    checks: [{ args: [90, 15], expect: 6, tolerance: 1e-12, where: 'by hand; 6 h is what US codes ask of a pool' }],
  },
  {
    name: 'TURNOVERS_PER_DAY',
    version: 1,
    parameters: [VOLUME, { ...pumpFlow, min: 0 }, { name: 'pump_hours', unit: 'h/day', min: 0, max: 24 }],
    result: { name: 'turnovers_per_day', unit: '1/day' },
    source: 'Definition: flow × hours a day / volume.',
    equation: String.raw`n = \frac{Q \, t_{day}}{V}`,
    evaluate: turnoversPerDay,
    checks: [{ args: [90, 15, 24], expect: 4, tolerance: 1e-12, where: 'by hand: a 6 h turnover is 4 a day' }],
  },
  {
    name: 'SHARE_FILTERED',
    version: 1,
    parameters: [{ name: 'turnovers', unit: '1', min: 0, max: 1_000 }],
    result: { name: 'share_filtered', unit: '1' },
    source: 'Gage and Bidwell, law of purification by consecutive dilution, 1926 (from memory): 1 - e⁻ⁿ.',
    equation: 's = 1 - e^{-n}',
    evaluate: shareFiltered,
    checks: [
      { args: [1], expect: 0.632, tolerance: 5e-4, where: 'the table that goes with it: 63.2 % after one turnover' },
      { args: [4], expect: 0.982, tolerance: 5e-4, where: 'the table that goes with it: 98.2 % after four' },
    ],
  },
]
