import { type Failure, fail } from './failure'
import { outside } from './outside'

/** What the published tables are for: Cryptosporidium after diarrhoea, Giardia after a formed stool. */
export const ORGANISMS = ['cryptosporidium', 'giardia'] as const
export type Organism = (typeof ORGANISMS)[number]

/** A row: at this much free chlorine, mg/L, hold for so many hours. */
type Row = readonly [freeChlorine: number, hours: number]

/** Above this much cyanuric acid, mg/L, no time is published: dilute first (CDC practice as reported in trade press, 2023). */
export const MOST_STABILIZER = 15

/**
 * CDC recommendations for faecal incidents and hyperchlorination. Cryptosporidium without stabilizer: CT 15 300 with its three
 * rows, as a county health department quotes it (Clayton County, diarrhoea response). Giardia: 45 min at 1 mg/L as quoted in training
 * pages, 2 mg/L at pH 7.5 or less (CDC, 15 Nov 2010); its times at 2 and 3 mg/L, and all rows with stabilizer, from memory.
 */
const TABLES: Readonly<Record<Organism, { readonly without: readonly Row[]; readonly stabilized: readonly Row[] }>> = {
  cryptosporidium: {
    without: [
      [1, 255],
      [10, 25.5],
      [20, 12.75],
    ],
    stabilized: [
      [20, 28],
      [30, 18],
      [40, 8.5],
    ],
  },
  giardia: {
    without: [
      [1, 45 / 60],
      [2, 25 / 60],
      [3, 19 / 60],
    ],
    stabilized: [[2, 50 / 60]],
  },
}

/**
 * Hours for which free chlorine has to be held, by the published tables for public pools: the row at or under `freeChlorine`
 * (mg/L, 0 to 100), never between rows, and more chlorine than the last row has does not shorten it.
 *
 * The tables hold at pH 7.5 or less and 25 °C or more, and up to 15 mg/L of cyanuric acid (any at all takes the rows with
 * stabilizer): outside there is no published time and the answer is a failure. No time is ever worked out from HOCl: with
 * stabilizer present that has no basis. The local health department and code come first.
 */
export function contactTime(
  organism: Organism,
  freeChlorine: number,
  cyanuricAcid: number,
  ph: number,
  temperature: number,
): number | Failure {
  const tables = TABLES[organism]
  if (!tables) return fail('out_of_range', 'organism', { value: String(organism) })
  const refused =
    outside('free_chlorine', freeChlorine, 0, 100) ??
    outside('cyanuric_acid', cyanuricAcid, 0, MOST_STABILIZER) ??
    outside('ph', ph, 6.5, 7.5) ??
    outside('temperature', temperature, 25, 45)
  if (refused) return refused
  const rows = cyanuricAcid > 0 ? tables.stabilized : tables.without
  const row = rows.findLast(([at]) => at <= freeChlorine)
  return row?.[1] ?? fail('unreachable', 'free_chlorine', { wanted: rows[0]?.[0] ?? 0, found: freeChlorine })
}
