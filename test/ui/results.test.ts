import { quantileSorted } from 'd3-array'
import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { RESULT, type Results } from '../../src/engine/results'
import { importFile, understand } from '../../src/intake/job'
import { knownQuantities } from '../../src/intake/known'
import { newNotebook } from '../../src/notebook/create'
import { type LabImport, labImportOf } from '../../src/ui/lab/labImport'
import { takeIn } from '../../src/ui/lab/takeIn'
import { arrange } from '../../src/ui/results/arrange'
import { exportCsv } from '../../src/ui/results/exportCsv'
import { orderOf } from '../../src/ui/results/orderOf'
import type { Reader } from '../../src/ui/results/reader'
import { readingColumns } from '../../src/ui/results/readingColumns'
import { resultColumns } from '../../src/ui/results/resultColumns'
import { noteColumns, sampleColumns } from '../../src/ui/results/sampleColumns'
import { createSlices } from '../../src/ui/results/slices'
import { PERCENTILES, spreadOf, summarise } from '../../src/ui/results/summarise'
import type { TableColumn } from '../../src/ui/results/tableColumn'
import { results as words } from '../../src/words/en/results'
import { problem } from '../../src/words/problem'
import { addWords } from '../../src/words/say'
import { bandFor } from '../../src/worksheet/bandFor'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

addWords(words)

const catalog = shippedCatalog()
const reader: Reader = {
  row: (quantity) => catalog.quantities.get(quantity)?.row,
  unit: (quantity) => (quantity === 'temperature' ? '°F' : (catalog.quantities.get(quantity)?.row.unit ?? '1')),
  band: (row) => bandFor(row, {}),
}
const never = () => false

/** An invented file with a limit, a word for a limit, a reading that was not taken, a note and a dangerous name. */
const FILE = `sample,date,ph,temperature [°C],free_chlorine,alkalinity_bottle,Remark
=SUM(A1),2026-05-02,7.40,24.0,<0.2,plain,"said ""no"", twice"
B-2,2026-05-01,7.90,,1.50,plain,
C-3,2026-05-03,7.10,30.5,ND,thiosulfate,-1
`

async function labImport(text = FILE): Promise<LabImport> {
  const known = knownQuantities(catalog.worksheets).filter((one) => one.accept || one.choices)
  const file = new Blob([text])
  const understanding = await understand(file, known, {})
  const imported = await importFile(file, understanding, { progress: () => {}, cancelled: never })
  if (imported === null || 'code' in imported) throw new Error(JSON.stringify(imported))
  return labImportOf({ name: 'invented.csv', size: file.size }, understanding, imported, 0)
}

const columnsOf = (source: LabImport) => [
  ...sampleColumns(source),
  ...readingColumns(source, reader),
  ...noteColumns(source),
]

function column(columns: readonly TableColumn[], key: string): TableColumn {
  const found = columns.find((one) => one.key === key)
  if (!found) throw new Error(`there is no column ${key}`)
  return found
}

describe('columns of the table', () => {
  test('show readings in the reader’s unit, with the places of the file where it is the file’s', async () => {
    const columns = columnsOf(await labImport())
    const texts = (key: string) => [0, 1, 2].map((sample) => column(columns, key).text(sample))
    expect(texts('ph')).toEqual(['7.40', '7.90', '7.10'])
    // 24 and 30.5 °C by the definition of the degree Fahrenheit
    expect(texts('temperature')).toEqual(['75.2', '', '86.9'])
    expect(texts('free_chlorine')).toEqual(['<0.2', '1.50', 'not detected'])
    expect(texts('name')).toEqual(['=SUM(A1)', 'B-2', 'C-3'])
    expect(texts('row')).toEqual(['2', '3', '4'])
    expect([0, 1, 2].map((sample) => column(columns, 'free_chlorine').standing(sample))).toEqual([
      'censored',
      'value',
      'censored',
    ])
    expect([0, 1].map((sample) => column(columns, 'temperature').standing(sample))).toEqual(['value', 'missing'])
    expect(column(columns, 'free_chlorine').number(0)).toBeNaN()
  })

  test('of results say in a few words why there is none', () => {
    const results: Results = {
      count: 3,
      columns: [
        {
          quantity: 'lsi',
          values: Float64Array.of(-0.31, 0, 1),
          states: Uint8Array.of(RESULT.number, RESULT.problem, RESULT.problem),
        },
      ],
      notices: Int32Array.of(1, 0, 0),
      noticeSets: [[], ['assumed:cyanuric_acid']],
      problems: [problem('missing', [], { names: ['calcium_hardness', 'ph'] }), problem('no_such_water', [], {})],
      texts: [],
    }
    const columns = resultColumns(results, reader)
    expect([0, 1, 2].map((sample) => column(columns, 'lsi').text(sample))).toEqual([
      '−0.31',
      'needs calcium hardness and 1 more',
      'no such water',
    ])
    expect([0, 1, 2].map((sample) => column(columns, 'lsi').standing(sample))).toEqual(['value', 'missing', 'refused'])
    expect([0, 1, 2].map((sample) => column(columns, 'lsi').written(sample))).toEqual([-0.31, '', ''])
    expect(column(columns, 'remarks').written(0)).toBe('assumed:cyanuric_acid')
    expect(column(columns, 'remarks').text(0)).toContain('taken as 0')
  })
})

describe('rows of the table', () => {
  const figures = (values: readonly number[]): TableColumn => ({
    key: 'x',
    group: 'reading',
    label: 'x',
    kind: 'figure',
    unit: '1',
    standing: (sample) => (Number.isNaN(values[sample]) ? 'missing' : 'value'),
    number: (sample) => values[sample] ?? Number.NaN,
    text: (sample) => String(values[sample]),
    written: (sample) => values[sample] ?? '',
    side: () => null,
  })

  test('law: sorted as the language sorts, what has no value last, equal ones as in the file', async () => {
    const value = fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ noNaN: true }), fc.constant(Number.NaN))
    await fc.assert(
      fc.asyncProperty(fc.array(value, { maxLength: 300 }), fc.boolean(), async (values, down) => {
        const rows = await arrange(values.length, [figures(values)], [], { column: 'x', down }, never)
        const order = values.map((_, i) => i)
        order.sort((a, b) => {
          const [x = 0, y = 0] = [values[a], values[b]]
          if (Number.isNaN(x) || Number.isNaN(y)) return Number(Number.isNaN(x)) - Number(Number.isNaN(y))
          return down ? y - x || 0 : x - y || 0
        })
        // the infinities' difference is no number, but they do not come up: doubles that are not finite are left out
        fc.pre(values.every((x) => Number.isNaN(x) || Number.isFinite(x)))
        expect([...(rows ?? [])]).toEqual(order)
      }),
      { seed: 5, numRuns: 200 },
    )
  })

  test('meet all conditions at once', async () => {
    const source = await labImport()
    const columns = columnsOf(source)
    const rows = async (...filters: Parameters<typeof arrange>[2]) => [
      ...((await arrange(3, columns, filters, null, never)) ?? []),
    ]
    expect(await rows({ how: 'range', column: 'ph', from: 7.4, to: null })).toEqual([0, 1])
    expect(await rows({ how: 'range', column: 'ph', from: null, to: 7.4 })).toEqual([0, 2])
    // not taken is nowhere between
    expect(await rows({ how: 'range', column: 'temperature', from: -1e9, to: 1e9 })).toEqual([0, 2])
    expect(await rows({ how: 'missing', column: 'temperature' })).toEqual([1])
    expect(await rows({ how: 'censored', column: 'free_chlorine' })).toEqual([0, 2])
    expect(await rows({ how: 'text', column: null, text: 'b-' })).toEqual([1])
    expect(await rows({ how: 'text', column: 'note:Remark', text: 'TWICE' })).toEqual([0])
    expect(await rows({ how: 'outside', column: 'ph' }, { how: 'value', column: 'temperature' })).toEqual([2])
    expect(await rows({ how: 'above', column: 'ph' })).toEqual([1])
    expect(await rows({ how: 'below', column: 'ph' })).toEqual([2])
    expect(await rows({ how: 'text', column: null, text: 'nowhere' })).toEqual([])
  })

  test('by text, down and up', async () => {
    const columns = columnsOf(await labImport())
    const sorted = async (column: string, down: boolean) => [
      ...((await arrange(3, columns, [], { column, down }, never)) ?? []),
    ]
    expect(await sorted('date', false)).toEqual([1, 0, 2])
    expect(await sorted('date', true)).toEqual([2, 0, 1])
    expect(await sorted('note:Remark', false)).toEqual([2, 0, 1])
  })

  test('that are not wanted any more are given up', async () => {
    const values = Array.from({ length: 400_000 }, (_, i) => (i * 7919) % 400_009)
    expect(await arrange(values.length, [figures(values)], [], { column: 'x', down: false }, () => true)).toBeNull()
  })
})

describe('the summary', () => {
  test('gives percentiles by definition 7: the k-th of n values is the share (k - 1) / (n - 1)', () => {
    const values = Float64Array.from({ length: 21 }, (_, i) => i * i)
    expect(spreadOf(values)?.percentiles).toEqual([1, 25, 100, 225, 361])
    expect(spreadOf(Float64Array.of(7.4))).toEqual({
      min: 7.4,
      max: 7.4,
      percentiles: [7.4, 7.4, 7.4, 7.4, 7.4],
      bins: [{ from: 7.4, to: 7.4, count: 1 }],
    })
    expect(spreadOf(new Float64Array())).toBeNull()
  })

  test('law: percentiles are those of d3-array, and every value is in one bin', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 200 }),
        (values) => {
          const spread = spreadOf(Float64Array.from(values))
          const sorted = values.toSorted((a, b) => a - b)
          PERCENTILES.forEach((share, i) => {
            expect(spread?.percentiles[i]).toBeCloseTo(quantileSorted(sorted, share / 100) ?? Number.NaN, 6)
          })
          expect(spread?.bins.reduce((sum, { count }) => sum + count, 0)).toBe(values.length)
        },
      ),
      { seed: 6, numRuns: 200 },
    )
  })

  test('counts what is missing and what is a limit apart', async () => {
    const columns = columnsOf(await labImport())
    const rows = Int32Array.of(0, 1, 2)
    const count = async (key: string) => (await summarise(column(columns, key), rows, createSlices(), never))?.count
    expect(await count('free_chlorine')).toEqual({ value: 1, missing: 0, censored: 2, refused: 0 })
    expect(await count('temperature')).toEqual({ value: 2, missing: 1, censored: 0, refused: 0 })
  })
})

describe('the file of results', () => {
  test('has contract names and canonical numbers, and no text that a spreadsheet would run', async () => {
    const source = await labImport()
    const csv = await (await exportCsv(columnsOf(source), Int32Array.of(0, 1, 2))).text()
    const { data } = Papa.parse<string[]>(csv.trimEnd())
    expect(data).toEqual([
      ['row', 'sample', 'date', 'ph', 'temperature', 'free_chlorine', 'alkalinity_bottle', 'Remark'],
      ['2', "'=SUM(A1)", '2026-05-02', '7.4', '24', '<0.2', 'plain', 'said "no", twice'],
      ['3', 'B-2', '2026-05-01', '7.9', '', '1.5', 'plain', ''],
      ['4', 'C-3', '2026-05-03', '7.1', '30.5', 'ND', 'thiosulfate', "'-1"],
    ])
  })

  test('law: any text comes back as it was, behind an apostrophe where it begins like a formula; numbers stay numbers', async () => {
    const texts = (list: readonly string[]): TableColumn => ({
      key: 'note:text',
      group: 'note',
      label: 'text',
      kind: 'text',
      unit: '',
      standing: () => 'value',
      number: () => Number.NaN,
      text: (sample) => list[sample] ?? '',
      written: (sample) => list[sample] ?? '',
      side: () => null,
    })
    const numbers = (list: readonly string[]): TableColumn => ({ ...texts(list), key: 'ph', written: (i) => -i - 0.5 })
    const text = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.tuple(fc.constantFrom('=', '+', '-', '@', '\t', '\r'), fc.string()).map((parts) => parts.join('')),
    )
    await fc.assert(
      fc.asyncProperty(fc.array(text, { minLength: 1, maxLength: 20 }), async (list) => {
        const rows = Int32Array.from(list, (_, i) => i)
        const csv = await (await exportCsv([texts(list), numbers(list)], rows)).text()
        const { data } = Papa.parse<string[]>(csv, { newline: '\n', delimiter: ',' })
        list.forEach((one, i) => {
          const [cell = '', figure = ''] = data[i + 1] ?? []
          expect(cell).toBe(/^[=+\-@\t\r]/.test(one) ? `'${one}` : one)
          expect(Number(figure)).toBe(-i - 0.5)
        })
      }),
      { seed: 8, numRuns: 200 },
    )
  })
})

describe('chosen samples', () => {
  test('come into the notebook with the figures of the file, their row and their file', async () => {
    const source = await labImport()
    const notebook = newNotebook('Invented pool', 'As tested', 'metric')
    const edit = takeIn(notebook, source, [0, 2], {
      elsewhere: true,
      censored: 'half',
      scenarios: false,
      catalog,
    })
    if (edit.type !== 'together') throw new Error(edit.type)
    const samples = edit.edits.flatMap((one) => (one.type === 'put_sample' ? [one.sample] : []))
    expect(samples.map(({ name, date, origin }) => [name, date, origin])).toEqual([
      ['=SUM(A1)', '2026-05-02', { file: 'invented.csv', row: 2, import: source.head.id }],
      ['C-3', '2026-05-03', { file: 'invented.csv', row: 4, import: source.head.id }],
    ])
    expect(samples[0]?.readings).toMatchObject({
      ph: { kind: 'value', entered: '7.40', unit: 'pH', canonical: 7.4 },
      temperature: { kind: 'value', entered: '24.0', unit: '°C', canonical: 24 },
      free_chlorine: { kind: 'value', canonical: 0.1, method: '<0.2' },
      alkalinity_bottle: { kind: 'choice', id: 'plain' },
    })
    // a limit of which only the word is known is nothing to reckon with
    expect(samples[1]?.readings).not.toHaveProperty('free_chlorine')
  })

  test('keep a limit as one, from which nothing is worked out', async () => {
    const source = await labImport()
    const notebook = newNotebook('Invented pool', 'As tested', 'metric')
    const edit = takeIn(notebook, source, [0], { elsewhere: true, censored: 'leave_out', scenarios: false, catalog })
    if (edit.type !== 'together') throw new Error(edit.type)
    const [one] = edit.edits
    expect(one?.type === 'put_sample' && one.sample.readings.free_chlorine).toMatchObject({
      kind: 'limit',
      side: 'below',
      canonical: 0.2,
    })
  })

  test('go to the long run with the limit, half of it, or not at all', async () => {
    const source = await labImport()
    const given = (censored: 'leave_out' | 'limit' | 'half') => {
      const order = orderOf(source, ['lsi'], censored, [], { worksheets: {}, rows: {} })
      const chlorine = order.columns.find(({ quantity }) => quantity === 'free_chlorine')
      return [...(chlorine?.values ?? [])].map((value, i) => (chlorine?.taken[i] === 1 ? value : null))
    }
    expect(given('leave_out')).toEqual([null, 1.5, null])
    expect(given('limit')).toEqual([0.2, 1.5, null])
    expect(given('half')).toEqual([0.1, 1.5, null])
    const order = orderOf(source, ['lsi'], 'limit', [], { worksheets: {}, rows: {} })
    expect(order.columns.find(({ quantity }) => quantity === 'alkalinity_bottle')?.choices).toContain('thiosulfate')
  })
})
