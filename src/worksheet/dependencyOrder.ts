/** Longest chain of formulas that read one another, so that no walk along the graph can overflow the stack. */
export const LONGEST_CHAIN = 200

export interface DependencyOrder {
  /** each name after all that it reads; those in a circle, or behind one, are left out */
  readonly order: readonly string[]
  /** each circle once, without its first name again at the end */
  readonly circles: readonly (readonly string[])[]
  /** names whose chain is longer than `LONGEST_CHAIN` */
  readonly tooLong: readonly string[]
}

/** Kahn's algorithm; where it stops, a circle is followed, taken out, and it goes on. No recursion. */
export function dependencyOrder(reads: ReadonlyMap<string, readonly string[]>): DependencyOrder {
  const order: string[] = []
  const circles: string[][] = []
  const tooLong: string[] = []
  const waits = new Map<string, Set<string>>()
  const readers = new Map<string, string[]>()
  const level = new Map<string, number>()
  for (const [name, read] of reads) {
    waits.set(name, new Set(read.filter((other) => reads.has(other))))
    for (const other of read) readers.set(other, [...(readers.get(other) ?? []), name])
  }

  const ready = [...waits].filter(([, open]) => open.size === 0).map(([name]) => name)
  const settle = (name: string) => {
    waits.delete(name)
    for (const reader of readers.get(name) ?? []) {
      const open = waits.get(reader)
      level.set(reader, Math.max(level.get(reader) ?? 0, (level.get(name) ?? 0) + 1))
      if (open?.delete(name) && open.size === 0) ready.push(reader)
    }
  }
  while (waits.size > 0) {
    for (let i = 0; i < ready.length; i++) {
      const name = ready[i] ?? ''
      order.push(name)
      if ((level.get(name) ?? 0) > LONGEST_CHAIN) tooLong.push(name)
      settle(name)
    }
    ready.length = 0
    const circle = followCircle(waits)
    if (circle.length === 0) break
    circles.push(circle)
    for (const name of circle) waits.delete(name)
    for (const name of circle) settle(name)
  }
  return { order, circles, tooLong }
}

/** Every name left waits for another one left, so following them must come back. */
function followCircle(waits: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  const trail: string[] = []
  const seen = new Map<string, number>()
  let [name] = waits.keys()
  while (name !== undefined) {
    const start = seen.get(name)
    if (start !== undefined) return trail.slice(start)
    seen.set(name, trail.length)
    trail.push(name)
    ;[name] = waits.get(name) ?? []
  }
  return []
}
