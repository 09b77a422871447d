import { say } from '../../words/say'
import type { PasteReport } from './pasteReport'

/** Names of rows and scenarios that are told one by one. */
const MOST = 6

/** What became of what was pasted, in short sentences. */
export function sayPasted({ taken, locked, beyond, refused, same = 0, strangers }: PasteReport): readonly string[] {
  const { rows = [], scenarios = [], fields = 0 } = strangers ?? {}
  return [
    taken > 0 ? say('page.paste.taken', { count: taken }) : say('page.paste.nothing_taken'),
    ...(same > 0 ? [say('page.paste.same', { count: same })] : []),
    ...(locked > 0 ? [say('page.paste.locked', { count: locked })] : []),
    ...(beyond > 0 ? [say('page.paste.beyond', { count: beyond })] : []),
    ...(fields > 0 ? [say('page.paste.strangers', { count: fields })] : []),
    ...(rows.length > 0 ? [say('page.paste.no_row', { names: listed(rows) })] : []),
    ...(scenarios.length > 0 ? [say('page.paste.no_scenario', { names: listed(scenarios) })] : []),
    ...(refused.length > 0 ? [say('page.paste.refused', { count: refused.length })] : []),
  ]
}

function listed(names: readonly string[]): string {
  const told = names.slice(0, MOST).map((name) => say('page.paste.name', { name }))
  return [...told, ...(names.length > MOST ? ['…'] : [])].join(', ')
}
