import { debyeHuckel, gammaTerms } from './activity'
import { LIGANDS, METALS, SPECIES, type Species } from './species'
import type { Totals } from './totals'

/**
 * The inner loop that all solves of the water share. Everything lives in arrays made once, because it runs hundreds of
 * thousands of times a second; nothing here is kept between solves but the constants of the last temperature.
 *
 * Every species is (metal or none) x (ligand or none) x H+^protons, so a water of known pH and ionic strength is a table
 * of 4 x 6 cells: the sum of the conditional constants of the species in that cell, once each weighted with 1, with
 * its base and with its charge squared. Mass balances are then row and column sums, linear in each free concentration.
 */
const COLUMNS = LIGANDS.length + 1
const ROWS = METALS.length + 1
export const NONE_METAL = METALS.length
export const NONE_LIGAND = LIGANDS.length
const CELLS = ROWS * COLUMNS
const N = SPECIES.length
export const CARBONATE = LIGANDS.indexOf('carbonate')
export const SULFATE = LIGANDS.indexOf('sulfate')
const BORATE = LIGANDS.indexOf('borate')
const CYANURATE = LIGANDS.indexOf('cyanurate')
const CHLORINE = LIGANDS.indexOf('chlorine')
export const CALCIUM = METALS.indexOf('calcium')
const MAGNESIUM = METALS.indexOf('magnesium')
const SODIUM = METALS.indexOf('sodium')

const LOWEST_PROTONS = 3

const cellOf = Int32Array.from(SPECIES, (s) => {
  const row = s.metal === undefined ? NONE_METAL : METALS.indexOf(s.metal)
  return row * COLUMNS + (s.ligand === undefined ? NONE_LIGAND : LIGANDS.indexOf(s.ligand))
})
const rowOf = cellOf.map((at) => Math.floor(at / COLUMNS))
const columnOf = cellOf.map((at) => at % COLUMNS)
const protonsOf = Int32Array.from(SPECIES, (s) => s.protons + LOWEST_PROTONS)
const hoclOf = Int32Array.from(SPECIES, (s) => s.hocl)
const baseOf = Float64Array.from(SPECIES, (s) => s.base)
const charge2Of = Float64Array.from(SPECIES, (s) => s.charge * s.charge)

/** Species that share an activity model and a squared charge share one coefficient; the last place holds 1, for "none". */
const kinds = [...new Map(SPECIES.map((s) => [kindKey(s), s])).values()]
const ONE = kinds.length
const kindOf = Int32Array.from(SPECIES, (s) => kinds.findIndex((k) => kindKey(k) === kindKey(s)))
function kindKey(s: Species): string {
  return JSON.stringify([s.activity, s.charge * s.charge])
}
/** The kinds of the free metal and of the free ligand, whose coefficients enter the conditional constant. */
const metalKindOf = Int32Array.from(SPECIES, (s) => kindOfFree((r) => r.metal === s.metal && !r.ligand, s.metal))
const ligandKindOf = Int32Array.from(SPECIES, (s) => kindOfFree((r) => r.ligand === s.ligand && !r.metal, s.ligand))
function kindOfFree(is: (s: Species) => boolean, part: string | undefined): number {
  if (part === undefined) return ONE
  return kindOf[SPECIES.findIndex((s) => is(s) && s.protons === 0 && s.hocl === 0)] ?? ONE
}

const HOCL = SPECIES.findIndex((s) => s.name === 'HOCl')
/** Cyanurates, then chlorinated ones, end the list, so that water without them need not look at them. */
const FIRST_CYANURATE = SPECIES.findIndex((s) => s.ligand === 'cyanurate')
const FIRST_CHLORINATED = SPECIES.findIndex((s) => s.hocl > 0)

/** A water at one pH: its cell sums and its free concentrations. Two exist, the water and its titration's end point. */
export interface Point {
  /** activity of H+ */
  h: number
  /** its powers, from -3 to 3 */
  readonly powers: Float64Array
  readonly count: Float64Array
  readonly base: Float64Array
  readonly charge2: Float64Array
  /** free metals in mol/L, then 1 */
  readonly metal: Float64Array
  /** free ligands in mol/L, then 1 */
  readonly ligand: Float64Array
}

function point(): Point {
  const cells = () => new Float64Array(CELLS)
  return {
    h: 1e-7,
    powers: new Float64Array(2 * LOWEST_PROTONS + 1),
    count: cells(),
    base: cells(),
    charge2: cells(),
    metal: new Float64Array(ROWS).fill(1),
    ligand: new Float64Array(COLUMNS).fill(1),
  }
}

export const water = point()
export const endPoint = point()

const K = new Float64Array(N)
const gamma = new Float64Array(kinds.length + 1).fill(1)
const conditional = new Float64Array(N)
/** cyanurate by the number of HOCl taken up: count, base, charge² */
const bound = new Float64Array(4)
const boundBase = new Float64Array(4)
const boundCharge2 = new Float64Array(4)

const steep = new Float64Array(kinds.length)
const reach = new Float64Array(kinds.length)
const linear = new Float64Array(kinds.length)
let temperature = Number.NaN

/** Sets the constants for a temperature in kelvin. */
export function setTemperature(T: number): void {
  if (T === temperature) return
  temperature = T
  const { a, b } = debyeHuckel(T)
  for (let k = 0; k < ONE; k++) {
    const kind = kinds[k]
    if (!kind) continue
    const terms = gammaTerms(kind.activity, kind.charge, a, b)
    steep[k] = terms.steep * Math.LN10
    reach[k] = terms.reach
    linear[k] = terms.linear * Math.LN10
  }
  for (let i = 0; i < N; i++) K[i] = Math.exp(Math.LN10 * (SPECIES[i]?.logK(T) ?? Number.NaN))
}

/** Sets activity coefficients and conditional constants for an ionic strength in mol/L. */
export function setIonicStrength(I: number): void {
  const root = Math.sqrt(I)
  for (let k = 0; k < ONE; k++) {
    gamma[k] = Math.exp((linear[k] ?? 0) * I - ((steep[k] ?? 0) * root) / (1 + (reach[k] ?? 0) * root))
  }
  for (let i = 0; i < N; i++) {
    const free = (gamma[metalKindOf[i] ?? ONE] ?? 1) * (gamma[ligandKindOf[i] ?? ONE] ?? 1)
    conditional[i] = ((K[i] ?? 0) * free) / (gamma[kindOf[i] ?? ONE] ?? 1)
  }
  const hocl = gamma[kindOf[HOCL] ?? ONE] ?? 1
  for (let i = FIRST_CHLORINATED; i < N; i++) conditional[i] = (conditional[i] ?? 0) * hocl ** (hoclOf[i] ?? 0)
}

/** Activity coefficient of a species by its index in SPECIES, at the ionic strength last set. */
export function activityCoefficient(species: number): number {
  return gamma[kindOf[species] ?? 0] ?? Number.NaN
}

/** Fills the cell sums of a point for a pH, and with them what depends on pH alone: borate, cyanurate, chlorine. */
export function setPh(p: Point, h: number, totals: Totals): void {
  const { powers } = p
  p.h = h
  powers[LOWEST_PROTONS] = 1
  for (let n = 1; n <= LOWEST_PROTONS; n++) {
    powers[LOWEST_PROTONS + n] = (powers[LOWEST_PROTONS + n - 1] ?? 0) * h
    powers[LOWEST_PROTONS - n] = (powers[LOWEST_PROTONS - n + 1] ?? 0) / h
  }
  p.count.fill(0)
  p.base.fill(0)
  p.charge2.fill(0)
  for (let i = 0; i < FIRST_CYANURATE; i++) {
    const amount = (conditional[i] ?? 0) * (powers[protonsOf[i] ?? 0] ?? 0)
    const at = cellOf[i] ?? 0
    p.count[at] = (p.count[at] ?? 0) + amount
    p.base[at] = (p.base[at] ?? 0) + amount * (baseOf[i] ?? 0)
    p.charge2[at] = (p.charge2[at] ?? 0) + amount * (charge2Of[i] ?? 0)
  }
  bound.fill(0)
  boundBase.fill(0)
  boundCharge2.fill(0)
  const last = totals.cyanurate > 0 ? (totals.chlorine > 0 ? N : FIRST_CHLORINATED) : FIRST_CYANURATE + 1
  for (let i = FIRST_CYANURATE; i < last; i++) {
    const amount = (conditional[i] ?? 0) * (powers[protonsOf[i] ?? 0] ?? 0)
    const n = hoclOf[i] ?? 0
    bound[n] = (bound[n] ?? 0) + amount
    boundBase[n] = (boundBase[n] ?? 0) + amount * (baseOf[i] ?? 0)
    boundCharge2[n] = (boundCharge2[n] ?? 0) + amount * (charge2Of[i] ?? 0)
  }
  const none = NONE_METAL * COLUMNS
  const hocl = freeHocl(totals.chlorine, totals.cyanurate, p.count[none + CHLORINE] ?? 1)
  p.ligand[CHLORINE] = hocl
  p.count[none + CYANURATE] = polynomial(bound, hocl)
  p.base[none + CYANURATE] = polynomial(boundBase, hocl)
  p.charge2[none + CYANURATE] = polynomial(boundCharge2, hocl)
  p.ligand[CYANURATE] = totals.cyanurate / (p.count[none + CYANURATE] ?? 1)
  p.ligand[BORATE] = totals.borate / (p.count[none + BORATE] ?? 1)
}

function polynomial(of: Float64Array, x: number): number {
  return (of[0] ?? 0) + x * ((of[1] ?? 0) + x * ((of[2] ?? 0) + x * (of[3] ?? 0)))
}

/** [HOCl] from total chlorine and cyanurate at the pH just set: one increasing function of one unknown. */
function freeHocl(chlorine: number, cyanurate: number, forms: number): number {
  if (chlorine <= 0) return 0
  let low = 0
  let high = chlorine / forms
  if (cyanurate <= 0) return high
  let x = high / (1 + (cyanurate * (bound[1] ?? 0)) / ((bound[0] ?? 1) * forms))
  for (let i = 0; i < 60; i++) {
    const all = polynomial(bound, x)
    const taken = x * ((bound[1] ?? 0) + x * (2 * (bound[2] ?? 0) + x * 3 * (bound[3] ?? 0)))
    const excess = x * forms + (cyanurate * taken) / all - chlorine
    if (excess > 0) high = x
    else low = x
    const slopeAll = (bound[1] ?? 0) + x * (2 * (bound[2] ?? 0) + x * 3 * (bound[3] ?? 0))
    const slopeTaken = (bound[1] ?? 0) + x * (4 * (bound[2] ?? 0) + x * 9 * (bound[3] ?? 0))
    const slope = forms + (cyanurate * (slopeTaken * all - taken * slopeAll)) / (all * all)
    const step = excess / slope
    if (Math.abs(step) <= 1e-13 * x || high - low <= 1e-15 * high) return x - step
    const next = x - step
    x = next > low && next < high ? next : (low + high) / 2
  }
  return x
}

/** Frees the metals and sulfate of a point, carbonate held: one sweep; answers with the largest relative change. */
export function sweepMetals(p: Point, totals: Totals): number {
  return Math.max(settleMetal(p, CALCIUM, totals.calcium), sweepBesideCalcium(p, totals))
}

/** The same with calcium held too. */
export function sweepBesideCalcium(p: Point, totals: Totals): number {
  const sulfate = settle(p, SULFATE, totals.sulfate)
  const magnesium = settleMetal(p, MAGNESIUM, totals.magnesium)
  return Math.max(sulfate, magnesium, settleMetal(p, SODIUM, totals.sodium))
}

/** A first guess for a point: nothing paired, no carbonate. */
export function startFree(p: Point, totals: Totals): void {
  p.metal[CALCIUM] = totals.calcium
  p.metal[MAGNESIUM] = totals.magnesium
  p.metal[SODIUM] = totals.sodium
  p.ligand[CARBONATE] = 0
  p.ligand[SULFATE] = totals.sulfate
}

function settle(p: Point, ligand: number, total: number): number {
  const before = p.ligand[ligand] ?? 0
  const free = total / ligandSum(p, p.count, ligand)
  p.ligand[ligand] = free
  return free === before ? 0 : Math.abs(free - before) / Math.max(free, before)
}

function settleMetal(p: Point, metal: number, total: number): number {
  const before = p.metal[metal] ?? 0
  const free = total / metalSum(p, p.count, metal)
  p.metal[metal] = free
  return free === before ? 0 : Math.abs(free - before) / Math.max(free, before)
}

/** Sum over the forms of a ligand, per mol/L of its free form, with a weight. */
export function ligandSum(p: Point, weight: Float64Array, ligand: number): number {
  let sum = 0
  for (let m = 0; m < ROWS; m++) sum += (weight[m * COLUMNS + ligand] ?? 0) * (p.metal[m] ?? 0)
  return sum
}

/** Sum over the forms of a metal, per mol/L of its free form, with a weight. */
export function metalSum(p: Point, weight: Float64Array, metal: number): number {
  let sum = 0
  for (let l = 0; l < COLUMNS; l++) sum += (weight[metal * COLUMNS + l] ?? 0) * (p.ligand[l] ?? 0)
  return sum
}

/** Cell sum of one metal (or none) with one ligand (or none). */
export function cell(weight: Float64Array, metal: number, ligand: number): number {
  return weight[metal * COLUMNS + ligand] ?? 0
}

/** Alkalinity of everything that holds no carbonate, mol/L. */
export function baseBesideCarbonate(p: Point): number {
  let sum = 0
  for (let m = 0; m < ROWS; m++) {
    for (let l = 0; l < COLUMNS; l++) {
      if (l !== CARBONATE) sum += (p.base[m * COLUMNS + l] ?? 0) * (p.metal[m] ?? 0) * (p.ligand[l] ?? 0)
    }
  }
  return sum
}

/** A first guess for the ionic strength: no pairs, alkalinity as bicarbonate. */
export function bareIonicStrength(totals: Totals): number {
  const single = Math.abs(totals.sodium) + Math.abs(totals.chloride) + Math.abs(totals.alkalinity)
  return (single + 4 * (totals.calcium + totals.magnesium + totals.sulfate)) / 2 + 1e-7
}

/** Ionic strength of a point in mol/L, chloride and inert ions included. */
export function ionicStrengthOf(p: Point, totals: Totals): number {
  let sum = totals.chloride + Math.abs(totals.inert)
  for (let m = 0; m < ROWS; m++) {
    for (let l = 0; l < COLUMNS; l++) {
      sum += (p.charge2[m * COLUMNS + l] ?? 0) * (p.metal[m] ?? 0) * (p.ligand[l] ?? 0)
    }
  }
  return sum / 2
}

/** Concentration of a species by its index in SPECIES, mol/L, at the pH and ionic strength last set. */
export function concentration(p: Point, species: number): number {
  const metal = p.metal[rowOf[species] ?? 0] ?? 0
  const ligand = p.ligand[columnOf[species] ?? 0] ?? 0
  const bare = (conditional[species] ?? 0) * (p.powers[protonsOf[species] ?? 0] ?? 0) * metal * ligand
  const hocl = hoclOf[species] ?? 0
  return hocl === 0 ? bare : bare * (p.ligand[CHLORINE] ?? 0) ** hocl
}
