import type * as z from 'zod/mini'
import { type Problem, problem } from '../words/problem'

type Issue = z.core.$ZodIssue

/** A file with more faults than this is not the file that was meant. */
const MOST_PROBLEMS = 20

/**
 * A value of the schema's type, or each thing that is wrong with it, with its place, in our own words.
 * @param path where the value stands: the file's name first
 */
export function checked<T>(schema: z.ZodMiniType<T>, value: unknown, path: Problem['path']): { value: T } | Problem[] {
  const parsed = schema.safeParse(value, { reportInput: true })
  if (parsed.success) return { value: parsed.data }
  return parsed.error.issues.flatMap((issue) => problemsOf(issue, path)).slice(0, MOST_PROBLEMS)
}

function problemsOf(issue: Issue, path: Problem['path']): Problem[] {
  const place = [...path, ...issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step))]
  switch (issue.code) {
    case 'invalid_type':
      if (issue.input === undefined) return [problem('file_missing', place)]
      return [problem(`file_wants_${wanted(issue.expected)}`, place, { found: shown(issue.input) })]
    case 'too_big':
      return [
        problem(issue.origin === 'string' ? 'file_text_too_long' : 'file_too_many', place, {
          most: Number(issue.maximum),
        }),
      ]
    case 'too_small':
      return [problem('file_number_too_small', place, { found: shown(issue.input), least: Number(issue.minimum) })]
    case 'unrecognized_keys':
      return issue.keys.map((key) => problem('file_unknown_key', [...place, key.slice(0, 80)]))
    case 'invalid_union':
      return [problem('file_unknown_kind', place, { found: shown(told(issue.input, issue.discriminator)) })]
    case 'invalid_value':
      return [problem('file_wants_one_of', place, { found: shown(issue.input), choices: issue.values.map(String) })]
    case 'invalid_key':
      return [problem('file_unknown_name', place)]
    case 'custom':
      if (typeof issue.params?.most === 'number') return [problem('file_too_many', place, { most: issue.params.most })]
      return [problem('file_unreadable', place, { found: shown(issue.input) })]
    default:
      return [problem('file_unreadable', place, { found: shown(issue.input) })]
  }
}

/** What a thing says that it is. */
function told(thing: unknown, key: string | undefined): unknown {
  return key !== undefined && typeof thing === 'object' && thing !== null
    ? Object.getOwnPropertyDescriptor(thing, key)?.value
    : thing
}

function wanted(expected: string): string {
  const kinds: Readonly<Record<string, string>> = { string: 'text', number: 'number', int: 'whole', boolean: 'truth' }
  return kinds[expected] ?? (expected === 'array' ? 'list' : 'record')
}

/** What stands there, short enough for a sentence. */
function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value))
  return text.length > 40 ? `${text.slice(0, 39)}…` : text
}
