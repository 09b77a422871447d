import { keepPreference, preference } from '../../storage/preference'

/** What was being typed, and where: kept with each key, offered again when the page was closed under it. */
export interface Draft {
  /** id of the notebook; empty while a pool is being looked for */
  readonly notebook: string
  readonly field: string
  readonly text: string
}

export function keepDraft(draft: Draft): void {
  keepPreference('desk.draft', JSON.stringify(draft))
}

/** The draft of this notebook, or of looking for a pool; null where there is none. */
export function keptDraft(notebook: string): Draft | null {
  const kept = read(preference('desk.draft'))
  return kept !== null && (kept.notebook === notebook || kept.notebook === '') ? kept : null
}

function read(text: string | null): Draft | null {
  try {
    const draft: unknown = JSON.parse(text ?? 'null')
    return isDraft(draft) ? draft : null
  } catch {
    return null
  }
}

function isDraft(found: unknown): found is Draft {
  if (typeof found !== 'object' || found === null) return false
  const { notebook, field, text } = found as Partial<Record<keyof Draft, unknown>>
  return typeof notebook === 'string' && typeof field === 'string' && typeof text === 'string'
}
