/** A fact of a problem: what was found, what is accepted, which name. */
export type Fact = string | number | boolean | readonly string[]

/**
 * An error before it is words. `say/sentence` makes the sentence out of the catalogue entry
 * `problem.<code>`; `path` says where: a file name, then keys and indexes inside it, or a scenario and a
 * quantity.
 */
export interface Problem {
  readonly code: string
  readonly path: readonly (string | number)[]
  readonly facts: Readonly<Record<string, Fact>>
}

export function problem(code: string, path: Problem['path'] = [], facts: Problem['facts'] = {}): Problem {
  return { code, path, facts }
}

export function isProblem(x: unknown): x is Problem {
  return typeof x === 'object' && x !== null && 'code' in x && 'path' in x && 'facts' in x
}
