import { isForQuality, isNoSample, isRejected } from './notASample'
import type { Role } from './roles'

/** The rule by which a row is set aside before its readings are looked at; null for a row to read. */
export type Aside = (cells: readonly string[]) => 'not_a_sample' | 'rejected' | null

/** `placeOf` says where the column with a role stands, -1 where there is none. */
export function createAside(placeOf: (role: Role) => number): Aside {
  const [status, kind] = [placeOf('status'), placeOf('kind')]
  const names = [placeOf('sample'), placeOf('place')].filter((at) => at !== -1)
  // where no column is for names, they stand in the first; a mean may say so in place of its date
  const named = [...(names.length === 0 ? [0] : names), placeOf('date')].filter((at) => at !== -1)
  const rejected = remembered(isRejected)
  const forQuality = remembered(isForQuality)
  return (cells) => {
    const cell = (at: number) => (cells[at] ?? '').trim()
    if (status !== -1 && rejected(cell(status))) return 'rejected'
    if (kind !== -1 && forQuality(cell(kind))) return 'not_a_sample'
    return named.some((at) => isNoSample(cell(at))) ? 'not_a_sample' : null
  }
}

/** A file has few statuses and kinds, and many rows. */
function remembered(says: (text: string) => boolean): (text: string) => boolean {
  const seen = new Map<string, boolean>()
  return (text) => {
    const before = seen.get(text)
    if (before !== undefined) return before
    const found = says(text)
    if (seen.size < 100) seen.set(text, found)
    return found
  }
}
