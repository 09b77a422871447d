import type { Reading } from './notebook'

/** How exact a reading by a method is: the half width of what it tells, canonical; undefined where that is not known. */
export type Exactness = (method: string | undefined, value: number) => number | undefined

export interface Advice {
  /** place of the reading to believe */
  readonly best: number
  readonly why: 'number' | 'bleaches' | 'finer' | 'first'
  /** they differ by more than both tests can err */
  readonly apart: boolean
}

/** Over this the dyes of the usual chlorine tests bleach, mg/L (trade press); a titration with iron does not. */
const BLEACHES_FROM = 10
const CHLORINE = new Set(['free_chlorine', 'total_chlorine'])

/**
 * Which of several readings of one quantity to believe, and why: a number before a limit, a titration where the dyes of the
 * other chlorine tests bleach, else the test that tells finer. It is advice; the choice is the reader's. Null where there is
 * nothing to choose from.
 */
export function believe(quantity: string, readings: readonly Reading[], exactness: Exactness): Advice | null {
  const all = readings.flatMap((reading, at) => (reading.kind === 'choice' ? [] : [{ reading, at }]))
  if (all.length < 2) return null
  const half = ({ method, canonical }: Told) => exactness(method, canonical) ?? Number.POSITIVE_INFINITY
  const apart = all.some((a) => all.some((b) => differ(a.reading, b.reading, half)))
  const numbers = all.filter(({ reading }) => reading.kind === 'value')
  const high = CHLORINE.has(quantity) && all.some(({ reading }) => reading.canonical > BLEACHES_FROM)
  const titrated = numbers.find(({ reading }) => reading.method?.startsWith('drop_test'))
  if (high && titrated) return { best: titrated.at, why: 'bleaches', apart }
  const [first, ...rest] = numbers
  if (!first) return { best: all[0]?.at ?? 0, why: 'first', apart }
  if (rest.length === 0) return { best: first.at, why: 'number', apart }
  const best = rest.reduce((finest, next) => (half(next.reading) < half(finest.reading) ? next : finest), first)
  const finer = numbers.some(({ reading }) => half(reading) > half(best.reading))
  return { best: best.at, why: finer ? 'finer' : 'first', apart }
}

type Told = Exclude<Reading, { kind: 'choice' }>

function differ(a: Told, b: Told, half: (reading: Told) => number): boolean {
  if (a.kind === 'value' && b.kind === 'value') {
    const allowed = half(a) + half(b)
    return Math.abs(a.canonical - b.canonical) > (Number.isFinite(allowed) ? allowed : 0)
  }
  if (a.kind !== 'limit' || b.kind !== 'value') return false
  return a.side === 'above' ? b.canonical < a.canonical : b.canonical > a.canonical
}
