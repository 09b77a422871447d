/**
 * A heading, analyte or word as lookups compare it: lower case, no accents, digits for sub- and superscripts, words
 * parted by single spaces, letters with points between them together. `Säurekapazität KS₄,₃` becomes `saurekapazitat ks4 3`.
 */
export function spelling(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/(?<![\p{L}\p{N}])(?:\p{L}\.){2,}/gu, (letters) => `${letters.replaceAll('.', '')} `)
    .replace(/(?<=^|\W)cl\s*[-−⁻](?=$|\W)/gu, ' clminus ')
    .replace(/[^\p{L}\p{N}+]+/gu, ' ')
    .replace(/(?<=^|\s)\++(?=\s|$)/g, '')
    .replace(/\s+/g, ' ')
    .trim()
}

/** The same where umlauts were written out: `saeure` and `saure` meet. */
export function folded(spelled: string): string {
  return spelled.replace(/([aou])e/g, '$1')
}

/** Whether one slip of the pen (a letter missing, doubled or swapped with its neighbour, never one for another) parts them. */
export function oneSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false
  let i = 0
  while (i < a.length && a[i] === b[i]) i++
  if (a.length === b.length) {
    return a[i] === b[i + 1] && a[i + 1] === b[i] && a.slice(i + 2) === b.slice(i + 2)
  }
  const [long, short] = a.length > b.length ? [a, b] : [b, a]
  return long.slice(i + 1) === short.slice(i)
}
