import { activityCoefficient, concentration, ligandSum, type Point, water as point, sweepMetals } from './equilibrium'
import { logHenryCarbonDioxide, pKCalcite } from './equilibriumConstants'
import type { Failure } from './failure'
import { outside } from './outside'
import { SPECIES } from './species'
import { CARBONATE } from './speciesArrays'
import type { Totals } from './totals'

/** A water in equilibrium with itself. Concentrations in mol/L, alkalinities in eq/L, temperature in kelvin. */
export interface Water {
  readonly ph: number
  readonly temperature: number
  readonly totals: Totals
  readonly ionicStrength: number
  /** [HCO3-] + 2 [CO3--], pairs counted with their base */
  readonly carbonateAlkalinity: number
  /** log10 of the activity product over the solubility product of calcite; full speciation. -Infinity without calcium */
  readonly calciteIndex: number
  /** partial pressure (fugacity) of CO2 in equilibrium with the water, atm */
  readonly pco2: number
  /** mol/L of each of SPECIES, in its order */
  readonly species: Float64Array
}

const index = (name: string) => SPECIES.findIndex((s) => s.name === name)
const CA = index('Ca++')
const CO3 = index('CO3--')
const CO2 = index('CO2')

/** The failure for an ionic strength over 1 mol/L, where no activity model here means anything; undefined when it is fine. */
export function tooStrong(I: number): Failure | undefined {
  return outside('ionic_strength', I, 0, 1)
}

/** Reads the water out of the point that a solve has just settled; `I` is the ionic strength it was settled at. */
export function readWater(T: number, totals: Totals, I: number): Water {
  const carbonate = point.ligand[CARBONATE] ?? 0
  const carbonateAlkalinity = carbonate * ligandSum(point, point.base, CARBONATE)
  const species = new Float64Array(SPECIES.length)
  for (let i = 0; i < species.length; i++) species[i] = concentration(point, i)
  const calcium = (species[CA] ?? 0) * activityCoefficient(CA)
  const bare = (species[CO3] ?? 0) * activityCoefficient(CO3)
  const co2 = (species[CO2] ?? 0) * activityCoefficient(CO2)
  return {
    ph: -Math.log10(point.h),
    temperature: T,
    totals,
    ionicStrength: I,
    carbonateAlkalinity,
    calciteIndex: Math.log10(calcium * bare) + pKCalcite(T),
    pco2: co2 / 10 ** logHenryCarbonDioxide(T),
    species,
  }
}

/** Settles a point of known pH and total carbonate: sweeps until nothing moves. */
export function settleCarbonate(p: Point, totals: Totals): void {
  for (let sweep = 0; sweep < 200; sweep++) {
    const before = p.ligand[CARBONATE] ?? 0
    const free = totals.carbonate / ligandSum(p, p.count, CARBONATE)
    p.ligand[CARBONATE] = free
    const change = free === before ? 0 : Math.abs(free - before) / Math.max(free, before)
    if (Math.max(change, sweepMetals(p, totals)) < 1e-13) return
  }
}
