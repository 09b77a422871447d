import type { Notebook } from '../notebook/notebook'
import { folded } from './folded'

/** Characters that are searched of one notebook: a page of notes; a record of years must not make each edit slow. */
const MOST = 2_000

/** What a notebook is found by, beside its name. */
export interface Searched {
  readonly place: string
  /** folded: name, place and note, then the names of samples and what was written down */
  readonly words: string
}

export function searchedOf({ name, place, note, samples, remarks }: Notebook): Searched {
  const parts = [name, place, note]
  let length = name.length + place.length + note.length
  const more = [
    ...Object.values(samples).map((sample) => sample.name),
    ...Object.values(remarks).map(({ text }) => text),
  ]
  for (const part of more) {
    if (length >= MOST) break
    parts.push(part)
    length += part.length
  }
  return { place, words: folded(parts.join(' ').slice(0, MOST)) }
}

/** Whether two states of a notebook are found by the same words. */
export function sameWords(a: Notebook, b: Notebook): boolean {
  return (
    a.name === b.name && a.place === b.place && a.note === b.note && a.samples === b.samples && a.remarks === b.remarks
  )
}
