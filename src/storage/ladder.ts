import type { State } from './records'

const MINUTE = 60_000
const HOUR = 60 * MINUTE
const DAY = 24 * HOUR

/** How many of the last states are kept whatever their age, and then one of each span, so many spans back. */
const LAST = 10
const RUNGS = [
  { span: HOUR, back: 24 },
  { span: DAY, back: 14 },
  { span: 7 * DAY, back: 26 },
  { span: 30 * DAY, back: 24 },
] as const

/** Characters that the states of one notebook may take together; the last few stay even when they are larger. */
const MOST_CHARACTERS = 4_000_000
const ALWAYS = 3

type Rung = Pick<State, 'seq' | 'at'> & { readonly size: number }

/**
 * Which of a notebook's earlier states stay: the last ten, the last one of each hour of a day, of each day of two weeks,
 * of each week of half a year and of each month of two years, as far back as they fit into the room that one has.
 * @param now milliseconds since 1970
 * @returns their sequence numbers, the latest first
 */
export function ladder(states: readonly Rung[], now: number): readonly number[] {
  const latest = [...states].sort((a, b) => b.seq - a.seq)
  const standing = new Set(latest.slice(0, LAST))
  for (const { span, back } of RUNGS) {
    const taken = new Set<number>()
    for (const state of latest) {
      const slot = Math.floor(state.at / span)
      if (taken.has(slot) || slot <= Math.floor(now / span) - back) continue
      taken.add(slot)
      standing.add(state)
    }
  }
  let room = MOST_CHARACTERS
  const fitting = latest
    .filter((state) => standing.has(state))
    .filter(({ size }, index) => {
      room -= size
      return index < ALWAYS || room >= 0
    })
  return fitting.map(({ seq }) => seq)
}
