import { calciteEquilibrium } from '../../src/chemistry/calciteEquilibrium'
import { doseForTargets } from '../../src/chemistry/doseForTargets'
import { type Measured, measuredWater } from '../../src/chemistry/measuredWater'
import type { Water } from '../../src/chemistry/water'
import { waterAfter } from '../../src/chemistry/waterAfter'
import { number } from '../chemistry/referenceWater'

const target = { ph: 7.5, titratedAlkalinity: 90 / 50_043.5, borate: undefined }
const products = { acid: undefined, base: 'sodium_hydroxide', borate: undefined } as const
const acid = [{ kind: 'product', product: 'hydrochloric_acid', amount: 1e-4 }] as const

/** One water of the readings each, and one number out of it. */
export const read = (readings: Measured): Water => number(measuredWater(readings))
export const solves: readonly (readonly [what: string, solve: (water: Water, readings: Measured) => number])[] = [
  ['SI from readings', (_, readings) => number(measuredWater(readings)).calciteIndex],
  ['CCPP', (water) => number(calciteEquilibrium(water)).precipitated],
  ['pH after an addition', (water) => number(waterAfter(water.totals, water, acid)).ph],
  ['two-target dose', (water) => number(doseForTargets(water, 0, target, products)).acid],
]
