import { isNear, type Sample } from './sample'

/**
 * A place that is looked at more closely. `crossing`: what is wanted lies between the outputs of its ends. `dip`: the output
 * comes near and turns. `edge`: one end lies in a stretch that gives what is wanted, the other does not.
 */
export interface Seeking {
  readonly kind: 'crossing' | 'dip' | 'edge'
  readonly a: Sample
  readonly b: Sample
  /** of an edge: the end of the stretch as it was first seen */
  readonly of?: number
}

/** Places that are followed; a span with more is one that wavers without end. */
const MOST = 64

export interface FirstLook {
  readonly open: readonly Seeking[]
  /** points that happen to give what is wanted, and stand alone */
  readonly lone: readonly number[]
  /** neighbouring points that all give it */
  readonly stretches: readonly { readonly from: number; readonly to: number }[]
}

/** Where along the first points there may be a solution. */
export function firstLook(look: readonly Sample[], tolerance: number): FirstLook {
  const near = look.map((sample) => isNear(sample, tolerance))
  const open: Seeking[] = []
  const lone: number[] = []
  const stretches: { from: number; to: number }[] = []
  look.forEach((sample, i) => {
    const [before, after] = [look[i - 1], look[i + 1]]
    if (near[i]) {
      if (near[i - 1]) {
        const last = stretches.at(-1)
        if (last && last.to === before?.x) last.to = sample.x
        else stretches.push({ from: before?.x ?? sample.x, to: sample.x })
      } else if (!near[i + 1]) lone.push(sample.x)
    }
    if (before && !(near[i] && near[i - 1]) && crosses(before, sample))
      open.push({ kind: 'crossing', a: before, b: sample })
    if (before && after && turnsNear(before, sample, after)) open.push({ kind: 'dip', a: before, b: after })
  })
  for (const { from, to } of stretches) {
    const [first, last] = [look.findIndex(({ x }) => x === from), look.findIndex(({ x }) => x === to)]
    const [start, before, end, after] = [look[first], look[first - 1], look[last], look[last + 1]]
    if (start && before) open.push({ kind: 'edge', a: before, b: start, of: from })
    if (end && after) open.push({ kind: 'edge', a: end, b: after, of: to })
  }
  return { open: open.slice(0, MOST), lone, stretches }
}

/** What is left of a place when points inside it are known. */
export function seekingIn(seeking: Seeking, inside: readonly Sample[], tolerance: number): readonly Seeking[] {
  const all = [seeking.a, ...inside, seeking.b]
  const pairs = all.slice(1).map((b, i) => ({ a: all[i] ?? b, b }))
  if (seeking.kind === 'edge') {
    const edge = pairs.find(({ a, b }) => isNear(a, tolerance) !== isNear(b, tolerance))
    return edge ? [{ ...seeking, ...edge }] : []
  }
  const crossings = pairs.filter(({ a, b }) => crosses(a, b)).map((pair): Seeking => ({ kind: 'crossing', ...pair }))
  if (crossings.length > 0 || seeking.kind === 'crossing') return crossings
  const least = all.reduce(
    (best, { off }, i) => (off !== null && Math.abs(off) < Math.abs(all[best]?.off ?? Infinity) ? i : best),
    0,
  )
  const [a, b] = [all[Math.max(0, least - 1)], all[Math.min(all.length - 1, least + 1)]]
  return a && b && a.off !== null && b.off !== null ? [{ kind: 'dip', a, b }] : []
}

/** On either side of what is wanted, or one of them on it. */
function crosses(a: Sample, b: Sample): boolean {
  if (a.off === null || b.off === null) return false
  return a.off * b.off < 0 || (a.off === 0) !== (b.off === 0)
}

/** Nearest here of three, on one side, and near enough that the curve through them could reach what is wanted. */
function turnsNear(a: Sample, b: Sample, c: Sample): boolean {
  if (a.off === null || b.off === null || c.off === null) return false
  const [before, here, after] = [Math.abs(a.off), Math.abs(b.off), Math.abs(c.off)]
  if (here === 0 || a.off * b.off < 0 || b.off * c.off < 0) return false
  return here <= before && here <= after && here <= 2 * Math.max(before - here, after - here)
}
