import example from '../../../examples/little-heron.json?raw'
import { fromFile } from '../../notebook/file'
import type { Notebook } from '../../notebook/notebook'

/** The notebook that a first visit opens on. It is read like any other file, but at build time, so that the page need not. */
export default exampleNotebook()

function exampleNotebook(): Notebook {
  const read = fromFile(example, 'little-heron.json')
  if (Array.isArray(read)) throw new RangeError(`the example is no notebook: ${JSON.stringify(read)}`)
  return read
}
