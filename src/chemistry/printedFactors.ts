/**
 * The operator's saturation table: temperature factor, and one table of mg/L for calcium and alkalinity factors.
 * New York State Sanitary Code, 10 NYCRR 6-1.30; the same figures in Montana Administrative Rules 37.115.1308, table 7.
 * The calcium factor is the alkalinity factor less 0.4 in every row: copies with 3.0 for 1000 mg/L are misprints.
 */
export const TEMPERATURE_FACTOR: readonly (readonly [fahrenheit: number, factor: number])[] = [
  [32, 0.0],
  [37, 0.1],
  [46, 0.2],
  [53, 0.3],
  [60, 0.4],
  [66, 0.5],
  [76, 0.6],
  [84, 0.7],
  [94, 0.8],
  [105, 0.9],
  [128, 1.0],
]

/** mg/L as CaCO3 and the factor of calcium hardness. */
export const CALCIUM_FACTOR: readonly (readonly [milligrams: number, factor: number])[] = [
  [5, 0.3],
  [25, 1.0],
  [50, 1.3],
  [75, 1.5],
  [100, 1.6],
  [150, 1.8],
  [200, 1.9],
  [300, 2.1],
  [400, 2.2],
  [800, 2.5],
  [1000, 2.6],
]

/** mg/L as CaCO3 and the factor of alkalinity. */
export const ALKALINITY_FACTOR: readonly (readonly [milligrams: number, factor: number])[] = [
  [5, 0.7],
  [25, 1.4],
  [50, 1.7],
  [75, 1.9],
  [100, 2.0],
  [150, 2.2],
  [200, 2.3],
  [300, 2.5],
  [400, 2.6],
  [800, 2.9],
  [1000, 3.0],
]

/** pH and the mg/L of alkalinity that a mg/L of cyanuric acid makes; operator handbook table, quoted in trade pages. */
export const CYANURATE_FACTOR: readonly (readonly [ph: number, factor: number])[] = [
  [7.0, 0.23],
  [7.2, 0.27],
  [7.4, 0.31],
  [7.6, 0.33],
  [7.8, 0.35],
  [8.0, 0.36],
]

/** mg/L of alkalinity a mg/L of borate as B; printed for pH 7.6 (trade press, 2021), the textbook pK gives 0.10. */
export const BORATE_FACTOR = 0.17
