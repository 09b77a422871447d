/** A moment as the reader's language writes it, to the minute. */
export function whenText(time: number): string {
  return new Date(time).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })
}
