import { generateKeyBetween } from 'fractional-indexing'
import { nanoid } from 'nanoid'
import type { Notebook, Profile } from './notebook'

/** A random id for a notebook, a scenario or a sample. */
export function newId(): string {
  return nanoid()
}

/** A notebook with nothing in it but its baseline, which bears the name `baseline`. */
export function newNotebook(name: string, baseline: string, profile: Profile): Notebook {
  const id = newId()
  return {
    format: 'basinbook-notebook',
    version: 3,
    id: newId(),
    name,
    place: '',
    note: '',
    profile,
    units: {},
    scenarios: { [id]: { id, name: baseline, note: '', order: generateKeyBetween(null, null), sample: null } },
    samples: {},
    cells: {},
    shelf: {},
    charts: {},
    precisions: {},
    worksheets: {},
    rows: {},
    plans: {},
    additions: {},
    remarks: {},
    lessons: {},
    cases: {},
    rules: {},
    computedWith: {},
  }
}

/** The same content as a notebook of its own. Ids inside mean nothing outside a notebook, so they stay. */
export function copyNotebook(notebook: Notebook, name: string): Notebook {
  return { ...notebook, id: newId(), name }
}
