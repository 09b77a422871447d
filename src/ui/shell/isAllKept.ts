import type { Book } from './book'

/** Whether all of an open notebook is on the disk once what is under way is done: nothing half typed, nothing kept nowhere. */
export async function isAllKept(book: Book): Promise<boolean> {
  await book.settled()
  const { state } = book.saving()
  const kept = state === 'saved' || (state === 'not_kept' && !book.canUndo())
  return kept && document.querySelector('.cell .editor') === null
}
