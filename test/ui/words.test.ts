import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { expect, test } from 'vitest'
import { page } from '../../src/words/en/page'
import { start } from '../../src/words/en/start'
import { hasWords } from '../../src/words/say'

const sources = new Map(
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.tsx?$/.test(path) && !path.startsWith('words/'))
    .map((path) => [path, readFileSync(`src/${path}`, 'utf8')]),
)
const literalIn = (text: string) => [...text.matchAll(/'(page\.[a-z_.]+)'/g)].map(([, key]) => key ?? '')
const begunIn = (text: string) => [...text.matchAll(/`(page\.[a-z_.]*)\$\{/g)].map(([, key]) => key ?? '')
const literal = new Set([...sources.values()].flatMap(literalIn))
/** Beginnings of keys that are put together: `page.title.${page}`. */
const begun = [...new Set([...sources.values()].flatMap(begunIn))]

test('every key that the page says is in the catalogue', () => {
  expect([...literal].filter((key) => !hasWords(key))).toEqual([])
})

test('every text of the page is said somewhere', () => {
  const said = (key: string) => literal.has(key) || begun.some((start) => key.startsWith(start))
  const unsaid = Object.keys(page).filter((key) => !key.startsWith('notice.') && !said(key))
  expect(unsaid).toEqual([])
})

/** The files that come with a file: what it imports, but not what it imports only later. */
function withImports(path: string, found = new Set<string>()): Set<string> {
  if (found.has(path)) return found
  found.add(path)
  for (const [, target = ''] of (sources.get(path) ?? '').matchAll(/^(?:import|export) (?!type )[^']*?'(\.[^']+)'/gm)) {
    const file = normalize(join(dirname(path), target)).replaceAll('\\', '/')
    for (const one of [file, `${file}.ts`, `${file}.tsx`]) if (sources.has(one)) withImports(one, found)
  }
  return found
}

test('what is there from the start says only what the catalogue has from the start', () => {
  const files = [...withImports('ui/main.tsx')]
  expect(files).toContain('ui/grid/ScenarioCell.tsx')
  expect(files).not.toContain('ui/plan/PlanPage.tsx')
  const unsaid = files.flatMap((path) =>
    literalIn(sources.get(path) ?? '')
      .filter((key) => !(key in start))
      .map((key) => `${path}: ${key}`),
  )
  expect(unsaid).toEqual([])
})
