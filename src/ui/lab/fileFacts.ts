import { say } from '../../words/say'
import type { ImportHead } from './labImport'

/** By which file, in which state of it, an import can be told from any other. */
export function fileFacts({ name, size, sha256, read }: ImportHead): string {
  return say('page.lab.file_facts', { name, size: sizeWords(size), sha256: sha256.slice(0, 12), when: whenWords(read) })
}

export function whenWords(time: number): string {
  return new Date(time).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })
}

function sizeWords(bytes: number): string {
  const format = new Intl.NumberFormat('en', { maximumSignificantDigits: 3 })
  if (bytes < 1_000) return `${format.format(bytes)} B`
  return bytes < 1_000_000 ? `${format.format(bytes / 1_000)} kB` : `${format.format(bytes / 1_000_000)} MB`
}
