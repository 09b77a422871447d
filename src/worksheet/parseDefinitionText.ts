import { isProblem, type Problem } from '../words/problem'
import type { Definition } from './definition'
import { readDefinition } from './readDefinition'
import { readJson } from './readJson'

/** A definition file's largest size in characters, and the deepest nesting of its JSON. */
const MOST = { characters: 1_000_000, depth: 16 }

/**
 * A worksheet definition from the text of a file that may be hostile.
 * @param file the name that a problem's path starts with
 */
export function parseDefinitionText(text: string, file: string): Definition | readonly Problem[] {
  const read = readJson(text, file, MOST)
  return isProblem(read) ? [read] : readDefinition(read.json, file)
}
