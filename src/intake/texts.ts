/** Texts of one column, packed: they cross between threads and into the browser's store without being copied one by one. */
export interface Texts {
  /** all of them in UTF-8, one after another */
  readonly bytes: Uint8Array<ArrayBuffer>
  /** where each of them ends in `bytes` */
  readonly ends: Uint32Array<ArrayBuffer>
}

/** One text; empty where there is none. */
export function textAt({ bytes, ends }: Texts, i: number): string {
  const from = i === 0 ? 0 : (ends[i - 1] ?? 0)
  const to = ends[i] ?? from
  return to === from ? '' : decoder.decode(bytes.subarray(from, to))
}

export interface TextsBuilder {
  push(text: string): void
  finish(): Texts
}

export function createTexts(): TextsBuilder {
  let bytes = new Uint8Array(8_192)
  let ends = new Uint32Array(1_024)
  let used = 0
  let count = 0
  return {
    push(text) {
      // a character is three bytes at most, for one of UTF-16's two halves
      if (used + text.length * 3 > bytes.length) bytes = grown(bytes, used + text.length * 3, Uint8Array)
      if (count === ends.length) ends = grown(ends, count + 1, Uint32Array)
      if (text !== '') used += encoder.encodeInto(text, bytes.subarray(used)).written
      ends[count++] = used
    },
    finish: () => ({ bytes: bytes.slice(0, used), ends: ends.slice(0, count) }),
  }
}

const encoder = new TextEncoder()
const decoder = new TextDecoder()

function grown<T extends Uint8Array<ArrayBuffer> | Uint32Array<ArrayBuffer>>(
  old: T,
  least: number,
  make: new (length: number) => T,
): T {
  const more = new make(Math.max(old.length * 2, least))
  more.set(old)
  return more
}
