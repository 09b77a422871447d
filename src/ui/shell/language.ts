import { keepPreference, preference } from '../../storage/preference'
import { locale, localeFor, setLocale } from '../../words/locale'

/** Sets how this reader's page writes, before anything is drawn. */
export function prepareLanguage(): void {
  setLocale(localeFor(navigator.languages, { language: preference('language'), decimal: preference('decimal') }))
  document.documentElement.lang = locale().language
}

/** A choice of decimal mark; the page is opened anew with it. */
export async function speak(choice: { readonly decimal: '.' | ',' }, settled: () => Promise<void>): Promise<void> {
  keepPreference('decimal', choice.decimal)
  await settled()
  location.reload()
}
