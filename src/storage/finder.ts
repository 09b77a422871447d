import { folded } from './folded'

/** Finds among entries as one types. */
export interface Finder {
  /** places in the list it was made of: those that have every word of the query, then those one letter off */
  find(query: string): Int32Array
}

/** A shorter word has too many others one letter off, and so has a number. */
const SHORTEST_MISSPELT = 4
/** An exact answer this long needs no misspelt ones behind it. */
const ENOUGH = 20

/**
 * The entries as one text, a line each: one pass of the browser's own string search over all of them, instead of one a pool.
 * @param entries in the order in which equal finds are given
 */
export function createFinder(entries: readonly { readonly name: string; readonly words: string }[]): Finder {
  const text = `\n${entries.map(({ words }) => words).join('\n')}\n`
  const ends = new Int32Array(entries.length)
  let end = 0
  entries.forEach(({ words }, at) => {
    end += words.length + 1
    ends[at] = end
  })
  let vocabulary: ReadonlyMap<string, readonly number[]> | null = null

  /** For each entry 0, or how well it holds the word: 1 inside another, 2 at the beginning of a word, 3 of the name. */
  function held(word: string): Uint8Array {
    const ranks = new Uint8Array(entries.length)
    let row = 0
    for (let at = text.indexOf(word); at !== -1; ) {
      while ((ends[row] ?? at) < at) row++
      if (row >= entries.length) break
      const start = row === 0 ? 0 : (ends[row - 1] ?? 0)
      const before = text.charAt(at - 1)
      const rank = at - 1 === start ? 3 : before === ' ' ? 2 : 1
      if (rank > (ranks[row] ?? 0)) ranks[row] = rank
      // of one entry only a better place counts
      const next = rank > 1 ? (ends[row] ?? at) : at + 1
      at = text.indexOf(word, next)
    }
    return ranks
  }

  function misspelt(word: string): Uint8Array {
    const ranks = new Uint8Array(entries.length)
    if (word.length < SHORTEST_MISSPELT || /\d/.test(word)) return ranks
    vocabulary ??= wordsOf(entries)
    for (const [known, rows] of vocabulary) {
      if (oneOff(word, known)) for (const row of rows) ranks[row] = 1
    }
    return ranks
  }

  return {
    find(query) {
      const words = folded(query).split(' ').filter(Boolean)
      if (words.length === 0) return Int32Array.from(entries.keys())
      const exact = words.map(held)
      const found = inRank(entries.length, (row) => {
        let sum = 0
        for (const ranks of exact) {
          const rank = ranks[row] ?? 0
          if (rank === 0) return 0
          sum += rank
        }
        return sum
      })
      if (found.length >= ENOUGH) return found
      const near = words.map(misspelt)
      const taken = new Set(found)
      const more = inRank(entries.length, (row) =>
        !taken.has(row) && exact.every((ranks, i) => (ranks[row] ?? 0) + (near[i]?.[row] ?? 0) > 0) ? 1 : 0,
      )
      const all = new Int32Array(found.length + more.length)
      all.set(found)
      all.set(more, found.length)
      return all
    },
  }
}

/** Rows whose rank is over 0, the best first, those of one rank in their order. */
function inRank(count: number, rankOf: (row: number) => number): Int32Array {
  const byRank = new Map<number, number[]>()
  for (let row = 0; row < count; row++) {
    const rank = rankOf(row)
    if (rank === 0) continue
    const rows = byRank.get(rank)
    if (rows) rows.push(row)
    else byRank.set(rank, [row])
  }
  return Int32Array.from([...byRank].sort(([a], [b]) => b - a).flatMap(([, rows]) => rows))
}

function wordsOf(entries: readonly { readonly words: string }[]): ReadonlyMap<string, readonly number[]> {
  const all = new Map<string, number[]>()
  entries.forEach(({ words }, row) => {
    for (const word of words.split(' ')) {
      if (word.length < SHORTEST_MISSPELT - 1 || /\d/.test(word)) continue
      const rows = all.get(word)
      if (rows === undefined) all.set(word, [row])
      else if (rows[rows.length - 1] !== row) rows.push(row)
    }
  })
  return all
}

/**
 * Whether one letter put in, left out, changed or changed places makes of the one word the other, or the beginning of the
 * other (it is still being typed).
 */
export function oneOff(typed: string, known: string): boolean {
  if (known.length < typed.length - 1) return false
  let at = 0
  while (at < typed.length && typed.charCodeAt(at) === known.charCodeAt(at)) at++
  const changed = goesOn(typed, at + 1, known, at + 1)
  const putIn = goesOn(typed, at + 1, known, at)
  const leftOut = goesOn(typed, at, known, at + 1)
  if (changed || putIn || leftOut) return true
  const swapped = typed[at + 1] === known[at] && typed[at] === known[at + 1]
  return swapped && goesOn(typed, at + 2, known, at + 2)
}

/** Whether the rest of what was typed is what the word goes on with. */
function goesOn(typed: string, from: number, known: string, at: number): boolean {
  for (let i = from, j = at; i < typed.length; i++, j++) if (typed.charCodeAt(i) !== known.charCodeAt(j)) return false
  return true
}
