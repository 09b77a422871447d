import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { page } from '../../src/words/en/page'
import { hasWords } from '../../src/words/say'

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path) && !path.replaceAll('\\', '/').startsWith('words/'))
  .map((path) => readFileSync(`src/${path}`, 'utf8'))
const literal = new Set(
  sources.flatMap((text) => [...text.matchAll(/'(page\.[a-z_.]+)'/g)].map(([, key]) => key ?? '')),
)
/** Beginnings of keys that are put together: `page.title.${page}`. */
const begun = [
  ...new Set(sources.flatMap((text) => [...text.matchAll(/`(page\.[a-z_.]*)\$\{/g)].map(([, key]) => key ?? ''))),
]

test('every key that the page says is in the catalogue', () => {
  expect([...literal].filter((key) => !hasWords(key))).toEqual([])
})

test('every text of the page is said somewhere', () => {
  const said = (key: string) => literal.has(key) || begun.some((start) => key.startsWith(start))
  const unsaid = Object.keys(page).filter((key) => !key.startsWith('notice.') && !said(key))
  expect(unsaid).toEqual([])
})
