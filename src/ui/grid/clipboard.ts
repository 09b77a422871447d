import { onCleanup } from 'solid-js'
import { say } from '../../words/say'
import { announce } from '../shell/announce'
import type { Book } from '../shell/book'
import { type CopiedBlock, copyBlock } from './copyBlock'
import { clearing } from './rangeActs'

/** Fetched when something is pasted. */
const pasting = () => import('./paste')

/** What was copied last, of which notebook: while the clipboard has its text, cells are taken back as they were. */
let last: { readonly book: Book; readonly block: CopiedBlock } | null = null
/** How the next copy event is to be answered when an act brought it about. */
let asked: { readonly named: boolean } | null = null

/** Answers the clipboard's events while the grid has the focus. */
export function listenToClipboard(book: Book): void {
  const onCopy = (event: ClipboardEvent) => {
    if (!asked && !isForGrid(event, true)) return
    const block = copyBlock(book, book.selection.block(), asked?.named ?? false)
    event.clipboardData?.setData('text/plain', block.text)
    event.clipboardData?.setData('text/html', block.html)
    event.preventDefault()
    last = { book, block }
    const count = block.cells.flat().length
    const copied = say('page.grid.copied', { count })
    if (event.type !== 'cut') announce(copied)
    else {
      const { whole, says } = clearing(book)
      announce(whole ? say('page.grid.cut', { count }) : `${copied}. ${says}`)
    }
  }
  const onPaste = (event: ClipboardEvent) => {
    if (!isForGrid(event, false)) return
    event.preventDefault()
    void pasteText(book, event.clipboardData?.getData('text/plain') ?? '')
  }
  document.addEventListener('copy', onCopy)
  document.addEventListener('cut', onCopy)
  document.addEventListener('paste', onPaste)
  onCleanup(() => {
    document.removeEventListener('copy', onCopy)
    document.removeEventListener('cut', onCopy)
    document.removeEventListener('paste', onPaste)
  })
}

export function copyRange(_: Book, named: boolean): void {
  byCommand('copy', named)
}

export function cutRange(_: Book): void {
  byCommand('cut', false)
}

/** Reads the clipboard, where the browser lets a page do so. */
export async function pasteRange(book: Book): Promise<void> {
  await pasteText(book, await navigator.clipboard?.readText().catch(() => null))
}

async function pasteText(book: Book, text: string | null): Promise<void> {
  const { paste } = await pasting()
  const isOurs = text !== null && last?.book === book && sameText(last.block.text, text)
  await paste(book, text, isOurs && last ? last.block.cells : null)
}

/** The command brings about the event, which alone may write to the clipboard everywhere. */
function byCommand(command: 'copy' | 'cut', named: boolean): void {
  asked = { named }
  document.execCommand(command)
  asked = null
}

/** Another program may have changed the line ends, or ended the last line. */
function sameText(a: string, b: string): boolean {
  const plain = (text: string) => text.replaceAll('\r\n', '\n').replace(/\n$/, '')
  return plain(a) === plain(b)
}

/** Text in an open editor, or text that was marked on the page, is copied as text. */
function isForGrid({ target }: Event, copies: boolean): boolean {
  const focused = document.activeElement
  if (!focused?.closest('.worksheets') || focused.closest('input, textarea, .editor, [contenteditable]')) return false
  if (target instanceof Element && target.closest('input, textarea, .editor, [contenteditable]')) return false
  return !copies || (getSelection()?.isCollapsed ?? true)
}
