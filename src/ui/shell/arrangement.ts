import { type Accessor, createSignal } from 'solid-js'
import { keepPreference, preference } from '../../storage/preference'

/**
 * How this browser shows one notebook: what is folded, how wide its columns are. A matter of the screen, not of the
 * water, so it is no part of the document and nothing that undo takes back.
 */
export interface Arrangement {
  /** ids of folded worksheets (`salt`) and groups (`salt/bags`) */
  readonly folded: Accessor<ReadonlySet<string>>
  fold(id: string, folded: boolean): void
  /** widths in CSS pixels of the scenarios that were given one, by id */
  readonly widths: Accessor<Readonly<Record<string, number>>>
  /** null: the usual width again */
  setWidth(scenario: string, width: number | null): void
}

export const NARROWEST = 72
export const WIDEST = 480

export function createArrangement(notebook: string): Arrangement {
  const key = `arrangement.${notebook}`
  const kept = read(preference(key))
  const [folded, setFolded] = createSignal<ReadonlySet<string>>(new Set(kept.folded))
  const [widths, setWidths] = createSignal<Readonly<Record<string, number>>>(kept.widths)
  const keep = () => keepPreference(key, JSON.stringify({ folded: [...folded()], widths: widths() }))

  return {
    folded,
    fold(id, on) {
      if (folded().has(id) === on) return
      const next = new Set(folded())
      if (on) next.add(id)
      else next.delete(id)
      setFolded(next)
      keep()
    },
    widths,
    setWidth(scenario, width) {
      const { [scenario]: _, ...others } = widths()
      setWidths(width === null ? others : { ...others, [scenario]: bounded(width) })
      keep()
    },
  }
}

function bounded(width: number): number {
  return Math.round(Math.min(Math.max(width, NARROWEST), WIDEST))
}

/** What was kept, as far as it can be read: anything may stand in a browser's storage. */
function read(text: string | null): { folded: readonly string[]; widths: Readonly<Record<string, number>> } {
  let kept: unknown
  try {
    kept = JSON.parse(text ?? '{}')
  } catch {
    kept = {}
  }
  const { folded, widths } = (typeof kept === 'object' && kept !== null ? kept : {}) as Record<string, unknown>
  const entries = typeof widths === 'object' && widths !== null ? Object.entries(widths) : []
  return {
    folded: Array.isArray(folded) ? folded.filter((id) => typeof id === 'string') : [],
    widths: Object.fromEntries(
      entries.filter(([, width]) => Number.isFinite(width)).map(([id, width]) => [id, bounded(width as number)]),
    ),
  }
}
