import { evaporation } from '../chemistry/evaporation'
import { makeUpRise } from '../chemistry/makeUpRise'
import type { LockedFunction } from './define'
import { VOLUME } from './volume'

/** Water that the air takes. */
export const EVAPORATION_FUNCTIONS: readonly LockedFunction[] = [
  {
    name: 'EVAPORATION',
    version: 1,
    parameters: [
      { name: 'surface_area', unit: 'm²', min: 0.01, max: 100_000 },
      { name: 'temperature', unit: '°C', min: 0, max: 50 },
      { name: 'air_temperature', unit: '°C', min: 0, max: 50 },
      { name: 'relative_humidity', unit: '1', min: 0, max: 1 },
      { name: 'wind_speed', unit: 'm/s', min: 0, max: 20 },
    ],
    result: { name: 'evaporation', unit: 'L/day' },
    source:
      'ASHRAE Handbook, HVAC Applications (from memory); Smith et al., ASHRAE Transactions 104(1A) (1998), paper 4146.',
    equation: String.raw`W = \frac{(0.089 + 0.0782\, v)(p_w - p_a)}{Y}`,
    evaluate: evaporation,
    checks: [
      {
        args: [1, 250 / 9, 29, 0.5, 0],
        expect: 5.5,
        tolerance: 0.06,
        where:
          'Smith et al. 1998 in its own units, by hand: 95 × (1.1024 - 0.5917 inHg) / 1047 Btu/lb = 0.0463 lb/(h ft²), 5.43 mm a day',
      },
      {
        args: [1, 250 / 9, 29, 0.5, 2],
        expect: 15.05,
        tolerance: 0.1,
        where: 'Smith et al. 1998 in its own units, by hand: 393.7 ft/min, 0.1279 lb/(h ft²), 14.99 mm a day',
      },
    ],
  },
  {
    name: 'MAKE_UP_RISE',
    version: 1,
    parameters: [
      VOLUME,
      { name: 'evaporation', unit: 'L/day', min: 0, max: 100_000 },
      { name: 'days', unit: 'day', min: 0.1, max: 3_650 },
      { name: 'fill_total_alkalinity', unit: 'mg/L as CaCO3', min: 0, max: 40_000 },
    ],
    result: { name: 'rise', unit: 'mg/L as CaCO3' },
    source: 'Mass balance: the level is kept with fill water, and evaporation takes nothing of what it carries.',
    equation: String.raw`\Delta c = \frac{q\, t}{V}\, c_{fill}`,
    evaluate: makeUpRise,
    checks: [
      {
        args: [56.8, 200, 7, 250],
        expect: 6.162,
        tolerance: 0.001,
        where: 'by hand: 200 L/day × 7 days × 250 mg/L = 350 g into 56.8 m³',
      },
    ],
  },
]
