import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize, relative } from 'node:path'
import { describe, expect, test } from 'vitest'

/** Which folders of src a folder may import from (its own aside). The table of DEVELOPERS.md is this one. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  chemistry: [],
  words: [],
  units: ['words'],
  functions: ['chemistry', 'units', 'words'],
  worksheet: ['functions', 'units', 'words'],
  notebook: ['worksheet', 'functions', 'units', 'words'],
  engine: ['notebook', 'worksheet', 'functions', 'chemistry', 'units', 'words'],
  planner: ['notebook', 'worksheet', 'functions', 'units', 'words'],
  study: ['notebook', 'worksheet', 'functions', 'units', 'words'],
  intake: ['notebook', 'worksheet', 'functions', 'units', 'words'],
  storage: ['notebook', 'worksheet', 'words'],
  out: [],
  record: ['notebook', 'worksheet', 'functions', 'chemistry', 'units', 'words'],
  ui: [
    'engine',
    'planner',
    'study',
    'intake',
    'record',
    'storage',
    'out',
    'notebook',
    'worksheet',
    'functions',
    'units',
    'words',
  ],
  headless: ['engine', 'planner', 'intake', 'notebook', 'worksheet', 'functions', 'units', 'words'],
}

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts'))

/** The files of ours that a file imports, types included, as paths below src. */
function importsOf(path: string): string[] {
  const text = readFileSync(join('src', path), 'utf8')
  const found = [...text.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+)'|new URL\('(\.[^']+)'/g)]
  return found
    .map((match) => match[1] ?? match[2] ?? '')
    .map((target) => normalize(relative('src', join('src', dirname(path), target))).replaceAll('\\', '/'))
    .map((target) => sources.find((s) => s === target || s === `${target}.ts` || s === `${target}.tsx`) ?? target)
}

const graph = new Map(sources.map((path) => [path, importsOf(path)]))

describe('imports', () => {
  test('every folder of src is in the table', () => {
    const folders = new Set(sources.filter((path) => path.includes('/')).map((path) => path.split('/')[0] ?? ''))
    expect([...folders].filter((folder) => !(folder in MAY_IMPORT))).toEqual([])
  })

  test('run one way', () => {
    const wrong: string[] = []
    for (const [path, targets] of graph) {
      const folder = path.split('/')[0] ?? ''
      for (const target of targets) {
        const other = target.split('/')[0] ?? ''
        if (other === '..' || other === folder) continue
        if (!MAY_IMPORT[folder]?.includes(other)) wrong.push(`${path} imports ${target}`)
      }
    }
    expect(wrong).toEqual([])
  })

  test('form no circle', () => {
    const state = new Map<string, 'open' | 'done'>()
    const circles: string[] = []
    const walk = (path: string, trail: readonly string[]): void => {
      if (state.get(path) === 'done') return
      if (state.get(path) === 'open') {
        circles.push([...trail.slice(trail.indexOf(path)), path].join(' → '))
        return
      }
      state.set(path, 'open')
      for (const target of graph.get(path) ?? []) if (graph.has(target)) walk(target, [...trail, path])
      state.set(path, 'done')
    }
    for (const path of graph.keys()) walk(path, [])
    expect(circles).toEqual([])
  })

  test('only the engine knows the formula engine, and only intake and pasting the CSV parser', () => {
    const using = (library: string) =>
      sources
        .filter((path) => readFileSync(join('src', path), 'utf8').includes(`'${library}'`))
        .map((path) => path.split('/')[0])
    expect(new Set(using('hyperformula'))).toEqual(new Set(['engine']))
    expect([...new Set(using('papaparse'))].filter((folder) => folder !== 'intake' && folder !== 'ui')).toEqual([])
  })
})

// A link to the folder of packages that is committed replaces the folder itself wherever it is checked out.
test.runIf(existsSync('.git'))('installed packages stay out of the repository', () => {
  expect(execFileSync('git', ['ls-files', 'node_modules'], { encoding: 'utf8' })).toBe('')
})
