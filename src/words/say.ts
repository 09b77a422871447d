import type { en } from './en/catalogue'
import { start } from './en/start'
import type { Fact, Problem } from './problem'
import { numberText } from './written'

/** A key of the catalogue. Keys that are built from a name (a quantity, a code) are plain strings. */
export type Key = keyof typeof en

const words: Record<string, string> = { ...start }
/** the reader's language, where it is another than English */
let translated: Readonly<Record<string, string>> = {}

/** Brings a part of the catalogue that is not there from the start: a page's own, once it is opened. */
export function addWords(part: Readonly<Record<string, string>>): void {
  Object.assign(words, part)
}

/** From here on all is said in the language of this catalogue: every key of ours, in other words. */
export function translate(catalogue: Readonly<Record<string, string>>): void {
  translated = catalogue
}

/**
 * The text for a key, with `{name}` places filled from `facts`. A place `{count|one|many}` takes the second
 * part when the fact is 1, else the third.
 * @throws RangeError when the catalogue lacks the key: a missing word is a defect of ours, not of the reader's.
 */
export function say(key: Key | (string & {}), facts: Readonly<Record<string, Fact>> = {}): string {
  const text = translated[key] ?? words[key]
  if (text === undefined) throw new RangeError(`the catalogue has no entry "${key}"`)
  return text.replace(/\{(\w+)(?:\|([^|}]*)\|([^}]*))?\}/g, (_, name: string, one?: string, many?: string) => {
    const fact = facts[name]
    if (one !== undefined) return (fact === 1 ? one : (many ?? '')).replace('#', written(fact))
    return written(fact)
  })
}

/** Whether the catalogue has a text for this key. */
export function hasWords(key: string): boolean {
  return (translated[key] ?? words[key]) !== undefined
}

/**
 * The one place where a problem becomes a sentence, that of its code and quantity where there is one. Without a place it starts at its own words, the first with a
 * capital unless it is a sign such as pH or a name such as total_alkalinity.
 */
export function sentence(problem: Problem): string {
  const own = `problem.${problem.code}.${problem.facts.quantity}`
  const key = hasWords(own) ? own : `problem.${problem.code}`
  const text = say(key, { ...factsInWords(problem), path: place(problem.path) })
  if (problem.path.length > 0 || !text.startsWith(': ')) return text
  return text.slice(2).replace(/^\p{Ll}+(?![\p{L}\d_])/u, (word) => word.charAt(0).toUpperCase() + word.slice(1))
}

/** Units and kinds of units that are codes in a problem: said in facts named `..._unit` and `..._kind`. */
function unitWord(name: string, fact: Fact): Fact {
  if (name.endsWith('_unit') && WORDED.includes(fact)) return say(`unit.${fact}`)
  return name.endsWith('_kind') && hasWords(`unit_kind.${fact}`) ? say(`unit_kind.${fact}`) : fact
}

/** Units without a sign of their own, in facts named `..._unit`. */
const WORDED: readonly Fact[] = ['1', 'choice', 'truth']

/** Facts as a sentence has them. */
export function factsInWords({ code, facts }: Pick<Problem, 'code' | 'facts'>): Problem['facts'] {
  const told = Object.entries(facts).map(([name, fact]): [string, Fact] => [
    name,
    unitWord(name, factWord(code, name, fact)),
  ])
  return Object.fromEntries(told)
}

/** What a sentence says for a fact, by the problem's code and the fact's name. */
export type FactWord = (code: string, name: string, fact: Fact) => Fact

let factWord: FactWord = (_code, _name, fact) => fact

/** From here on facts are said so. A command's reader has columns, named as in formulas; the page's has rows with labels. */
export function sayFacts(by: FactWord): void {
  factWord = by
}

/** A place inside a file as a reader writes it: `mine.json, groups[0].rows[2].unit`. */
function place(path: Problem['path']): string {
  const [file, ...rest] = path
  const inside = rest.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`),
    '',
  )
  return inside === '' ? String(file ?? '') : `${file}, ${inside}`
}

function written(fact: Fact | undefined): string {
  if (fact === undefined) return ''
  if (typeof fact === 'number') return number(fact)
  return Array.isArray(fact) ? fact.join(', ') : String(fact)
}

/** Numbers in sentences: at most six significant digits, a true minus sign. */
function number(value: number): string {
  return numberText(value, { maximumSignificantDigits: 6, useGrouping: false })
}
