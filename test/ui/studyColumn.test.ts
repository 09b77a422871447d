import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { Live } from '../../src/engine/live'
import { hasValue, type Outcome } from '../../src/engine/outcome'
import { fromFile } from '../../src/notebook/file'
import { cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { resolve } from '../../src/notebook/resolve'
import type { Book } from '../../src/ui/shell/book'
import { heldIn, studyColumn } from '../../src/ui/study/studyColumn'
import { catalogFor } from '../../src/worksheet/catalogFor'
import { prepareOwnWorksheets } from '../../src/worksheet/ownWorksheets'
import { cell, edited } from '../notebook/samples'

const example = fromFile(readFileSync('examples/little-heron.json', 'utf8'), 'little-heron.json')
if (Array.isArray(example)) throw new Error('the example cannot be read')

/** As much of the open notebook as a column is made of. */
function bookOf(notebook: Notebook) {
  const catalog = catalogFor(notebook.worksheets, notebook.rows)
  const live = new Live(notebook)
  const outcomes = new Map<string, Outcome>()
  for (const { scenario, quantity, outcome } of live.all()) outcomes.set(cellKey(scenario, quantity), outcome)
  live.close()
  const book = {
    catalog: () => catalog,
    outcome: (scenario: string, quantity: string) => outcomes.get(cellKey(scenario, quantity)),
    source: (scenario: string, quantity: string) => resolve(notebook, catalog, scenario, quantity),
  }
  return { book: book as Partial<Book> as Book, catalog, scenarios: inOrder(notebook).map(({ id }) => id) }
}

describe('a scenario as a column', () => {
  test('gives what stands in the notebook, for every quantity of every scenario', () => {
    const { book, catalog, scenarios } = bookOf(example)
    const names = [...catalog.quantities.values()].flatMap(({ name, formula }) => (formula ? [name] : []))
    let compared = 0
    for (const scenario of scenarios)
      for (const name of names) {
        const column = studyColumn(book, scenario, [name])
        if (column === null) throw new Error(`${name} is not known`)
        const [[outcome] = []] = new Batch(catalog, [name]).evaluate([column])
        const there = book.outcome(scenario, name)
        expect(hasValue(outcome), name).toBe(hasValue(there))
        if (!hasValue(outcome) || !hasValue(there)) continue
        expect(outcome.value, name).toEqual(there.value)
        compared++
      }
    expect(compared).toBeGreaterThan(150)
  })

  test('waits until all that it rests on is known', () => {
    const { book, scenarios } = bookOf(example)
    const half = { ...book, outcome: (s: string, q: string) => (q === 'ph' ? undefined : book.outcome(s, q)) } as Book
    expect(studyColumn(half, scenarios[0] ?? '', ['lsi'])).toBe(null)
    expect(studyColumn(half, scenarios[0] ?? '', ['salt_mass'])).not.toBe(null)
  })
})

describe('what a column holds still', () => {
  const [first = ''] = inOrder(example).map(({ id }) => id)

  test('a formula typed in a cell, where it reads what is varied', () => {
    const formula = { kind: 'formula', text: 'total_hardness * 0.7' } as const
    const { book } = bookOf(edited(example, cell(first, 'calcium_hardness', formula)))
    expect(heldIn(book, first, 'total_hardness', 'lsi')).toEqual(['calcium_hardness'])
    expect(heldIn(book, first, 'ph', 'lsi')).toEqual([])
    expect(heldIn(book, first, 'calcium_hardness', 'lsi')).toEqual([])
  })

  test('a row of the reader’s own that reads another scenario stands as it is', async () => {
    await prepareOwnWorksheets()
    const row = { name: 'index_rise', unit: '1', formula: 'lsi - baseline.lsi' }
    const own = { id: 'one', worksheet: 'saturation', after: 'lsi', order: 'a0', row }
    const { book, scenarios } = bookOf({ ...example, rows: { one: own } })
    const [, second = ''] = scenarios
    const there = book.outcome(second, 'index_rise')
    if (!hasValue(there)) throw new Error('no value')
    expect(studyColumn(book, second, ['index_rise'])?.get('index_rise')).toBe(there.value)
    expect(heldIn(book, second, 'ph', 'index_rise')).toEqual(['index_rise'])
  })
})
