import { type Problem, problem } from '../words/problem'

/** Keys that would reach what every object has. */
export function isReservedKey(key: string): boolean {
  return key === '__proto__' || key === 'constructor' || key === 'prototype'
}

/** What is wrong with a value as JSON data: where, and why. */
interface Fault {
  readonly code: 'json_too_deep' | 'json_reserved_key' | 'json_not_data'
  readonly path: readonly (string | number)[]
}

/**
 * Reads JSON text that may be hostile: never throws, refuses more than `most.characters`, nesting over `most.depth`
 * (before the parser sees it), and keys that would reach an object's prototype.
 * @param file the name by which the sentence calls it
 */
export function readJson(
  text: string,
  file: string,
  most: { readonly characters: number; readonly depth: number },
): { readonly json: unknown } | Problem {
  if (text.length > most.characters) return problem('file_too_large', [file], { most: most.characters / 1_000_000 })
  if (depthOf(text) > most.depth) return problem('json_too_deep', [file], { most: most.depth })
  let json: unknown
  try {
    json = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text)
  } catch {
    return problem('json_unreadable', [file])
  }
  const fault = jsonFault(json, most.depth)
  return fault === null ? { json } : problem(fault.code, [file, ...fault.path], { most: most.depth })
}

/** The first thing that keeps a value from being plain JSON data; null when it is. */
export function jsonFault(value: unknown, depth: number, path: Fault['path'] = []): Fault | null {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return null
  if (typeof value === 'number') return Number.isFinite(value) ? null : { code: 'json_not_data', path }
  if (typeof value !== 'object') return { code: 'json_not_data', path }
  if (depth === 0) return { code: 'json_too_deep', path }
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype) return { code: 'json_not_data', path }
  for (const [key, inner] of Object.entries(value)) {
    const here = [...path, Array.isArray(value) ? Number(key) : key]
    const fault = isReservedKey(key)
      ? ({ code: 'json_reserved_key', path: here } as const)
      : jsonFault(inner, depth - 1, here)
    if (fault !== null) return fault
  }
  return null
}

/** How deep brackets stand inside one another, text in quotes left out. */
function depthOf(text: string): number {
  let depth = 0
  let deepest = 0
  let quoted = false
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]
    if (quoted) {
      if (sign === '\\') at++
      else if (sign === '"') quoted = false
    } else if (sign === '"') quoted = true
    else if (sign === '{' || sign === '[') deepest = Math.max(deepest, ++depth)
    else if (sign === '}' || sign === ']') depth--
  }
  return deepest
}
