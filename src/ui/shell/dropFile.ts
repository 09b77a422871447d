import { setLabFile } from '../lab/labFile'
import { goTo } from './place'

/** A file that is let fall anywhere on the page is read as a lab file. */
export function dropFile(event: DragEvent): void {
  const file = event.dataTransfer?.files[0]
  if (!file) return
  event.preventDefault()
  setLabFile(file)
  goTo({ page: 'lab' })
}

/** Without this the browser would leave the page and show the file. */
export function allowDrop(event: DragEvent): void {
  if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
}
