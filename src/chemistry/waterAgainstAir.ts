import { solvePh } from './closedWater'
import { activityCoefficient, concentration, ligandSum, water as point, sweepMetals } from './equilibrium'
import { logHenryCarbonDioxide } from './equilibriumConstants'
import type { Failure } from './failure'
import { outside } from './outside'
import { SPECIES } from './species'
import { CARBONATE } from './speciesArrays'
import type { Water } from './water'

const CO2 = SPECIES.findIndex((s) => s.name === 'CO2')

/**
 * The water after long contact with air: alkalinity and salts stay, CO2 comes or goes until its partial pressure is
 * `ppm` x 1e-6 atm (1 atm of air; the few per cent of water vapour are left out, under 0.02 in pH).
 * Range: 50 to 100 000 ppm. Errors: as `closedWater`.
 */
export function waterAgainstAir(from: Water, ppm: number): Water | Failure {
  const refused = outside('air_co2', ppm, 50, 100_000)
  if (refused) return refused
  const dissolved = ppm * 1e-6 * 10 ** logHenryCarbonDioxide(from.temperature)
  const totals = { ...from.totals }
  // while bicarbonate holds the alkalinity, pH falls by as much as the logarithm of the pressure rises
  const guess = Math.min(9.5, from.ph + Math.log10(from.pco2 / (ppm * 1e-6)))
  const near = { ph: Number.isFinite(guess) ? guess : 8.2, ionicStrength: from.ionicStrength }
  return solvePh(totals, from.temperature, near, () => {
    // CO2 holds no metal, so pH alone fixes the free carbonate
    point.ligand[CARBONATE] = 1
    point.ligand[CARBONATE] = dissolved / (concentration(point, CO2) * activityCoefficient(CO2))
    for (let sweep = 0; sweep < 200; sweep++) if (sweepMetals(point, totals) < 1e-13) break
    totals.carbonate = (point.ligand[CARBONATE] ?? 0) * ligandSum(point, point.count, CARBONATE)
  })
}
