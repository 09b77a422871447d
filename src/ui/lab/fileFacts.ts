import { say } from '../../words/say'
import { numberText, timeText } from '../../words/written'
import type { ImportHead } from './labImport'

/** By which file, in which state of it, an import can be told from any other. */
export function fileFacts({ name, size, sha256, read }: ImportHead): string {
  return say('page.lab.file_facts', { name, size: sizeWords(size), sha256: sha256.slice(0, 12), when: whenWords(read) })
}

export function whenWords(time: number): string {
  return timeText(time)
}

function sizeWords(bytes: number): string {
  const short = (value: number) => numberText(value, { maximumSignificantDigits: 3 })
  if (bytes < 1_000) return `${short(bytes)} B`
  return bytes < 1_000_000 ? `${short(bytes / 1_000)} kB` : `${short(bytes / 1_000_000)} MB`
}
