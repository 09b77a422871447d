import type { Notebook } from '../../notebook/notebook'
import { toFile } from '../../notebook/toFile'
import { downloadBlob } from './downloadText'
import { noteExport } from './exported'

/** The notebook as a file in the reader's downloads. */
export function saveToFile(notebook: Notebook): void {
  const file = `${fileStem(notebook.name)}.basinbook.json`
  const content = new Blob([toFile(notebook)], { type: 'application/json' })
  downloadBlob(file, content)
  void noteExport(notebook.id, file, content)
}

/** A name as file systems take it. */
export function fileStem(name: string): string {
  return name.replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ').trim() || 'notebook'
}
