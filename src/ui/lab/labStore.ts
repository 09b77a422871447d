import { type Imports, openImports } from '../../storage/imports'
import { isProblem, type Problem } from '../../words/problem'
import type { ImportBody, ImportHead } from './labImport'

let opening: Promise<Imports<ImportHead, ImportBody> | Problem> | null = null

/** Runs a piece of work on the lab files that this browser keeps; a problem when it keeps nothing. */
export async function withLabStore<T>(
  work: (store: Imports<ImportHead, ImportBody>) => Promise<T | Problem>,
): Promise<T | Problem> {
  opening ??= openImports<ImportHead, ImportBody>()
  const store = await opening
  return isProblem(store) ? store : work(store)
}
