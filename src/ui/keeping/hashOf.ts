/** SHA-256 of a file in hexadecimal; empty where the browser does not work it out. */
export async function hashOf(file: Blob): Promise<string> {
  const digest = await crypto.subtle?.digest('SHA-256', await file.arrayBuffer())
  if (digest === undefined) return ''
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('')
}
