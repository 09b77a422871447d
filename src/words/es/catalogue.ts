/** All that the page says, in Spanish; key by key what `en/catalogue.ts` says in English. */
export const es: Readonly<Record<string, string>> = {}
