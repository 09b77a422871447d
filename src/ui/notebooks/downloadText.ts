export function downloadText(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
