import type { LockedFunction } from '../../functions/define'
import { hasWords, say } from '../../words/say'

/** Whether every word that was typed stands in a function's name, words, parameters or source. */
export function matches(f: LockedFunction, typed: string): boolean {
  const key = `function.${f.name}.says`
  const text = [
    f.name,
    f.name.replaceAll('_', ' '),
    hasWords(key) ? say(key) : '',
    ...f.parameters.map(({ name }) => name.replaceAll('_', ' ')),
    f.source,
  ]
    .join(' ')
    .toLowerCase()
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word))
}
