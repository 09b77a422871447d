import type { Cell } from '../../notebook/notebook'
import { wordOf } from './cellView'

/** A choice by its id or by its words. What is none of them stays as it is written, and is refused as a choice. */
export function readChoice(text: string, quantity: string, choices: readonly string[]): Cell | null {
  const typed = folded(text)
  if (typed === '') return null
  if (typed === '-') return { kind: 'not_taken' }
  const id = choices.find((choice) => folded(choice) === typed || folded(wordOf(quantity, choice)) === typed)
  return { kind: 'choice', id: id ?? text.trim() }
}

function folded(text: string): string {
  return text.trim().toLocaleLowerCase()
}
