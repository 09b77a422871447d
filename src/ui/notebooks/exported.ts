import { newId } from '../../notebook/create'
import { type Exports, openExports } from '../../storage/exports'
import { isProblem, type Problem } from '../../words/problem'

let opening: Promise<Exports | Problem> | null = null

/** Runs a piece of work on the list of files that were saved from this browser; a problem when it keeps nothing. */
export async function withExports<T>(work: (exports: Exports) => Promise<T | Problem>): Promise<T | Problem> {
  opening ??= openExports()
  const exports = await opening
  return isProblem(exports) ? exports : work(exports)
}

/**
 * Notes that a file was saved, so that the list can name it when somebody asks for everything to be deleted. A list that cannot
 * be kept keeps nobody from saving the file.
 * @param notebook null: a file of everything that is kept here
 */
export async function noteExport(notebook: string | null, file: string, content: Blob): Promise<void> {
  const sha256 = await hashOf(content)
  await withExports((exports) => exports.add({ id: newId(), notebook, file, when: Date.now(), sha256 }))
}

/** Empty where the browser has no such function: it is given to pages of a secure origin only. */
async function hashOf(content: Blob): Promise<string> {
  if (crypto.subtle === undefined) return ''
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', await content.arrayBuffer()))
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}
