/** What was met lately, in bounded memory: the last thousands of keys, forgotten by the generation. */
export interface Memory<T> {
  get(key: string): T | undefined
  set(key: string, value: T): void
}

/** At least this many keys are remembered, at most twice as many. */
const GENERATION = 10_000

export function createMemory<T>(): Memory<T> {
  let young = new Map<string, T>()
  let old = new Map<string, T>()
  return {
    get: (key) => young.get(key) ?? old.get(key),
    set(key, value) {
      if (young.size >= GENERATION) {
        old = young
        young = new Map()
      }
      young.set(key, value)
    },
  }
}
