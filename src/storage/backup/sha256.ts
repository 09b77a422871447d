const encoder = new TextEncoder()

/** SHA-256 of a text's UTF-8, in hexadecimal, by the browser's own Web Cryptography. */
export async function sha256(text: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', encoder.encode(text))
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('')
}
