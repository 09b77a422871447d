import { isProblem, type Problem, problem } from '../../words/problem'
import { readBySchema } from '../../worksheet/readDefinition'
import { readJson } from '../../worksheet/readJson'
import { type CaseDefinition, caseSchema } from './caseDefinition'

/** A case file's largest size in characters, and the deepest nesting of its JSON. */
const MOST = { characters: 200_000, depth: 8 }

/**
 * A case from parsed JSON, checked by itself only; what its formulas and names mean is asked of `caseCatalog`.
 * @param shipped its sentences are in the catalogue; a case from elsewhere has to bring them
 * @returns the case, or all that is wrong with it, each with its place in the file
 */
export function readCase(json: unknown, file: string, shipped = false): CaseDefinition | readonly Problem[] {
  const read = readBySchema(caseSchema, json, file)
  if (!isCase(read) || shipped) return read
  const silent = silentPlaces(read)
  return silent.length === 0 ? read : silent.map((place) => problem('case_no_words', [file, ...place]))
}

/** The same from the text of a file that may be hostile. */
export function parseCaseText(text: string, file: string): CaseDefinition | readonly Problem[] {
  const read = readJson(text, file, MOST)
  return isProblem(read) ? [read] : readCase(read.json, file)
}

export function isCase(x: CaseDefinition | readonly Problem[]): x is CaseDefinition {
  return !Array.isArray(x)
}

/** Where a sentence is lacking. */
function silentPlaces(definition: CaseDefinition): readonly (readonly (string | number)[])[] {
  const lists = {
    gates: definition.gates ?? [],
    steps: definition.steps,
    done: definition.done ?? [],
    forbids: definition.forbids ?? [],
  }
  return [
    ...(definition.label === undefined ? [['label']] : []),
    ...Object.entries(lists).flatMap(([list, entries]) =>
      entries.flatMap((entry, i) => ('id' in entry && entry.says === undefined ? [[list, i, 'says']] : [])),
    ),
  ]
}
