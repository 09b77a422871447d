import { keepPreference, preference } from '../../storage/preference'
import { type Language, locale, localeFor, setLocale } from '../../words/locale'
import { translate } from '../../words/say'

/** Sets how this reader's page speaks and writes, and brings its words where they are not English; before anything is drawn. */
export async function prepareLanguage(): Promise<void> {
  setLocale(localeFor(navigator.languages, { language: preference('language'), decimal: preference('decimal') }))
  const { language } = locale()
  document.documentElement.lang = language
  if (language === 'es') translate((await import('../../words/es/catalogue')).es)
}

/** A choice of language or decimal mark; the page is opened anew with it. */
export async function speak(
  choice: { readonly language: Language } | { readonly decimal: '.' | ',' },
  settled: () => Promise<void>,
): Promise<void> {
  for (const [name, value] of Object.entries(choice)) keepPreference(name, value)
  await settled()
  location.reload()
}
