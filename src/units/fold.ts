const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/**
 * What keyboards and copied text write in many ways, in one: spaces, minus signs, foot and inch marks, `5½` as `5 1/2`.
 * Not Unicode's own folding, by which `5½` would become `51/2` and `10³` would become `103`.
 */
export function foldText(text: string): string {
  return text
    .replace(/\s/gu, ' ')
    .replace(/[−–—﹣-]/gu, '-')
    .replace(/[′’ʼ]/gu, "'")
    .replace(/[″”“]/gu, '"')
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/gu, (glyph) => ` ${VULGAR[glyph] ?? glyph}`)
    .trim()
}

/** A unit's text in the one form in which the table of spellings is kept; capitals are left as they are. */
export function foldUnit(text: string): string {
  return text
    .replace(/[µμ]/gu, 'u')
    .replace(/[º˚]/gu, '°')
    .replace(/℃/gu, '°C')
    .replace(/℉/gu, '°F')
    .replace(/[²³¹⁻]/gu, (mark) => ({ '²': '2', '³': '3', '¹': '1', '⁻': '-' })[mark] ?? mark)
    .replace(/[₀-₉]/gu, (digit) => String(digit.charCodeAt(0) - 0x2080))
    .replace(/\^/g, '')
    .replace(/ +/g, ' ')
    .replace(/ per /gi, '/')
    .replace(/ ?\/ ?/g, '/')
    .replace(/\b(?:liters?|litres?)\b/gi, 'L')
    .replace(/[ .·*]?[lL]-1$/, '/L')
    .replace(/\.$/, '')
    .trim()
}
