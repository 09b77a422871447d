import type { Value } from '../functions/define'
import type { Problem } from '../words/problem'
import { hasValue, type Notice, type Outcome } from './outcome'

/** What an entry of a result column holds. */
export const RESULT = {
  /** nothing was asked yet */
  none: 0,
  number: 1,
  truth: 2,
  /** a place in `texts` */
  text: 3,
  /** a place in `problems` */
  problem: 4,
} as const

export interface ResultColumn {
  readonly quantity: string
  /** the number in the canonical unit; 0 or 1 of a truth; else a place in the list that the state names */
  readonly values: Float64Array<ArrayBuffer>
  /** one of RESULT for each sample */
  readonly states: Uint8Array<ArrayBuffer>
}

/** The outcomes of a long run as columns, one entry a sample. It crosses between threads without being copied. */
export interface Results {
  readonly count: number
  readonly columns: readonly ResultColumn[]
  /** for each sample a place in `noticeSets`; 0 is none at all */
  readonly notices: Int32Array<ArrayBuffer>
  readonly noticeSets: readonly (readonly Notice[])[]
  readonly problems: readonly Problem[]
  readonly texts: readonly string[]
}

export interface ResultsBuilder {
  put(sample: number, outcomes: readonly Outcome[], notices: Iterable<Notice>): void
  finish(): Results
}

/** @param wanted the quantities, in the order in which their outcomes come */
export function createResults(count: number, wanted: readonly string[]): ResultsBuilder {
  const columns = wanted.map((quantity) => ({
    quantity,
    values: new Float64Array(count).fill(Number.NaN),
    states: new Uint8Array(count),
  }))
  const notices = new Int32Array(count)
  const noticeSets = listOf<readonly Notice[]>((set) => set.join(' '))
  const problems = listOf<Problem>((problem) => JSON.stringify(problem))
  const texts = listOf<string>((text) => text)
  noticeSets.place([])

  function numberOf(value: Value): number {
    return typeof value === 'string' ? texts.place(value) : Number(value)
  }

  return {
    put(sample, outcomes, raised) {
      for (let i = 0; i < columns.length; i++) {
        const column = columns[i]
        const outcome = outcomes[i]
        if (!column || !outcome) continue
        const held = hasValue(outcome)
        column.states[sample] = held ? stateOf(outcome.value) : RESULT.problem
        column.values[sample] = held ? numberOf(outcome.value) : problems.place(outcome.problem)
      }
      notices[sample] = noticeSets.place([...raised])
    },
    finish: () => ({
      count,
      columns,
      notices,
      noticeSets: noticeSets.all,
      problems: problems.all,
      texts: texts.all,
    }),
  }
}

/** The memory that can be handed to another thread. */
export function transferableResults({ columns, notices }: Results): ArrayBuffer[] {
  return [notices.buffer, ...columns.flatMap(({ values, states }) => [values.buffer, states.buffer])]
}

function stateOf(value: Value): number {
  if (typeof value === 'number') return RESULT.number
  return typeof value === 'boolean' ? RESULT.truth : RESULT.text
}

/** Things that come again and again, each kept once; the last one is most likely the next. */
function listOf<T>(keyOf: (one: T) => string): { readonly all: T[]; place(one: T): number } {
  const all: T[] = []
  const places = new Map<string, number>()
  const byIdentity = new Map<T, number>()
  return {
    all,
    place(one) {
      const same = byIdentity.get(one)
      if (same !== undefined) return same
      const key = keyOf(one)
      const known = places.get(key)
      const place = known ?? all.length
      if (known === undefined) {
        all.push(one)
        places.set(key, place)
        byIdentity.set(one, place)
      }
      return place
    },
  }
}
