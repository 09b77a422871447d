/** A text as a file in the reader's downloads. */
export function downloadText(name: string, text: string, type = 'application/json'): void {
  downloadBlob(name, new Blob([text], { type }))
}

export function downloadBlob(name: string, content: Blob): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
