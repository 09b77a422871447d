/** How the bytes of a file stand for characters. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'

export interface Decoder {
  readonly encoding: Encoding
  /** The text of the next bytes; bytes of a character that is cut in two wait for the next call. */
  push(bytes: Uint8Array): string
  /** What is left at the end: a character that was cut off comes out as U+FFFD. */
  end(): string
}

/**
 * Finds the encoding from the first bytes of a file: a byte order mark, else the pattern of zero bytes that UTF-16
 * leaves in Latin text, else UTF-8 if the bytes are valid UTF-8, else Windows-1252 (what spreadsheets write where
 * nobody chose). The bytes may be cut off in the middle of a character.
 */
export function findEncoding(head: Uint8Array): Encoding {
  if (starts(head, 0xef, 0xbb, 0xbf)) return 'utf-8'
  if (starts(head, 0xff, 0xfe)) return 'utf-16le'
  if (starts(head, 0xfe, 0xff)) return 'utf-16be'
  const zeros = [0, 0]
  const looked = Math.min(head.length, 4_096)
  for (let i = 0; i < looked; i++) if (head[i] === 0) zeros[i % 2] = (zeros[i % 2] ?? 0) + 1
  const [even = 0, odd = 0] = zeros
  if (odd > looked / 6 && even < looked / 50) return 'utf-16le'
  if (even > looked / 6 && odd < looked / 50) return 'utf-16be'
  return strictUtf8(head.subarray(0, head.length - cutOff(head))) === null ? 'windows-1252' : 'utf-8'
}

/** Decodes a file piece by piece. The byte order mark is dropped. */
export function createDecoder(encoding: Encoding): Decoder {
  return encoding === 'utf-8' ? utf8() : plain(encoding)
}

function plain(encoding: Encoding): Decoder {
  const decoder = new TextDecoder(encoding)
  return {
    encoding,
    push: (bytes) => decoder.decode(bytes, { stream: true }),
    end: () => decoder.decode(),
  }
}

/**
 * UTF-8 that may turn out not to be: a long file can be plain ASCII up to its first umlaut. Bytes that are not
 * UTF-8 make the rest Windows-1252 as long as all before was ASCII, where both agree; after a real UTF-8 character
 * they are damage, and come out as U+FFFD, which no reading accepts.
 */
function utf8(): Decoder {
  let waiting = new Uint8Array(0)
  let seenUtf8 = false
  let fallback: TextDecoder | null = null
  let first = true

  function text(bytes: Uint8Array): string {
    if (fallback !== null) return fallback.decode(bytes, { stream: true })
    const strict = strictUtf8(bytes)
    if (strict !== null) {
      seenUtf8 ||= strict.length !== bytes.length
      return strict
    }
    fallback = seenUtf8 ? new TextDecoder('utf-8') : new TextDecoder('windows-1252')
    return fallback.decode(bytes, { stream: true })
  }

  return {
    encoding: 'utf-8',
    push(bytes) {
      let all = waiting.length === 0 ? bytes : joined(waiting, bytes)
      if (first && all.length < 3 && fallback === null) {
        waiting = all.slice()
        return ''
      }
      if (first && starts(all, 0xef, 0xbb, 0xbf)) all = all.subarray(3)
      first = false
      const cut = fallback === null ? cutOff(all) : 0
      waiting = all.slice(all.length - cut)
      return text(all.subarray(0, all.length - cut))
    },
    end() {
      const rest = text(waiting)
      return fallback === null ? rest : rest + fallback.decode()
    },
  }
}

function strictUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return null
  }
}

/** How many bytes at the end begin a UTF-8 character that is not all there: 0 to 3. */
function cutOff(bytes: Uint8Array): number {
  for (let back = 1; back <= Math.min(3, bytes.length); back++) {
    const byte = bytes[bytes.length - back] ?? 0
    if (byte < 0x80) return 0
    if (byte >= 0xc0) {
      const needs = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2
      return back < needs ? back : 0
    }
  }
  return 0
}

function starts(bytes: Uint8Array, ...mark: number[]): boolean {
  return mark.every((byte, i) => bytes[i] === byte)
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(a.length + b.length)
  all.set(a)
  all.set(b, a.length)
  return all
}
