import { type Problem, problem } from '../words/problem'
import { type Answer, type Column, type Evaluate, numberIn, withGiven } from './evaluate'

export interface SweepOrder {
  /** one a scenario */
  readonly columns: readonly Column[]
  readonly input: string
  /** what the input is set to, in its canonical unit, ascending */
  readonly values: readonly number[]
  readonly outputs: readonly string[]
}

/** Neighbouring points without an answer, for one reason; places among the values, both ends included. */
export interface Gap {
  readonly from: number
  readonly to: number
  readonly why: Problem
}

/** One output of one scenario along the span. */
export interface Line {
  /** place of the scenario among the columns */
  readonly column: number
  readonly output: string
  /** null where there is no answer */
  readonly values: readonly (number | null)[]
  readonly gaps: readonly Gap[]
  /** where the scenario itself stands, worked out as it is; null where it has no such input or no answer */
  readonly now: { readonly at: number; readonly value: number } | null
}

/** Outputs against one input, scenario by scenario: every point is one more column, and so is where each scenario stands. */
export async function sweep(evaluate: Evaluate, order: SweepOrder): Promise<readonly Line[]> {
  const { columns, input, values, outputs } = order
  const lines: Line[] = []
  // scenario by scenario, so that no more columns are held than one line has points
  for (const [column, given] of columns.entries()) {
    const answers = await evaluate([...values.map((value) => withGiven(given, input, value)), given], outputs)
    outputs.forEach((output, o) => {
      const along = values.map((_, i) => answers[i]?.[o])
      const at = given.get(input)
      const value = numberIn(answers[values.length]?.[o])
      lines.push({
        column,
        output,
        values: along.map(numberIn),
        gaps: gapsOf(along),
        now: typeof at === 'number' && value !== null ? { at, value } : null,
      })
    })
  }
  return lines
}

function gapsOf(along: readonly (Answer | undefined)[]): readonly Gap[] {
  const gaps: Gap[] = []
  along.forEach((answer, i) => {
    if (numberIn(answer) !== null) return
    const why = answer && 'problem' in answer ? answer.problem : problem('no_number')
    const last = gaps.at(-1)
    if (last && last.to === i - 1 && sameReason(last.why, why)) gaps[gaps.length - 1] = { ...last, to: i }
    else gaps.push({ from: i, to: i, why })
  })
  return gaps
}

/** Reasons that differ only in the figure that was found are one. */
function sameReason(a: Problem, b: Problem): boolean {
  return a.code === b.code && a.facts.quantity === b.facts.quantity && a.facts.name === b.facts.name
}
