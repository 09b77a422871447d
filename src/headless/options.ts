import { parseArgs } from 'node:util'
import { isProblem, type Problem, problem } from '../words/problem'

export interface Options {
  readonly worksheets: readonly string[]
  readonly only: readonly string[]
  /** as given: `volume=15000 gal` is ['volume', '15000 gal'] */
  readonly set: readonly (readonly [name: string, text: string])[]
  /** cases that are not routine, for the plan: an id, or a path */
  readonly cases: readonly string[]
  readonly decimal: '.' | ',' | null
  readonly delimiter: string | null
  readonly censored: 'limit' | 'half' | 'zero' | null
  /** a path, or '-' for standard input */
  readonly file: string
}

/** Reads the command line of `evaluate`; what is wrong with it is a problem with code `usage_*`. */
export function readOptions(args: readonly string[]): Options | Problem {
  let parsed: ReturnType<typeof parse>
  try {
    parsed = parse(args)
  } catch (error) {
    return problem('usage_option', [], { why: error instanceof Error ? error.message : String(error) })
  }
  const { values, positionals } = parsed
  const [file, ...more] = positionals
  if (file === undefined) return problem('usage_no_file')
  if (more.length > 0) return problem('usage_many_files', [], { found: positionals })
  const worksheets = values.worksheet ?? []
  const only = (values.only ?? []).flatMap((list) => list.split(',')).map((name) => name.trim())
  if (worksheets.length === 0 && only.length === 0) return problem('usage_nothing_asked')
  const set: [string, string][] = []
  for (const text of values.set ?? []) {
    const at = text.indexOf('=')
    if (at < 1) return problem('usage_set', [], { found: text })
    const name = text.slice(0, at).trim()
    if (set.some(([other]) => other === name)) return problem('given_twice', [], { name })
    set.push([name, text.slice(at + 1).trim()])
  }
  const decimal = oneOf('decimal', values.decimal, ['.', ','])
  const censored = oneOf('censored', values.censored, ['limit', 'half', 'zero'])
  const delimiter = oneOf('delimiter', values.delimiter, [',', ';', '\t', '|'])
  for (const choice of [decimal, censored, delimiter]) if (isProblem(choice)) return choice
  return { worksheets, only, cases: values.case ?? [], set, file, decimal, censored, delimiter } as Options
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      worksheet: { type: 'string', multiple: true },
      only: { type: 'string', multiple: true },
      set: { type: 'string', multiple: true },
      case: { type: 'string', multiple: true },
      decimal: { type: 'string' },
      delimiter: { type: 'string' },
      censored: { type: 'string' },
    },
  })
}

function oneOf<T extends string>(flag: string, found: string | undefined, accepted: readonly T[]): T | null | Problem {
  if (found === undefined) return null
  return accepted.find((choice) => choice === found) ?? problem('usage_choice', [], { flag, found, accepted })
}
