import type { Notebook } from '../../notebook/notebook'

/** The same notebook, its bottles taken today: what the example shows must not depend on when it is looked at. */
export function ofToday(notebook: Notebook, today: string): Notebook {
  const samples = Object.fromEntries(
    Object.entries(notebook.samples).map(([id, sample]) => [id, { ...sample, date: today }]),
  )
  return { ...notebook, samples }
}
