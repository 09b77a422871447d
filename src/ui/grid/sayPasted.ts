import { say } from '../../words/say'
import type { PasteReport } from './pasteReport'

/** What became of what was pasted, in short sentences. */
export function sayPasted({ taken, locked, beyond, refused }: PasteReport): readonly string[] {
  return [
    taken > 0 ? say('page.paste.taken', { count: taken }) : say('page.paste.nothing_taken'),
    ...(locked > 0 ? [say('page.paste.locked', { count: locked })] : []),
    ...(beyond > 0 ? [say('page.paste.beyond', { count: beyond })] : []),
    ...(refused.length > 0 ? [say('page.paste.refused', { count: refused.length })] : []),
  ]
}
