import type { Database } from './database'
import type { Entry } from './records'

/** Entries that are read at once: reading ten thousand in one go would hold the page up. */
const PIECE = 500

/** All entries, the last changed first. */
export async function entriesIn(database: Database): Promise<readonly Entry[]> {
  const all: Entry[] = []
  let range: IDBKeyRange | undefined
  for (;;) {
    const piece: readonly Entry[] = await database.getAll('notebooks', range, PIECE)
    all.push(...piece)
    const last = piece.at(-1)
    if (last === undefined || piece.length < PIECE) return all.sort((a, b) => b.changed - a.changed)
    range = IDBKeyRange.lowerBound(last.id, true)
  }
}
