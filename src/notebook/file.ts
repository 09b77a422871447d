import { isProblem, type Problem, problem } from '../words/problem'
import { readJson } from '../worksheet/readJson'
import { LIMITS } from './limits'
import { migrate } from './migrations/migrate'
import type { Notebook } from './notebook'
import { notebookSchema } from './notebookSchema'
import { checked } from './schemaProblems'
import { unsound } from './soundness'

/**
 * The notebook in a file's text, or each thing that keeps it from being one, with its place. Nothing is repaired and
 * nothing left out: a file is read whole or refused. Whether values suit their quantities is asked of `checkNotebook`.
 * @param name the file's name, for the sentences
 */
export function fromFile(text: string, name: string): Notebook | Problem[] {
  const read = readJson(text, name, { characters: LIMITS.file, depth: LIMITS.depth })
  if (isProblem(read)) return [read]
  const json = read.json
  if (typeof json !== 'object' || json === null || !('format' in json) || json.format !== 'basinbook-notebook')
    return [problem('not_a_notebook', [name])]
  const migrated = migrate('notebook', json, 'version' in json ? json.version : undefined, [name])
  if (isProblem(migrated)) return [migrated]
  const shaped = checked(notebookSchema, migrated.today, [name])
  if (!('value' in shaped)) return shaped
  const faults = unsound(shaped.value, [name])
  return faults.length === 0 ? shaped.value : faults
}
