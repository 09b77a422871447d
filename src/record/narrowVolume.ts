import { type Interval, intersection } from './interval'
import type { VolumeEvidence } from './volumeEvidence'

/** What all evidence together says of the volume, m³. */
export type NarrowedVolume =
  | { readonly kind: 'none' }
  /** what was known already is as narrow */
  | { readonly kind: 'as_known'; readonly all: Interval }
  | { readonly kind: 'narrower'; readonly interval: Interval; readonly by: readonly VolumeEvidence[] }
  /** two retests cannot both be right */
  | { readonly kind: 'contradiction'; readonly between: readonly [VolumeEvidence, VolumeEvidence] }
  /** the retests agree with each other and not with the volume that the worksheet has */
  | { readonly kind: 'against_known'; readonly all: Interval; readonly by: readonly VolumeEvidence[] }

/** A narrowing under this share of the interval is not worth a question. */
const WORTH = 0.02

/**
 * Cuts the known interval with that of every retest. It never widens, and what it gives holds the truth as long as every reading was
 * within its test's error. Contradictions are told and never averaged.
 * @param known what the worksheet holds now; null where it has no volume yet
 */
export function narrowVolume(known: Interval | null, evidence: readonly VolumeEvidence[]): NarrowedVolume {
  const [first] = evidence
  if (first === undefined) return { kind: 'none' }
  // intervals that meet two by two all meet in one place, and the highest low and the lowest high tell (Helly's theorem on a line)
  const lowest = evidence.reduce((least, one) => (one.high < least.high ? one : least), first)
  const highest = evidence.reduce((most, one) => (one.low > most.low ? one : most), first)
  if (intersection(lowest, highest) === null) return { kind: 'contradiction', between: [highest, lowest] }
  const all: Interval = { low: highest.low, high: lowest.high }
  const by = evidence.filter(({ low, high }) => low === all.low || high === all.high)
  const both = known === null ? all : intersection(known, all)
  if (both === null) return { kind: 'against_known', all, by }
  if (!Number.isFinite(both.high)) return { kind: 'as_known', all }
  const before = known === null ? Number.POSITIVE_INFINITY : known.high - known.low
  const cut = before - (both.high - both.low)
  return cut > WORTH * before ? { kind: 'narrower', interval: both, by } : { kind: 'as_known', all }
}
