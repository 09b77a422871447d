/** A text as a file in the reader's downloads. */
export function downloadText(name: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
