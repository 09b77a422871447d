import { afterEach, describe, expect, test } from 'vitest'
import { pastedTable } from '../../src/intake/pastedTable'
import { checkFormula } from '../../src/notebook/checkFormula'
import type { Notebook } from '../../src/notebook/notebook'
import { copyBlock, fieldOf } from '../../src/ui/grid/copyBlock'
import { hasOurHeadings, placeByName } from '../../src/ui/grid/placeByName'
import { planPlaced } from '../../src/ui/grid/planPaste'
import { sayPasted } from '../../src/ui/grid/sayPasted'
import { prepareFormulas } from '../../src/ui/shell/formulas'
import { setLocale } from '../../src/words/locale'
import { cell, EMPTY, edited, number } from '../notebook/samples'
import { bookFor } from './bookFor'

await prepareFormulas()
afterEach(() => setLocale({ language: 'en', tag: 'en', decimal: '.' }))

const notebook = edited(
  { ...EMPTY, profile: 'us' },
  cell('first', 'ph', number(7.6, 'pH')),
  cell('first', 'temperature', number(25, '°C')),
  cell('first', 'measured_volume', number(50, 'm³')),
  cell('first', 'total_alkalinity', { kind: 'formula', text: '40 * 2' }),
  cell('first', 'setting', { kind: 'choice', id: 'outdoor' }),
)

function copied(now: Notebook, ...names: readonly string[]): string[][] {
  const book = bookFor(now)
  const rows = names.map((name) => {
    const quantity = book.catalog().quantities.get(name)
    if (!quantity) throw new Error(name)
    return { key: name, worksheet: '', group: '', quantity }
  })
  return pastedTable(copyBlock(book, { rows, scenarios: book.scenarios() }, true).text)
}

function pasted(now: Notebook, table: readonly (readonly string[])[]) {
  const book = bookFor(now)
  const scope = {
    notebook: now,
    catalog: book.catalog(),
    rows: [...book.catalog().quantities.values()],
    unit: book.unit,
    check: checkFormula,
    stands: (scenario: string, quantity: Parameters<typeof fieldOf>[2]) => fieldOf(book, scenario, quantity),
  }
  const { places, same, strangers } = placeByName(table, null, scope)
  const { edit, report } = planPlaced(places, scope)
  return { edit, report: { ...report, same, strangers } }
}

const ALL = ['ph', 'temperature', 'measured_volume', 'total_alkalinity', 'setting', 'lsi', 'volume'] as const

test('the headings that we write are known again; any others are fields', () => {
  expect(hasOurHeadings(copied(notebook, 'ph'))).toBe(true)
  expect(hasOurHeadings([['Quantity', 'Unit']])).toBe(false)
  expect(hasOurHeadings([['7.4', '7.5', '7.6']])).toBe(false)
  expect(hasOurHeadings([])).toBe(false)
})

describe('what was copied with names and units', () => {
  test.each(['.', ','] as const)(
    'changes nothing when it comes back as it was, with the decimal mark %s',
    (decimal) => {
      setLocale({ language: 'en', tag: decimal === ',' ? 'en-DE' : 'en', decimal })
      const table = copied(notebook, ...ALL)
      const { edit, report } = pasted(notebook, table)
      expect(edit).toBeNull()
      expect(report).toMatchObject({ taken: 0, locked: 0, refused: [], strangers: { fields: 0 }, same: 7 })
    },
  )

  test('goes to the rows and scenarios that it names, in whatever order, in the unit that stands beside it', () => {
    const [head = [], ...lines] = copied(notebook, 'ph', 'temperature', 'measured_volume')
    const name = head[2] ?? ''
    const table = [
      head,
      [lines[2]?.[0] ?? '', 'm³', '60'],
      [lines[1]?.[0] ?? '', '°C', '30'],
      [lines[0]?.[0] ?? '', '', '7.60'],
      ['', '', ''],
    ]
    const { edit, report } = pasted(notebook, table)
    expect(report).toMatchObject({ taken: 2, same: 1, locked: 0, refused: [] })
    expect(edit).toMatchObject({
      edits: [
        { quantity: 'measured_volume', scenario: 'first', cell: { entered: '60', unit: 'm³', canonical: 60 } },
        { quantity: 'temperature', scenario: 'first', cell: { entered: '30', unit: '°C', canonical: 30 } },
      ],
    })
    expect(name).not.toBe('')
  })

  test('from this very notebook puts back the cells as they were copied, formulas included, where something else stands by now', () => {
    const book = bookFor(notebook)
    const rows = ['ph', 'total_alkalinity'].flatMap((name) => {
      const quantity = book.catalog().quantities.get(name)
      return quantity ? [{ key: name, worksheet: '', group: '', quantity }] : []
    })
    const { text, cells } = copyBlock(book, { rows, scenarios: ['first'] }, true)
    const later = edited(notebook, cell('first', 'total_alkalinity', number(95, 'mg/L as CaCO3')))
    const scope = (now: Notebook) => {
      const open = bookFor(now)
      return {
        notebook: now,
        rows: [...open.catalog().quantities.values()],
        unit: open.unit,
        stands: (scenario: string, quantity: Parameters<typeof fieldOf>[2]) => fieldOf(open, scenario, quantity),
      }
    }
    expect(placeByName(pastedTable(text), cells, scope(notebook))).toMatchObject({ places: [], same: 2 })
    expect(placeByName(pastedTable(text), cells, scope(later))).toMatchObject({
      places: [{ field: { quantity: 'total_alkalinity', cell: { kind: 'formula', text: '40 * 2' } } }],
      same: 1,
    })
  })

  test('is told where it has no place, and where its unit is none', () => {
    const [head = [], [label = ''] = []] = copied(notebook, 'temperature')
    const { edit, report } = pasted(notebook, [
      [...head, 'Another pool', ''],
      [label, 'kg', '30', '31', ''],
      ['No such row', '°C', '5', '6', ''],
    ])
    expect(edit).toBeNull()
    expect(report.refused).toMatchObject([{ why: { path: [label] } }])
    expect(report.strangers).toEqual({ rows: ['No such row'], scenarios: ['Another pool'], fields: 3 })
    expect(sayPasted(report)).toEqual([
      'Nothing was taken.',
      '3 cells found no place by name.',
      'This notebook has no row “No such row”.',
      'This notebook has no scenario “Another pool”.',
      'One cell was refused:',
    ])
  })

  test('leaves worked-out rows as they are, and counts only those that say something else', () => {
    const [head = [], ...lines] = copied(notebook, 'volume', 'lsi')
    const changed = lines.map(([label = '', unit = '']) => [label, unit, '1234'])
    expect(pasted(notebook, [head, ...changed]).report).toMatchObject({ taken: 0, locked: 2, same: 0 })
  })

  test('of two rows with one label takes the one that can hold it; where nothing tells them apart it is refused', () => {
    const [head = []] = copied(notebook, 'ph')
    const percent = pasted(notebook, [head, ['Setting', '%', '60']])
    expect(percent.edit).toMatchObject({ quantity: 'cell_setting', cell: { entered: '60', unit: '%' } })
    const neither = pasted(notebook, [head, ['Salt at most', 'ppm as NaCl', '6000']])
    expect(neither.edit).toBeNull()
    expect(neither.report.refused).toMatchObject([{ why: { code: 'pasted_several' } }])
  })
})
