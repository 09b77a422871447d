import { hasWords, say } from '../words/say'

/** A row's caution: a key of the catalogue, or in a reader's own worksheet the sentence itself. */
export function cautionText(caution: string): string {
  const key = `caution.${caution}`
  return hasWords(key) ? say(key) : caution
}
