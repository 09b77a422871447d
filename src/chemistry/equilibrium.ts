import { debyeHuckel, gammaTerms } from './activity'
import { SPECIES } from './species'
import {
  BORATE,
  baseOf,
  CALCIUM,
  CARBONATE,
  CELLS,
  CHLORINE,
  COLUMNS,
  CYANURATE,
  cellOf,
  charge2Of,
  columnOf,
  FIRST_CHLORINATED,
  HOCL,
  hoclOf,
  kindOf,
  kinds,
  LOWEST_PROTONS,
  ligandKindOf,
  MAGNESIUM,
  metalKindOf,
  NONE_METAL,
  ONE,
  protonsOf,
  ROWS,
  rowOf,
  SODIUM,
  SULFATE,
  speciesOf,
} from './speciesArrays'
import { NO_TOTALS, type Totals } from './totals'

/**
 * The inner loop that all solves of the water share. Everything lives in arrays made once, because it runs hundreds of
 * thousands of times a second; nothing here is kept between solves but the constants of the last temperature.
 *
 * Every species is (metal or none) x (ligand or none) x H+^protons, so a water of known pH and ionic strength is a table
 * of 4 x 6 cells: the sum of the conditional constants of the species in that cell, once each weighted with 1, with
 * its base and with its charge squared. Mass balances are then row and column sums, linear in each free concentration.
 */
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

const N = SPECIES.length
const K = new Float64Array(N)
const gamma = new Float64Array(kinds.length + 1).fill(1)
const conditional = new Float64Array(N)
/** cyanurate by the number of HOCl taken up: count, base, charge² */
const bound = new Float64Array(4)
const boundBase = new Float64Array(4)
const boundCharge2 = new Float64Array(4)

/** the species of the water that is being solved */
let looked = speciesOf(NO_TOTALS)

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

/** Sets activity coefficients and conditional constants for an ionic strength in mol/L; `startFree` comes before. */
export function setIonicStrength(I: number): void {
  const root = Math.sqrt(I)
  for (let k = 0; k < ONE; k++) {
    gamma[k] = Math.exp((linear[k] ?? 0) * I - ((steep[k] ?? 0) * root) / (1 + (reach[k] ?? 0) * root))
  }
  for (let n = 0; n < looked.plain.length; n++) setConditional(looked.plain[n] ?? 0)
  for (let n = 0; n < looked.cyanurates.length; n++) setConditional(looked.cyanurates[n] ?? 0)
}

function setConditional(i: number): void {
  const free = (gamma[metalKindOf[i] ?? ONE] ?? 1) * (gamma[ligandKindOf[i] ?? ONE] ?? 1)
  const bare = ((K[i] ?? 0) * free) / (gamma[kindOf[i] ?? ONE] ?? 1)
  conditional[i] = i < FIRST_CHLORINATED ? bare : bare * (gamma[kindOf[HOCL] ?? ONE] ?? 1) ** (hoclOf[i] ?? 0)
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
  for (let n = 0; n < looked.plain.length; n++) {
    const i = looked.plain[n] ?? 0
    const amount = (conditional[i] ?? 0) * (powers[protonsOf[i] ?? 0] ?? 0)
    const at = cellOf[i] ?? 0
    p.count[at] = (p.count[at] ?? 0) + amount
    p.base[at] = (p.base[at] ?? 0) + amount * (baseOf[i] ?? 0)
    p.charge2[at] = (p.charge2[at] ?? 0) + amount * (charge2Of[i] ?? 0)
  }
  bound.fill(0)
  boundBase.fill(0)
  boundCharge2.fill(0)
  for (let k = 0; k < looked.cyanurates.length; k++) {
    const i = looked.cyanurates[k] ?? 0
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
  p.ligand[CYANURATE] = freeOf(totals.cyanurate, p.count[none + CYANURATE] ?? 1)
  p.ligand[BORATE] = freeOf(totals.borate, p.count[none + BORATE] ?? 1)
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

/** What is free of a total when the forms come to `forms` per mol/L of it; the forms of what is not there are not summed. */
function freeOf(total: number, forms: number): number {
  return total === 0 ? 0 : total / forms
}

/** A first guess for a point, nothing paired, no carbonate; and the choice of the species that there are. */
export function startFree(p: Point, totals: Totals): void {
  looked = speciesOf(totals)
  p.metal[CALCIUM] = totals.calcium
  p.metal[MAGNESIUM] = totals.magnesium
  p.metal[SODIUM] = totals.sodium
  p.ligand[CARBONATE] = 0
  p.ligand[SULFATE] = totals.sulfate
}

function settle(p: Point, ligand: number, total: number): number {
  const before = p.ligand[ligand] ?? 0
  const free = freeOf(total, ligandSum(p, p.count, ligand))
  p.ligand[ligand] = free
  return free === before ? 0 : Math.abs(free - before) / Math.max(free, before)
}

function settleMetal(p: Point, metal: number, total: number): number {
  const before = p.metal[metal] ?? 0
  const free = freeOf(total, metalSum(p, p.count, metal))
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
  const hocl = hoclOf[species] ?? 0
  const taken = hocl === 0 ? 1 : (p.ligand[CHLORINE] ?? 0) ** hocl
  // The constants of what a water does not hold are not kept up to date, and may be those of any water before it.
  if (metal === 0 || ligand === 0 || taken === 0) return 0
  return (conditional[species] ?? 0) * (p.powers[protonsOf[species] ?? 0] ?? 0) * metal * ligand * taken
}
