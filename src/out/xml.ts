export type Attributes = Readonly<Record<string, string | number | undefined>>

/** An element with its content, which is XML already; an attribute without a value is left out. */
export function element(name: string, attributes: Attributes = {}, ...content: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(String(value))}"`)
    .join('')
  return content.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${content.join('')}</${name}>`
}

export function document(root: string): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`
}

const MARKS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

/** Text for XML 1.0: marks escaped; what that standard has no way to hold (most control characters) is U+FFFD. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/[&<>"]/g, (mark) => MARKS[mark] ?? mark)
    .replace(/[\t\n\r]/g, (space) => `&#${space.charCodeAt(0)};`)
}
