/** Languages that the page speaks. */
export const LANGUAGES = ['en', 'es'] as const
export type Language = (typeof LANGUAGES)[number]

/** How the reader's sentences, numbers and dates are written. */
export interface Locale {
  readonly language: Language
  /** BCP 47 tag by which dates and the numbers inside sentences are written */
  readonly tag: string
  /** the mark before decimals, in what is shown and in what is typed; formulas always have a point */
  readonly decimal: '.' | ','
}

/** Until the page says otherwise, and for the commands. */
let current: Locale = { language: 'en', tag: 'en', decimal: '.' }

export function locale(): Locale {
  return current
}

/** Set once, before anything is said. */
export function setLocale(next: Locale): void {
  current = next
}

/**
 * The locale of a reader whose browser prefers these tags, the most wanted first. What was chosen on the page goes before:
 * a language of ours, and the decimal mark. Dates and numbers are written as in the reader's own country where that speaks
 * the language of the page.
 */
export function localeFor(
  preferred: readonly string[],
  chosen: { readonly language: string | null; readonly decimal: string | null },
): Locale {
  const languageOf = (tag: string) => tag.split('-')[0]?.toLowerCase()
  const known = (name: string | null | undefined) => LANGUAGES.find((one) => one === name)
  const language = known(chosen.language) ?? preferred.map((tag) => known(languageOf(tag))).find(Boolean) ?? 'en'
  const own = preferred.find((tag) => languageOf(tag) === language && isTag(tag)) ?? language
  // The mark follows the country, whatever the language: a reader in Berlin types 7,4 on an English page too.
  const home = preferred.find(isTag) ?? own
  const decimal = chosen.decimal === ',' || chosen.decimal === '.' ? chosen.decimal : markOf(home)
  return { language, tag: markOf(own) === decimal ? own : withMark(language, decimal), decimal }
}

function isTag(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length > 0
  } catch {
    return false
  }
}

function markOf(tag: string): '.' | ',' {
  const part = new Intl.NumberFormat(tag).formatToParts(1.5).find(({ type }) => type === 'decimal')
  return part?.value === ',' ? ',' : '.'
}

/** A country of the language that writes numbers with this mark. */
function withMark(language: Language, decimal: '.' | ','): string {
  const tags: Record<Language, readonly [point: string, comma: string]> = {
    en: ['en', 'en-DE'],
    es: ['es-MX', 'es'],
  }
  return tags[language][decimal === '.' ? 0 : 1]
}
