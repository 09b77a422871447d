import { SPECIES } from './species'
import type { Water } from './water'

/** g/mol, IUPAC 2021 abridged */
const MASS = { calcium: 40.078, magnesium: 24.305, sodium: 22.99, chloride: 35.453, sulfate: 96.056 }
const BICARBONATE = 61.016
const CARBONATE = 60.008
const BORIC_ACID = 61.831
const CYANURIC_ACID = 129.075

/** Total dissolved solids as the sum of what is dissolved, in g/L; dissolved CO2 and chlorine are not counted. */
export function dissolvedSolids(water: Water): number {
  const { totals, species } = water
  const ions =
    totals.calcium * MASS.calcium +
    totals.magnesium * MASS.magnesium +
    totals.sodium * MASS.sodium +
    totals.chloride * MASS.chloride +
    totals.sulfate * MASS.sulfate
  const carbonate = SPECIES.reduce((sum, s, i) => {
    if (s.ligand !== 'carbonate' || s.protons > 1) return sum
    return sum + (species[i] ?? 0) * (s.protons === 1 ? BICARBONATE : CARBONATE)
  }, 0)
  return ions + carbonate + totals.borate * BORIC_ACID + totals.cyanurate * CYANURIC_ACID
}
