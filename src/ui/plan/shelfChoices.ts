import type { Role } from '../../planner/shelf'

export type RoleName = Role

/** What can stand on the shelf for each use, by contract id. */
export const PRODUCTS: Readonly<Record<RoleName, readonly string[]>> = {
  acid: ['hydrochloric_acid', 'sulfuric_acid', 'sodium_bisulfate'],
  bicarbonate: ['sodium_bicarbonate'],
  base: ['sodium_carbonate', 'sodium_hydroxide'],
  chlorine: ['sodium_hypochlorite', 'calcium_hypochlorite', 'dichlor', 'trichlor'],
  stabilizer: ['cyanuric_acid'],
  calcium: ['calcium_chloride_dihydrate', 'calcium_chloride'],
  salt: ['salt'],
  borate: ['borax_decahydrate', 'borax_pentahydrate', 'boric_acid'],
  neutralizer: ['sodium_thiosulfate', 'hydrogen_peroxide', 'ascorbic_acid'],
}

export const ROLE_NAMES = Object.keys(PRODUCTS) as readonly RoleName[]

export const BASES = ['mass_percent', 'available_mass_percent', 'trade_percent', 'g_per_L', 'baume'] as const
