import type { Difference } from '../../notebook/differences'
import type { Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { hasWords, say } from '../../words/say'
import { labelOf } from '../labelOf'

/** Names that stand in one line; the rest is counted. */
const MOST = 3

/** One part's difference between two states of a notebook, as a sentence. */
export function differenceText({ part, how, keys }: Difference, before: Notebook, after: Notebook): string {
  const key = `keeping.${part}.${how}`
  if (!hasWords(key)) return say('keeping.other')
  const names = keys.slice(0, MOST).map((name) => nameOf(part, name, how === 'removed' ? before : after))
  const more = keys.length - names.length
  return say(key, {
    before: before.name,
    count: keys.length,
    names: more > 0 ? say('keeping.names_more', { names, count: more }) : say('keeping.names', { names }),
  })
}

/** What a reader calls the thing under this key of a part. */
function nameOf(part: keyof Notebook, key: string, notebook: Notebook): string {
  if (part === 'units' || part === 'precisions') return labelOf(key)
  if (part === 'cells') {
    const cut = key.indexOf('/')
    const scenario = own(notebook.scenarios, key.slice(0, cut))
    return say('keeping.cell', { quantity: labelOf(key.slice(cut + 1)), scenario: scenario?.name ?? '' })
  }
  const thing = own(notebook[part] as Readonly<Record<string, unknown>>, key)
  const called =
    typeof thing === 'object' && thing !== null ? { name: '', label: '', ...thing } : { name: '', label: '' }
  return String(called.name || called.label || key)
}
