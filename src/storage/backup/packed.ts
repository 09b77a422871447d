/** The typed arrays that columns of a lab file are made of, by the name under which they stand in a backup. */
const ARRAYS = {
  Float64Array,
  Int32Array,
  Uint32Array,
  Uint8Array,
} as const
type ArrayName = keyof typeof ARRAYS

/** Bytes that become one piece of text at a time: a call takes only so many arguments. */
const PIECE = 0x8000

/** Plain data with its typed arrays as `{array, base64}`, so that JSON can carry it. Bytes are little-endian, as every browser has them. */
export function packed(value: unknown): unknown {
  if (ArrayBuffer.isView(value)) {
    const bytes = new Uint8Array(value.buffer, value.byteOffset, value.byteLength)
    return { array: value.constructor.name, base64: base64Of(bytes) }
  }
  if (Array.isArray(value)) return value.map(packed)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, packed(inner)]))
}

/** The data again. What only looks like a packed array stays as it is: whether it may stand there is asked of a schema. */
export function unpacked(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(unpacked)
  if (typeof value !== 'object' || value === null) return value
  if (isPacked(value)) return arrayOf(value.array, bytesOf(value.base64)) ?? value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, unpacked(inner)]))
}

export function base64Of(bytes: Uint8Array): string {
  let binary = ''
  for (let at = 0; at < bytes.length; at += PIECE) binary += String.fromCharCode(...bytes.subarray(at, at + PIECE))
  return btoa(binary)
}

/** Null when it is not base64. */
export function bytesOf(base64: string): Uint8Array<ArrayBuffer> | null {
  try {
    const binary = atob(base64)
    const bytes = new Uint8Array(binary.length)
    for (let at = 0; at < binary.length; at++) bytes[at] = binary.charCodeAt(at)
    return bytes
  } catch {
    return null
  }
}

function isPacked(value: object): value is { array: ArrayName; base64: string } {
  return (
    Object.keys(value).length === 2 &&
    'array' in value &&
    'base64' in value &&
    typeof value.base64 === 'string' &&
    typeof value.array === 'string' &&
    Object.hasOwn(ARRAYS, value.array)
  )
}

function arrayOf(name: ArrayName, bytes: Uint8Array<ArrayBuffer> | null): ArrayBufferView | null {
  const Kind = ARRAYS[name]
  return bytes === null || bytes.length % Kind.BYTES_PER_ELEMENT !== 0 ? null : new Kind(bytes.buffer)
}
