import { type Problem, problem } from '../../words/problem'
import type { Migration } from './migration'
import { toVersion2 } from './toVersion2'
import { toVersion3 } from './toVersion3'

/** In order: the first takes version 1 to 2. A migration has a file of its own and a frozen file of its version in the tests. */
export const MIGRATIONS: readonly Migration[] = [toVersion2, toVersion3]

/**
 * A document or an edit of an earlier version in the form of today.
 * @param path where it stands, for the sentence when it is of no version or of a newer one
 */
export function migrate(
  part: keyof Migration,
  old: unknown,
  version: unknown,
  path: Problem['path'],
  migrations: readonly Migration[] = MIGRATIONS,
): { readonly today: unknown } | Problem {
  const ours = migrations.length + 1
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return problem('file_no_version', path, { ours })
  if (version > ours) return problem('file_newer', path, { found: version, ours })
  return { today: migrations.slice(version - 1).reduce((form, next) => next[part](form), old) }
}
