import { solvePh } from './closedWater'
import { activityCoefficient, cell, ligandSum, metalSum, water as point, sweepBesideCalcium } from './equilibrium'
import { pKCalcite } from './equilibriumConstants'
import { type Failure, fail, isFailure } from './failure'
import { SPECIES } from './species'
import { CALCIUM, CARBONATE } from './speciesArrays'
import type { Water } from './water'

const CA = SPECIES.findIndex((s) => s.name === 'Ca++')
const CO3 = SPECIES.findIndex((s) => s.name === 'CO3--')

/** Calcite that comes out (positive) or goes in, mol/L, and the water that is left. */
export interface CalciteEquilibrium {
  readonly precipitated: number
  readonly water: Water
}

/**
 * Closed equilibrium with calcite: x mol/L come out so that Ca - x, carbonate - x, Alk - 2x is just saturated; no CO2
 * exchanged, the water's own temperature, ionic strength recomputed. Carbonate less calcium and Alk less twice calcium do not
 * change, so for each pH the saturated water is one root of a quadratic and pH is one root of one function.
 * The sign is that of the water's calcite index. Tolerance 1e-11 in pH. Errors: as `closedWater`.
 */
export function calciteEquilibrium(from: Water): CalciteEquilibrium | Failure {
  const { totals, temperature } = from
  const spare = totals.carbonate - totals.calcium
  const product = 10 ** -pKCalcite(temperature)
  const left = { ...totals }
  // without any calcium the index is infinite
  const rise = Math.min(2, Math.max(-2, -from.calciteIndex / 2))
  const near = { ph: from.ph + rise, ionicStrength: from.ionicStrength }
  const water = solvePh(left, temperature, near, () => {
    const saturated = product / (activityCoefficient(CA) * activityCoefficient(CO3))
    for (let sweep = 0; sweep < 200; sweep++) {
      const ofCarbonate = ligandSum(point, point.count, CARBONATE) - calciumPairs()
      const ofCalcium = metalSum(point, point.count, CALCIUM) - carbonatePairs()
      const before = point.metal[CALCIUM] ?? 0
      const free = positiveRoot(ofCalcium, spare, saturated * ofCarbonate)
      point.metal[CALCIUM] = free
      point.ligand[CARBONATE] = saturated / free
      if (Math.max(Math.abs(free - before) / free, sweepBesideCalcium(point, left)) < 1e-13) break
    }
    left.calcium = (point.metal[CALCIUM] ?? 0) * metalSum(point, point.count, CALCIUM)
    left.carbonate = left.calcium + spare
    left.alkalinity = totals.alkalinity - 2 * (totals.calcium - left.calcium)
  })
  if (isFailure(water)) return water
  if (!(left.carbonate > 0)) return fail('no_convergence', 'ccpp')
  return { precipitated: totals.calcium - left.calcium, water }
}

function calciumPairs(): number {
  return cell(point.count, CALCIUM, CARBONATE) * (point.metal[CALCIUM] ?? 0)
}

function carbonatePairs(): number {
  return cell(point.count, CALCIUM, CARBONATE) * (point.ligand[CARBONATE] ?? 0)
}

/** The positive root of a x² + b x - c = 0 with a, c > 0, without cancellation. */
function positiveRoot(a: number, b: number, c: number): number {
  const root = Math.sqrt(b * b + 4 * a * c)
  return b > 0 ? (2 * c) / (b + root) : (root - b) / (2 * a)
}
