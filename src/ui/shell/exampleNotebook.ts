import example from '../../../examples/little-heron.json?raw'
import { fromFile } from '../../notebook/file'
import type { Notebook } from '../../notebook/notebook'
import type { Problem } from '../../words/problem'
import { problem } from '../../words/problem'

/** The notebook that a first visit opens on. It is read like any other file. */
export function exampleNotebook(): Notebook | Problem {
  const read = fromFile(example, 'little-heron.json')
  return Array.isArray(read) ? (read[0] ?? problem('not_a_notebook', ['little-heron.json'])) : read
}
