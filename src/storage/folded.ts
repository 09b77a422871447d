/** Letters that no normal form takes apart. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  ł: 'l',
  þ: 'th',
  ı: 'i',
}

/** A text as it is searched: small letters without accents, one space between words. */
export function folded(text: string): string {
  const small = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
  return small
    .replace(/[ßæœøđðłþı]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim()
}
