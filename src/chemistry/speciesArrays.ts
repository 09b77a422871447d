import { LIGANDS, METALS, SPECIES, type Species } from './species'
import type { Totals } from './totals'

/**
 * The table of species as arrays for the inner loop: where each stands in the table of cells (metal or none by ligand or
 * none), its protons counted from the lowest, its weights, and which activity coefficients it needs.
 */
export const COLUMNS = LIGANDS.length + 1
export const ROWS = METALS.length + 1
export const NONE_METAL = METALS.length
const NONE_LIGAND = LIGANDS.length
export const CELLS = ROWS * COLUMNS
export const CARBONATE = LIGANDS.indexOf('carbonate')
export const SULFATE = LIGANDS.indexOf('sulfate')
export const BORATE = LIGANDS.indexOf('borate')
export const CYANURATE = LIGANDS.indexOf('cyanurate')
export const CHLORINE = LIGANDS.indexOf('chlorine')
export const CALCIUM = METALS.indexOf('calcium')
export const MAGNESIUM = METALS.indexOf('magnesium')
export const SODIUM = METALS.indexOf('sodium')

export const LOWEST_PROTONS = 3

export const cellOf = Int32Array.from(SPECIES, (s) => {
  const row = s.metal === undefined ? NONE_METAL : METALS.indexOf(s.metal)
  return row * COLUMNS + (s.ligand === undefined ? NONE_LIGAND : LIGANDS.indexOf(s.ligand))
})
export const rowOf = cellOf.map((at) => Math.floor(at / COLUMNS))
export const columnOf = cellOf.map((at) => at % COLUMNS)
export const protonsOf = Int32Array.from(SPECIES, (s) => s.protons + LOWEST_PROTONS)
export const hoclOf = Int32Array.from(SPECIES, (s) => s.hocl)
export const baseOf = Float64Array.from(SPECIES, (s) => s.base)
export const charge2Of = Float64Array.from(SPECIES, (s) => s.charge * s.charge)

/** Species that share an activity model and a squared charge share one coefficient; the last place holds 1, for "none". */
export const kinds = [...new Map(SPECIES.map((s) => [kindKey(s), s])).values()]
export const ONE = kinds.length
export const kindOf = Int32Array.from(SPECIES, (s) => kinds.findIndex((k) => kindKey(k) === kindKey(s)))
function kindKey(s: Species): string {
  return JSON.stringify([s.activity, s.charge * s.charge])
}
/** The kinds of the free metal and of the free ligand, whose coefficients enter the conditional constant. */
export const metalKindOf = Int32Array.from(SPECIES, (s) => kindOfFree((r) => r.metal === s.metal && !r.ligand, s.metal))
export const ligandKindOf = Int32Array.from(SPECIES, (s) =>
  kindOfFree((r) => r.ligand === s.ligand && !r.metal, s.ligand),
)
function kindOfFree(is: (s: Species) => boolean, part: string | undefined): number {
  if (part === undefined) return ONE
  return kindOf[SPECIES.findIndex((s) => is(s) && s.protons === 0 && s.hocl === 0)] ?? ONE
}

export const HOCL = SPECIES.findIndex((s) => s.name === 'HOCl')
/** The chlorinated cyanurates end the list. */
export const FIRST_CHLORINATED = SPECIES.findIndex((s) => s.hocl > 0)

/** Parts that a water may lack altogether, and the species that each combination leaves to look at. */
const LACKABLE = ['magnesium', 'sulfate', 'borate', 'cyanurate', 'chlorine'] as const
const needOf = SPECIES.map((s) =>
  mask((part) => s.metal === part || s.ligand === part || (part === 'chlorine' && s.hocl > 0)),
)
const looked = Array.from({ length: 2 ** LACKABLE.length }, (_, present) => ({
  plain: indexes((s, i) => s.ligand !== 'cyanurate' && fits(i, present)),
  cyanurates: indexes((s, i) => s.ligand === 'cyanurate' && fits(i, present)),
}))

function mask(has: (part: (typeof LACKABLE)[number]) => boolean): number {
  return LACKABLE.reduce((bits, part, k) => bits + (has(part) ? 2 ** k : 0), 0)
}
function fits(species: number, present: number): boolean {
  return ((needOf[species] ?? 0) & ~present) === 0
}
function indexes(is: (s: Species, i: number) => boolean): Int32Array {
  return Int32Array.from(SPECIES.flatMap((s, i) => (is(s, i) ? [i] : [])))
}

/** The species that a water of these totals can hold, those of cyanurate apart. */
export function speciesOf(totals: Totals): { readonly plain: Int32Array; readonly cyanurates: Int32Array } {
  const present =
    (totals.magnesium > 0 ? 1 : 0) +
    (totals.sulfate > 0 ? 2 : 0) +
    (totals.borate > 0 ? 4 : 0) +
    (totals.cyanurate > 0 ? 8 : 0) +
    (totals.chlorine > 0 ? 16 : 0)
  return looked[present] ?? EVERY
}
const EVERY = looked[looked.length - 1] ?? { plain: new Int32Array(), cyanurates: new Int32Array() }
