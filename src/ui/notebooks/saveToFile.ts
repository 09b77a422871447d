import { toFile } from '../../notebook/file'
import type { Notebook } from '../../notebook/notebook'
import { downloadText } from './downloadText'

/** The notebook as a file in the reader's downloads. */
export function saveToFile(notebook: Notebook): void {
  const name = notebook.name.replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ').trim() || 'notebook'
  downloadText(`${name}.basinbook.json`, toFile(notebook))
}
