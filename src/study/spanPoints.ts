/** So many values, evenly from one end of a span to the other, both ends exactly. At least two. */
export function spanPoints(from: number, to: number, count: number): readonly number[] {
  const last = Math.max(2, Math.floor(count)) - 1
  return Array.from({ length: last + 1 }, (_, i) => (i === last ? to : from + ((to - from) * i) / last))
}
