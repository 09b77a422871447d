import { beforeAll, describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { Live } from '../../src/engine/live'
import type { Outcome } from '../../src/engine/outcome'
import { apply } from '../../src/notebook/apply'
import type { Edit } from '../../src/notebook/edit'
import type { Notebook } from '../../src/notebook/notebook'
import { addRow } from '../../src/notebook/rowCommands'
import { isProblem } from '../../src/words/problem'
import { catalogFor, catalogWith } from '../../src/worksheet/catalogFor'
import type { OwnFormulaRow } from '../../src/worksheet/ownRow'
import { prepareOwnWorksheets } from '../../src/worksheet/ownWorksheets'
import { cell, EMPTY, edited, number, scenario } from '../notebook/samples'

beforeAll(prepareOwnWorksheets)

const row = (name: string, unit: string, formula: string, more: Partial<OwnFormulaRow> = {}): OwnFormulaRow => ({
  name,
  unit,
  formula,
  ...more,
})

const kilograms = (canonical: number) => number(canonical, 'kg')

const withRows = (notebook: Notebook, ...rows: readonly OwnFormulaRow[]) =>
  rows.reduce((now, content) => edited(now, addRow(now, 'salt', 'salt_mass', content)), notebook)

/** Two scenarios with a mass typed over in each: 10 kg and 25 kg. */
const BOOK = edited(
  EMPTY,
  scenario('second', 'a1', 'Drain a third'),
  cell('first', 'salt_mass', kilograms(10)),
  cell('second', 'salt_mass', kilograms(25)),
)

function outcomes(notebook: Notebook): Map<string, Outcome> {
  const live = new Live(notebook)
  const all = new Map(live.all().map(({ scenario: id, quantity, outcome }) => [`${id}/${quantity}`, outcome]))
  live.close()
  return all
}

describe('own rows in the engine', () => {
  test('are worked out in every scenario, and may read another', () => {
    const book = withRows(
      BOOK,
      row('my_two', 'kg', '2 * salt_mass'),
      row('my_more', 'kg', 'salt_mass - baseline.salt_mass'),
      row('my_other', 'kg', "'second'.salt_mass"),
    )
    const all = outcomes(book)
    expect(all.get('first/my_two')).toMatchObject({ value: 20 })
    expect(all.get('second/my_two')).toMatchObject({ value: 50 })
    expect(all.get('second/my_more')).toMatchObject({ value: 15 })
    expect(all.get('first/my_other')).toMatchObject({ value: 25 })
  })

  test('come and go by edits', () => {
    const live = new Live(BOOK)
    live.all()
    const add = addRow(BOOK, 'salt', 'salt_mass', row('my_two', 'kg', '2 * salt_mass'))
    const found = live.edit([add]).find(({ scenario: id, quantity }) => id === 'first' && quantity === 'my_two')
    expect(found?.outcome).toMatchObject({ value: 20 })
    const changed = live.edit([cell('first', 'salt_mass', kilograms(11))])
    expect(changed).toContainEqual(
      expect.objectContaining({ quantity: 'my_two', outcome: expect.objectContaining({ value: 22 }) }),
    )
    const applied = apply(BOOK, add)
    if (isProblem(applied)) throw new Error(applied.code)
    expect(live.edit([applied.inverse as Edit]).some(({ quantity }) => quantity === 'my_two')).toBe(false)
    live.close()
  })

  test('whose units do not agree have no number, and neither has what reads them', () => {
    const book = withRows(BOOK, row('my_bad', 'kg', 'salt_mass + volume'), row('my_next', 'kg', 'my_bad * 2'))
    const { catalog } = catalogWith({}, book.rows)
    expect(catalog.quantities.get('my_bad')?.refused).toMatchObject({
      code: 'units_together',
      facts: { left_unit: 'kg', right_unit: 'm³', at: 1 },
    })
    const all = outcomes(book)
    expect(all.get('first/my_bad')).toMatchObject({ problem: { code: 'units_flagged', facts: { name: 'my_bad' } } })
    expect(all.get('first/my_next')).toMatchObject({ problem: { code: 'units_flagged', facts: { name: 'my_bad' } } })
    const batch = new Batch(catalogFor({}, book.rows), ['my_bad', 'my_next'])
    expect(batch.evaluate([new Map([['salt_mass', 10]])])[0]).toMatchObject([
      { problem: { code: 'units_flagged' } },
      { problem: { code: 'units_flagged' } },
    ])
    batch.close()
    const said = withRows(BOOK, row('my_rate', 'kg', '0.5 * salt_mass * volume / volume ^ 2', { units_as_said: true }))
    expect(catalogFor({}, said.rows).quantities.get('my_rate')?.refused).toBeUndefined()
  })

  test('that cannot be worked out keep their place, formula and reason; all others stand', () => {
    const book = withRows(
      BOOK,
      row('my_two', 'kg', '2 * salt_mass'),
      row('my_lost', 'kg', 'gone_row + 1'),
      row('my_torn', 'kg', '2 * ('),
      row('my_here', 'kg', 'my_there + 1'),
      row('my_there', 'kg', 'my_here + 1'),
    )
    const { catalog, refused } = catalogWith({}, book.rows)
    expect(refused).toEqual([])
    expect(catalog.quantities.get('my_lost')).toMatchObject({
      refused: { code: 'formula_unknown_name' },
      row: { formula: 'gone_row + 1' },
      formula: { text: 'gone_row + 1' },
    })
    expect(catalog.quantities.get('my_torn')?.refused).toMatchObject({ code: 'formula_ends_early' })
    const circle = ['my_here', 'my_there'].map((name) => catalog.quantities.get(name)?.refused?.code)
    expect(circle.sort()).toEqual(['formula_circle', undefined])
    const all = outcomes(book)
    expect(all.get('first/my_two')).toMatchObject({ value: 20 })
    for (const name of ['my_lost', 'my_torn', 'my_here', 'my_there'])
      expect(all.get(`first/${name}`)).toMatchObject({ problem: { code: 'formula_refused' } })
  })

  test('that double a text from row to row end at a text that is too long, and so does all that reads it', () => {
    const doubled = Array.from({ length: 12 }, (_, i) =>
      row(`t${i + 1}`, 'choice', i === 0 ? '"aaaaaaaaaaaaaaaa" & "b"' : `t${i} & t${i}`),
    )
    const all = outcomes(withRows(BOOK, ...doubled))
    expect(all.get('first/t6')).toMatchObject({ value: `${'a'.repeat(16)}b`.repeat(32) })
    for (const name of ['t7', 't12'])
      expect(all.get(`first/${name}`)).toMatchObject({ problem: { code: 'text_too_long', facts: { most: 1_000 } } })
  })

  test('never stand for a shipped quantity', () => {
    const book = withRows(BOOK, row('my_two', 'kg', '2 * salt_mass'))
    const [own] = Object.values(book.rows)
    if (!own) throw new Error('no row')
    const hostile = { ...book.rows, [own.id]: { ...own, row: { ...own.row, name: 'lsi', unit: '1', formula: '0' } } }
    const { catalog, refused } = catalogWith({}, hostile)
    expect(refused).toMatchObject([{ code: 'name_shadows_shipped' }])
    expect(catalog.quantities.get('lsi')).toMatchObject({ worksheet: 'saturation', formula: { text: 'water.lsi' } })
    expect(catalog.quantities.get('lsi')?.own).toBeUndefined()
  })
})
