import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { checkNotebook } from '../../src/notebook/checkNotebook'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { resolve } from '../../src/notebook/resolve'
import { toFile } from '../../src/notebook/toFile'
import { parseEntry } from '../../src/units/parseEntry'
import { catalogFor } from '../../src/worksheet/catalogFor'

const files = readdirSync('examples').filter((name) => name.endsWith('.json'))
const text = (file: string) => readFileSync(join('examples', file), 'utf8')

function opened(file: string): Notebook {
  const notebook = fromFile(text(file), file)
  if (Array.isArray(notebook)) throw new Error(JSON.stringify(notebook))
  return notebook
}

describe.each(files)('%s', (file) => {
  const notebook = opened(file)
  const catalog = catalogFor(notebook.worksheets)

  test('suits the shipped worksheets, and is written as we write', () => {
    expect(checkNotebook(notebook, catalog, file)).toEqual([])
    expect(toFile(notebook)).toBe(text(file))
  })

  test('says that it is invented', () => {
    expect(notebook.note).toMatch(/invented/i)
  })

  test('each number is what its entry says', () => {
    const readings = Object.values(notebook.samples).flatMap((sample) => Object.entries(sample.readings))
    const typed = Object.entries(notebook.cells).map(([key, cell]) => [key.slice(key.indexOf('/') + 1), cell] as const)
    const values = [...readings, ...typed].flatMap(([name, cell]) =>
      cell.kind === 'value' ? [[name, cell] as const] : [],
    )
    expect(values.length).toBeGreaterThan(8)
    for (const [name, { entered, unit, canonical }] of values) {
      const read = parseEntry(entered, catalog.quantities.get(name)?.row.unit ?? '', {
        profile: notebook.profile,
        displayed: unit,
      })
      expect(read, name).toEqual({ entered, unit, canonical })
    }
  })
})

test('the small round pool has three scenarios; the later ones follow the first where nothing is typed', () => {
  const notebook = opened('little-heron.json')
  const catalog = catalogFor(notebook.worksheets)
  expect(inOrder(notebook).map(({ name }) => name)).toEqual(['As tested', 'A third drained', 'pH brought to 7.4'])
  const canonical = (scenario: string, quantity: string) => {
    const { cell } = resolve(notebook, catalog, scenario, quantity)
    return cell?.kind === 'value' ? cell.canonical : null
  }
  // 15 ft and 4 ft by the international foot, 0.3048 m
  expect(canonical('ph-lowered', 'diameter')).toBeCloseTo(15 * 0.3048, 12)
  expect(canonical('third-drained', 'depth_shallow')).toBeCloseTo(4 * 0.3048, 12)
  expect(canonical('third-drained', 'ph')).toBe(7.8)
  expect(canonical('ph-lowered', 'ph')).toBe(7.4)
})
