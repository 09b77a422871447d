import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { openStore, type Store } from '../../src/storage/store'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'

/** A browser without anything in it. */
export function freshBrowser(): void {
  globalThis.indexedDB = new IDBFactory()
}

/** A tab's store; each answers with its own connection to the same browser. */
export async function opened(now?: () => number): Promise<Store> {
  return good(await openStore('basinbook', now))
}

/** What is expected to be no problem. */
export function good<T>(result: T): Exclude<T, { code: string }> {
  if (isProblem(result)) throw new Error(`${result.code}: ${sentence(result)}`)
  return result as Exclude<T, { code: string }>
}
