import { convert } from '../units/convert'
import { isProblem, type Problem, problem } from '../words/problem'
import { type Answer, type Column, type Evaluate, numberIn, withGiven } from './evaluate'
import { isNear, type Sample, sampleOf } from './sample'
import { firstLook, type Seeking, seekingIn } from './seeking'
import { spanPoints } from './spanPoints'

export interface SolveOrder {
  readonly column: Column
  /** what may be varied, and how far, in its canonical unit */
  readonly input: string
  readonly from: number
  readonly to: number
  readonly output: string
  /** in the output's canonical unit, and how near counts as there */
  readonly wanted: number
  readonly tolerance: number
  /** the input's canonical unit, and the one that its value is to be written in */
  readonly canonicalUnit: string
  readonly unit: string
}

export interface Solved {
  /** values of the input, ascending; each checked by a column worked out with it as it is written */
  readonly solutions: readonly { readonly input: number; readonly output: number }[]
  /** every value of these spans gives the output */
  readonly stretches: readonly { readonly from: number; readonly to: number }[]
  /** the output leaps over what is wanted here, from the one value to the other */
  readonly jumps: readonly { readonly at: number; readonly before: number; readonly after: number }[]
  /** spans in which the output has no answer */
  readonly silent: readonly { readonly from: number; readonly to: number; readonly why: Problem }[]
  /** what both ends of the allowed span give */
  readonly ends: readonly [Answer, Answer]
  /** the nearest that was seen; null where nothing had an answer */
  readonly nearest: { readonly input: number; readonly output: number } | null
  readonly columns: number
}

/** Points of the first look along the span. */
const LOOK = 241
/** Points inside each place that is looked at more closely, a round. */
const INSIDE = 15
/** Rounds of a sixteenth each: a place is then as narrow as two neighbouring numbers. */
const MOST_ROUNDS = 14
/** Figures with which a value found is written, the fewest that still give the output. */
const FIGURES = [4, 6, 9, 15]

/**
 * The values of an input that give a wanted output. The span is looked at in points; between each two that lie on either
 * side of what is wanted, and where the output comes near it and turns, columns close in sixteenfold a round. A side
 * change that never comes near is a leap, not a solution. Two solutions that lie between two points of the first look
 * and leave no turn there are not seen.
 */
export async function solveBack(evaluate: Evaluate, order: SolveOrder): Promise<Solved> {
  const { column, input, output, wanted, tolerance } = order
  let columns = 0
  const answersAt = async (xs: readonly number[]): Promise<readonly (Answer | undefined)[]> => {
    columns += xs.length
    const answers = await evaluate(
      xs.map((x) => withGiven(column, input, x)),
      [output],
    )
    return answers.map(([answer]) => answer)
  }
  const samplesAt = async (xs: readonly number[]): Promise<readonly Sample[]> =>
    (await answersAt(xs)).map((answer, i) => sampleOf(xs[i] ?? Number.NaN, answer, wanted))

  const xs = spanPoints(order.from, order.to, LOOK)
  const first = await answersAt(xs)
  const look = xs.map((x, i) => sampleOf(x, first[i], wanted))
  const found = firstLook(look, tolerance)

  let open: readonly Seeking[] = found.open
  const settled: Seeking[] = []
  const lost: Sample[] = []
  for (let round = 0; open.length > 0 && round < MOST_ROUNDS; round++) {
    const inner = open.map(({ a, b }) => spanPoints(a.x, b.x, INSIDE + 2).slice(1, -1))
    const seen = await samplesAt(inner.flat())
    const next: Seeking[] = []
    open.forEach((seeking, i) => {
      const inside = seen.slice(i * INSIDE, (i + 1) * INSIDE)
      const narrowed = seekingIn(seeking, inside, tolerance)
      for (const one of narrowed) (isPoint(one) ? settled : next).push(one)
      // the side changes across a place without an answer
      if (narrowed.length === 0 && seeking.kind === 'crossing') lost.push(...inside.filter(({ why }) => why !== null))
    })
    open = next
  }
  settled.push(...open)

  const span = order.to - order.from
  const candidates: number[] = []
  const jumps: { at: number; before: number; after: number }[] = []
  const edges = new Map<number, number>()
  for (const { kind, a, b, of } of settled) {
    if (kind === 'edge') edges.set(of ?? a.x, isNear(a, tolerance) ? a.x : b.x)
    else {
      const near = nearer(a, b)
      if (isNear(near, tolerance)) candidates.push(near.x)
      else if (kind === 'crossing' && a.off !== null && b.off !== null)
        jumps.push({ at: near.x, before: a.off + wanted, after: b.off + wanted })
    }
  }
  const cell = span / (LOOK - 1)
  candidates.push(...found.lone.filter((x) => !candidates.some((other) => Math.abs(other - x) < 1.01 * cell)))
  const stretches = found.stretches.map(({ from, to }) => ({ from: edges.get(from) ?? from, to: edges.get(to) ?? to }))
  const apart = distinct(candidates, span * 1e-7).filter(
    (x) => !stretches.some(({ from, to }) => x >= from - span * 1e-7 && x <= to + span * 1e-7),
  )
  const solutions = await written(apart, order, answersAt)
  const nearest = look.reduce<Sample | null>(
    (best, one) => (one.off !== null && (best?.off == null || Math.abs(one.off) < Math.abs(best.off)) ? one : best),
    null,
  )
  return {
    solutions,
    stretches,
    jumps,
    silent: [...silentIn(look), ...lost.map(({ x, why }) => ({ from: x, to: x, why: why ?? problem('no_number') }))],
    ends: [first[0] ?? NO_ANSWER, first.at(-1) ?? NO_ANSWER],
    nearest: nearest && nearest.off !== null ? { input: nearest.x, output: nearest.off + wanted } : null,
    columns,
  }
}

const NO_ANSWER: Answer = { problem: problem('no_number') }

function nearer(a: Sample, b: Sample): Sample {
  return Math.abs(a.off ?? Number.POSITIVE_INFINITY) <= Math.abs(b.off ?? Number.POSITIVE_INFINITY) ? a : b
}

/** Nothing lies between its ends any more that a number could name, or need not: both give what is wanted all but exactly. */
function isPoint({ a, b }: Seeking): boolean {
  const size = Math.max(Math.abs(a.x), Math.abs(b.x))
  return b.x - a.x <= size * 4e-16 || (a.off === 0 && b.off === 0)
}

function distinct(xs: readonly number[], apart: number): readonly number[] {
  return [...xs].sort((a, b) => a - b).filter((x, i, all) => i === 0 || x - (all[i - 1] ?? 0) > apart)
}

/** The values as a person would enter them, in as few figures as still give the output, each worked out once more. */
async function written(
  found: readonly number[],
  order: SolveOrder,
  answersAt: (xs: readonly number[]) => Promise<readonly (Answer | undefined)[]>,
): Promise<readonly { input: number; output: number }[]> {
  const forms = found.map((x) => [...FIGURES.map((figures) => inFigures(x, figures, order)), x])
  const answers = await answersAt(forms.flat())
  return forms.flatMap((candidates, i) => {
    const tried = candidates.map((input, j) => ({ input, output: numberIn(answers[i * candidates.length + j]) }))
    const best = tried.find(({ output }) => output !== null && Math.abs(output - order.wanted) <= order.tolerance)
    return best && best.output !== null ? [{ input: best.input, output: best.output }] : []
  })
}

function inFigures(x: number, figures: number, { canonicalUnit, unit, from, to }: SolveOrder): number {
  const shown = convert(x, canonicalUnit, unit)
  if (isProblem(shown)) return x
  const back = convert(Number(shown.toPrecision(figures)), unit, canonicalUnit)
  return isProblem(back) || back < from || back > to ? x : back
}

function silentIn(look: readonly Sample[]): Solved['silent'] {
  const silent: { from: number; to: number; why: Problem }[] = []
  look.forEach((sample, i) => {
    if (sample.why === null) return
    const last = silent.at(-1)
    if (last && last.to === look[i - 1]?.x && last.why.code === sample.why.code) last.to = sample.x
    else silent.push({ from: sample.x, to: sample.x, why: sample.why })
  })
  return silent
}
