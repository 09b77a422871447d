/** In which row a sample of this name and date was met lately. */
export interface RecentSamples {
  get(name: string, date: string): number | undefined
  set(name: string, date: string, row: number): void
}

const SLOTS = 32_768

/**
 * Remembers some tens of thousands of samples in a fixed piece of memory, without keeping their texts, so that a file of a
 * million rows needs no more than a short one. A later sample may take an earlier one's slot. Texts are told apart by 53
 * bits of two hashes (FNV-1a with two bases), so that two of a million samples are mistaken for each other in fewer than one
 * file in a thousand million.
 */
export function createRecentSamples(): RecentSamples {
  const marks = new Float64Array(SLOTS)
  const rows = new Int32Array(SLOTS)
  const mark = (name: string, date: string): number =>
    (hash(date, hash(name, 0x811c9dc5)) >>> 0) * 0x200000 + ((hash(date, hash(name, 0x9e3779b9)) >>> 11) & 0x1fffff) + 1
  return {
    get(name, date) {
      const key = mark(name, date)
      return marks[key % SLOTS] === key ? rows[key % SLOTS] : undefined
    },
    set(name, date, row) {
      const key = mark(name, date)
      marks[key % SLOTS] = key
      rows[key % SLOTS] = row
    },
  }
}

function hash(text: string, start: number): number {
  let h = start
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193)
  return Math.imul(h ^ 0x0a, 0x01000193)
}
