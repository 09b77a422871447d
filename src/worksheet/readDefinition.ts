import type { z } from 'zod'
import { type Problem, problem } from '../words/problem'
import { CHOICE_ID } from './choiceId'
import { type Definition, definitionSchema } from './definition'

type Issue = z.core.$ZodIssue
type Path = readonly (string | number)[]

/** How many problems are told at once; the rest waits for the next try. */
const MOST_PROBLEMS = 50

/**
 * A worksheet definition from parsed JSON. It is checked by itself only: what its names and functions mean is the
 * catalog's business (`buildCatalog`).
 * @param file the name that a problem's path starts with
 * @returns the definition, or all that is wrong: codes `definition_*`
 */
export function readDefinition(json: unknown, file: string): Definition | readonly Problem[] {
  const read = readBySchema(definitionSchema, json, file)
  const empty = isDefinition(read) && read.groups.length === 0 && (read.targets ?? []).length === 0
  return empty ? [problem('definition_too_few', [file, 'groups'], { found: '[]', bound: 1 })] : read
}

/**
 * What a definition file's schema accepts, or all that is wrong: codes `definition_*`, each with its place in the file.
 */
export function readBySchema<T>(schema: z.ZodType<T>, json: unknown, file: string): T | readonly Problem[] {
  const result = schema.safeParse(json)
  if (result.success) return result.data
  return result.error.issues.flatMap((issue) => problemsOf(issue, json, file, [])).slice(0, MOST_PROBLEMS)
}

export function isDefinition(x: Definition | readonly Problem[]): x is Definition {
  return !Array.isArray(x)
}

/** A schema issue as problems of ours. `above` is the path of the union that the issue was found in. */
function problemsOf(issue: Issue, json: unknown, file: string, above: Path): Problem[] {
  const inside = [...above, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))]
  const found = at(json, inside)
  const say = (code: string, facts: Problem['facts'] = {}) => [
    problem(`definition_${code}`, [file, ...inside], { found: shown(found), ...facts }),
  ]
  if (found === undefined && issue.code !== 'unrecognized_keys') return say('missing')
  switch (issue.code) {
    case 'invalid_type':
      return say(WANTED[issue.expected] ?? 'wants_other')
    case 'too_small':
    case 'too_big':
      return say(...limit(issue))
    case 'invalid_format':
      if ('pattern' in issue && issue.pattern === String(CHOICE_ID)) return say('bad_choice')
      return say(inside.at(-1) === 'notice' ? 'bad_notice' : 'bad_name')
    case 'invalid_value':
      return say('bad_value', { accepted: issue.values.map(shown) })
    case 'invalid_key':
      return say('bad_name', { found: shown(inside.at(-1)) })
    case 'unrecognized_keys':
      return issue.keys.map((key) => problem('definition_unknown_key', [file, ...inside, key], { key: cut(key) }))
    case 'invalid_union':
      return nearest(issue.errors).flatMap((inner) => problemsOf(inner, json, file, inside))
    default:
      return say('wants_other')
  }
}

const WANTED: Readonly<Record<string, string>> = {
  string: 'wants_text',
  number: 'wants_number',
  int: 'wants_whole_number',
  array: 'wants_list',
  tuple: 'wants_two_numbers',
  object: 'wants_object',
  record: 'wants_object',
}

function limit(issue: Extract<Issue, { code: 'too_small' | 'too_big' }>): [string, Problem['facts']] {
  const [bound, side] = issue.code === 'too_small' ? [issue.minimum, 'few'] : [issue.maximum, 'many']
  const facts = { bound: Number(bound) }
  if (issue.origin === 'string') return [side === 'few' ? 'empty_text' : 'long_text', facts]
  if (issue.origin === 'number' || issue.origin === 'int') return [side === 'few' ? 'too_low' : 'too_high', facts]
  return [side === 'few' ? 'too_few' : 'too_many', facts]
}

/** Of the forms that a union allows, the one that was most likely meant: right in kind, with the least wrong in it. */
function nearest(forms: readonly (readonly Issue[])[]): readonly Issue[] {
  const kinds = forms.filter(
    (issues) => !issues.some((issue) => issue.code === 'invalid_type' && issue.path.length === 0),
  )
  const [first = [], ...others] = kinds.length > 0 ? kinds : forms
  const best = others.reduce((lightest, issues) => (weight(issues) < weight(lightest) ? issues : lightest), first)
  return best.map((issue) => (issue.code === 'invalid_value' ? withOtherValues(issue, kinds.flat()) : issue))
}

/** What any of the forms accepts in this place: a row's `input` may be "number" or "choice". */
function withOtherValues(issue: Extract<Issue, { code: 'invalid_value' }>, all: readonly Issue[]): Issue {
  const place = issue.path.join('.')
  const values = all.flatMap((other) =>
    other.code === 'invalid_value' && other.path.join('.') === place ? other.values : [],
  )
  return { ...issue, values: [...new Set(values)] }
}

function weight(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0)
}

function at(json: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Record<string | number, unknown>)[step]
        : undefined,
    json,
  )
}

function shown(value: unknown): string {
  return cut(value === undefined ? '' : (JSON.stringify(value) ?? ''))
}

function cut(text: string): string {
  return text.length > 60 ? `${text.slice(0, 59)}…` : text
}
