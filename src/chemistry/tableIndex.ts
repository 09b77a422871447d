import { type Failure, fail, isFailure } from './failure'
import { outside } from './outside'
import {
  ALKALINITY_FACTOR,
  BORATE_FACTOR,
  CALCIUM_FACTOR,
  CYANURATE_FACTOR,
  TEMPERATURE_FACTOR,
} from './printedFactors'

/** Readings as the printed table takes them: °C, and mg/L with hardness and alkalinity as CaCO3, borate as B. */
export interface TableIndexReadings {
  readonly ph: number
  readonly temperature: number
  readonly calciumHardness: number
  readonly totalAlkalinity: number
  readonly cyanuricAcid: number
  readonly borate: number
  readonly tds: number
}

/**
 * Saturation index by the printed factors: pH + temperature, calcium and alkalinity factors - 12.1 (dissolved solids under
 * 1000 mg/L) or 12.2.
 *
 * Linear in °F and mg/L between rows, as the New York code's worked example is. Alkalinity is the total less the published
 * cyanurate factor × cyanuric acid and less 0.17 × borate. Off the table nothing is answered: temperature 0 to
 * 53.3 °C, calcium and remaining alkalinity 5 to 1000 mg/L, and pH 7.0 to 8.0 where there is cyanuric acid. Where
 * cyanurate and borate take all the alkalinity there is no such water.
 */
export function tableIndex(readings: TableIndexReadings): number | Failure {
  const { ph, temperature, calciumHardness, totalAlkalinity, cyanuricAcid, borate, tds } = readings
  const refused =
    outside('ph', ph, 5, 10) ??
    outside('total_alkalinity', totalAlkalinity, 5, 2_000) ??
    outside('cyanuric_acid', cyanuricAcid, 0, 1_000) ??
    outside('borate', borate, 0, 500) ??
    outside('tds', tds, 0, 100_000)
  if (refused) return refused
  const cyanurate = cyanuricAcid === 0 ? 0 : between(CYANURATE_FACTOR, ph, 'ph')
  if (isFailure(cyanurate)) return cyanurate
  const alkalinity = totalAlkalinity - cyanurate * cyanuricAcid - BORATE_FACTOR * borate
  if (alkalinity <= 0) return fail('no_such_water', 'total_alkalinity', { total: totalAlkalinity, left: alkalinity })
  const warmth = between(TEMPERATURE_FACTOR, 32 + 1.8 * temperature, 'temperature', (f) => (f - 32) / 1.8)
  const calcium = between(CALCIUM_FACTOR, calciumHardness, 'calcium_hardness')
  const base = between(ALKALINITY_FACTOR, alkalinity, 'total_alkalinity')
  if (isFailure(warmth)) return warmth
  if (isFailure(calcium)) return calcium
  if (isFailure(base)) return base
  return ph + warmth + calcium + base - (tds < 1_000 ? 12.1 : 12.2)
}

/** The factor at `x`, on the straight line between two rows; `asRead` turns the table's scale into the reader's. */
function between(
  table: readonly (readonly [number, number])[],
  x: number,
  quantity: string,
  asRead: (x: number) => number = (x) => x,
): number | Failure {
  const after = table.findIndex(([at]) => at >= x)
  const upper = table[after]
  const lower = table[after - 1] ?? (upper?.[0] === x ? upper : undefined)
  if (lower && upper) {
    return upper === lower ? upper[1] : lower[1] + ((upper[1] - lower[1]) * (x - lower[0])) / (upper[0] - lower[0])
  }
  if (Number.isNaN(x)) return fail('not_a_number', quantity)
  const [first, last] = [table[0]?.[0] ?? 0, table.at(-1)?.[0] ?? 0]
  return fail('out_of_range', quantity, { value: asRead(x), min: asRead(first), max: asRead(last) })
}
