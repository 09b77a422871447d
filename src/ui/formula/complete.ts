import type { Candidate } from './candidates'

/** What could stand at a place of a formula. */
export interface Completions {
  /** from where the text is replaced */
  readonly from: number
  readonly options: readonly Candidate[]
}

/**
 * What the word that ends at `at` could become, best first; null where no word stands and none was asked for. After
 * `baseline.` or another scenario's name only quantities can follow.
 */
export function complete(text: string, at: number, all: readonly Candidate[], asked = false): Completions | null {
  let from = at
  while (isWordCharacter(text[from - 1])) from -= 1
  const word = text.slice(from, at).toLowerCase()
  const before = text[from - 1]
  if (before === "'" && isOpening(text, from - 1)) {
    const options = ranked(
      all.filter(({ name }) => name.startsWith("'")),
      word,
    )
    return options.length > 0 ? { from: from - 1, options } : null
  }
  if (before === '.') {
    const owner = ownerBefore(text, from - 1)
    if (owner === null) return null
    const solve = all.filter(({ name }) => name.startsWith(`${owner}.`))
    if (solve.length > 0 && owner !== 'baseline') {
      const options = solve.map((one) => ({ ...one, name: one.name.slice(owner.length + 1) }))
      return { from, options: ranked(options, word) }
    }
    return {
      from,
      options: ranked(
        all.filter((one) => one.kind === 'quantity' && !one.name.includes('.')),
        word,
      ),
    }
  }
  // A digit begins a number.
  if ((word === '' && !asked) || /^\d/.test(word)) return null
  const options = ranked(all, word)
  return options.length > 0 ? { from, options } : null
}

const MOST = 60

function ranked(all: readonly Candidate[], word: string): readonly Candidate[] {
  return all
    .map((one, at) => ({ one, at, rank: rank(one, word) }))
    .filter((entry) => entry.rank < NONE)
    .sort((a, b) => a.rank - b.rank || a.one.name.length - b.one.name.length || a.at - b.at)
    .slice(0, MOST)
    .map(({ one }) => one)
}

const NONE = 9

/** Of equal ones the shorter stands first. By the start of the name, of a part of it, of a word of what it is called; then anywhere inside. */
function rank({ name, says, kind }: Candidate, word: string): number {
  const written = name.toLowerCase()
  if (written === word) return -1
  if (written.startsWith(word)) return 0
  if (written.split(/[_.']/).some((part) => part.startsWith(word))) return 1
  const called = says.toLowerCase()
  if (kind !== 'function' && called.split(/[^\p{L}\d]+/u).some((part) => part.startsWith(word))) return 2
  return written.includes(word) && word.length > 1 ? 3 : NONE
}

/** The scenario or solve whose name ends before the point; null where there is none. */
function ownerBefore(text: string, point: number): string | null {
  if (text[point - 1] === "'") return "'"
  let from = point
  while (isWordCharacter(text[from - 1])) from -= 1
  const owner = text.slice(from, point)
  return owner === '' || /^\d/.test(owner) ? null : owner
}

/** Whether a quotation mark opens a scenario's name: an even number of them stands before it. */
function isOpening(text: string, at: number): boolean {
  return text.slice(0, at).split("'").length % 2 === 1
}

function isWordCharacter(c: string | undefined): boolean {
  return c !== undefined && /[A-Za-z0-9_]/.test(c)
}
