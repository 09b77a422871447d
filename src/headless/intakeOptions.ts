import { parseArgs } from 'node:util'
import type { Answers } from '../intake/understanding'
import { type Problem, problem } from '../words/problem'

export interface IntakeOptions {
  readonly answers: Answers
  readonly mapping: string | null
  /** a path, or '-' for standard input */
  readonly file: string
}

const FLAGS = {
  dates: ['dmy', 'mdy', 'ymd'],
  decimal: ['.', ','],
  delimiter: [',', ';', '\t', '|'],
  replicates: ['keep', 'first', 'last', 'mean'],
} as const

/** Reads the command line of `intake`; what is wrong with it is a problem with code `usage_*`. */
export function readIntakeOptions(args: readonly string[]): IntakeOptions | Problem {
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
  const answers: Record<string, string> = {}
  for (const [flag, accepted] of Object.entries(FLAGS)) {
    const given = values[flag as keyof typeof FLAGS]
    if (given === undefined) continue
    const meant = given === '\\t' || given === 'tab' ? '\t' : given
    if (!(accepted as readonly string[]).includes(meant)) {
      return problem('usage_choice', [], { flag, accepted: [...accepted], found: given })
    }
    answers[flag] = meant
  }
  return { answers, mapping: values.mapping ?? null, file }
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      dates: { type: 'string' },
      decimal: { type: 'string' },
      delimiter: { type: 'string' },
      replicates: { type: 'string' },
      mapping: { type: 'string' },
    },
  })
}
