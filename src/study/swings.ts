import { type Doubt, endsOf } from './doubt'
import { type Answer, type Column, type Evaluate, numberIn, withGiven } from './evaluate'

/** What the output does when one reading is off by its precision and all others are right. */
export interface Swing {
  readonly doubt: Doubt
  /** at the low and at the high end of what the reading may mean */
  readonly low: { readonly input: number; readonly answer: Answer }
  readonly high: { readonly input: number; readonly answer: Answer }
  /** the larger move away from the output as it is; infinite where an end has no answer any more */
  readonly moves: number
}

export interface Swings {
  readonly now: Answer
  /** the one that moves it most first */
  readonly swings: readonly Swing[]
}

export interface SwingsOrder {
  readonly column: Column
  readonly doubts: readonly Doubt[]
  readonly output: string
}

/** One output against each of its readings in turn: two columns a reading. */
export async function swings(evaluate: Evaluate, order: SwingsOrder): Promise<Swings> {
  const { column, doubts, output } = order
  const ends = doubts.map(endsOf)
  const columns = doubts.flatMap(({ quantity }, i) => (ends[i] ?? []).map((end) => withGiven(column, quantity, end)))
  const [[now] = [], ...moved] = await evaluate([column, ...columns], [output])
  if (!now) return { now: NOTHING, swings: [] }
  const here = numberIn(now)
  const found = doubts.map((doubt, i): Swing => {
    const [low, high] = [moved[2 * i]?.[0] ?? NOTHING, moved[2 * i + 1]?.[0] ?? NOTHING]
    const [from, to] = ends[i] ?? [doubt.value, doubt.value]
    const moves = Math.max(...[low, high].map((answer) => moveOf(here, numberIn(answer))))
    return { doubt, low: { input: from, answer: low }, high: { input: to, answer: high }, moves }
  })
  return { now, swings: found.sort((a, b) => b.moves - a.moves) }
}

const NOTHING: Answer = { problem: { code: 'no_number', path: [], facts: {} } }

function moveOf(here: number | null, there: number | null): number {
  if (here === null && there === null) return 0
  return here === null || there === null ? Number.POSITIVE_INFINITY : Math.abs(there - here)
}
