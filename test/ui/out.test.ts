import { readFileSync } from 'node:fs'
import { Readable } from 'node:stream'
import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { hasValue } from '../../src/engine/outcome'
import { readHeader } from '../../src/headless/header'
import { intake } from '../../src/headless/intakeCommand'
import { createSampleReader } from '../../src/intake/rows'
import { sniff } from '../../src/intake/sniff'
import { fromFile } from '../../src/notebook/file'
import type { Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { ods } from '../../src/out/ods'
import { contentXml } from '../../src/out/odsContent'
import { bookOf } from '../../src/ui/out/bookOf'
import { fileName } from '../../src/ui/out/fileName'
import { fitOnPage } from '../../src/ui/out/fitOnPage'
import { worksheetCsv } from '../../src/ui/out/worksheetCsv'
import { convert } from '../../src/units/convert'
import { exactIn } from '../../src/units/exactIn'
import { UNITS } from '../../src/units/unit'
import { isProblem } from '../../src/words/problem'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { known } from '../intake/known'
import { cell, edited, scenario } from '../notebook/samples'
import { schemaFaults } from '../out/odfSchema'
import { viewOf } from './viewOf'

const EXAMPLE = fromFile(readFileSync('examples/little-heron.json', 'utf8'), 'little-heron.json') as Notebook
const [BASELINE] = inOrder(EXAMPLE).map(({ id }) => id)

const csvOf = (notebook: Notebook) => {
  const view = viewOf(notebook)
  const text = worksheetCsv(view, view.catalog().worksheets, view.scenarios())
  const [header = [], ...lines] = Papa.parse<string[]>(text.trimEnd(), { delimiter: ',' }).data
  return { view, text, header, lines }
}

describe('worksheets as CSV', () => {
  test.each(['metric', 'us'] as const)('are read back equal by the command, in %s units', (profile) => {
    const { view, header, lines } = csvOf({ ...EXAMPLE, profile })
    const columns = readHeader(header, shippedCatalog())
    if (isProblem(columns)) throw new Error(columns.code)
    let numbers = 0
    lines.forEach((line, i) => {
      const id = view.scenarios()[i] ?? ''
      columns.forEach((column, at) => {
        if (column.kind !== 'quantity') return
        const outcome = view.outcome(id, column.name)
        const written = line[at] ?? ''
        if (!hasValue(outcome)) expect(written).toBe('')
        else if (typeof outcome.value !== 'number') expect(written).toBe(String(outcome.value))
        else {
          numbers++
          const row = view.catalog().quantities.get(column.name)?.row.unit ?? ''
          const back = convert(Number(written), column.unit, row)
          if (typeof back !== 'number') throw new Error(`${column.name}: ${JSON.stringify(back)}`)
          // equal, or the neighbouring double where no figure in this unit leads back to it
          expect(Math.abs(back - outcome.value)).toBeLessThanOrEqual(Math.abs(outcome.value) * 2 ** -51)
        }
      })
    })
    // the column of assumptions is of no quantity, and the command passes over it
    expect(columns.filter(({ kind }) => kind === 'unknown')).toEqual([{ kind: 'unknown', heading: 'assumed' }])
    expect(numbers).toBeGreaterThan(150)
  })

  test('name each quantity once, and each scenario in a line', () => {
    const { header, lines, view } = csvOf(EXAMPLE)
    expect(new Set(header).size).toBe(header.length)
    expect(lines.map(([name]) => name)).toEqual(inOrder(EXAMPLE).map(({ name }) => name))
    expect(lines.every((line) => line.length === header.length)).toBe(true)
    expect(view.scenarios()).toHaveLength(lines.length)
  })

  test('mark what is typed over what the notebook works out, also where a scenario follows it', () => {
    const typed = { kind: 'value', entered: '42', unit: 'm³', canonical: 42 } as const
    const notebook = edited(EXAMPLE, cell(BASELINE ?? '', 'volume', typed), cell(BASELINE ?? '', 'lsi', typed))
    const { header, lines } = csvOf(notebook)
    expect(header.at(-1)).toBe('assumed')
    expect(lines[0]?.at(-1)?.split(' ').sort()).toEqual(['lsi', 'volume'])
    expect(lines.at(-1)?.at(-1)).toContain('volume')
    expect(csvOf(EXAMPLE).lines.map((line) => line.at(-1))).toEqual(lines.map(() => ''))
  })

  test('are read back by the lab page, which keeps the mark as a note', () => {
    const typed = { kind: 'value', entered: '42', unit: 'm³', canonical: 42 } as const
    const { text } = csvOf({ ...edited(EXAMPLE, cell(BASELINE ?? '', 'volume', typed)), profile: 'metric' })
    // as the lab page asks: only what is entered is taken, the rest stays a note
    const entered = known.filter(({ accept, choices }) => accept !== undefined || choices !== undefined)
    const understanding = sniff(text, entered)
    expect(understanding.problems).toEqual([])
    expect(understanding.columns.find(({ heading }) => heading === 'assumed')?.role).toBe('note')
    const reader = createSampleReader(understanding)
    const [first] = [...reader.push(text), ...reader.end()].flatMap((one) =>
      one.kind === 'sample' ? [one.sample] : [],
    )
    expect(first?.notes.assumed).toBe('volume')
    const ph = viewOf(EXAMPLE).outcome(BASELINE ?? '', 'ph')
    expect(first?.readings.ph).toMatchObject({ kind: 'value', canonical: hasValue(ph) ? ph.value : null })
  })

  test.each(['metric', 'us'] as const)(
    'are read again by the command that reads laboratory files, in %s units: no scenario is refused for a word',
    async (profile) => {
      const view = viewOf({ ...EXAMPLE, profile })
      const text = worksheetCsv(view, view.catalog().worksheets, view.scenarios())
      let out = ''
      const said: string[] = []
      const status = await intake(['-'], {
        input: Readable.from([Buffer.from(text)]),
        out: async (part) => {
          out += part
        },
        complain: (line) => said.push(line),
      })
      expect(said.slice(0, -1)).toContain(
        '4 columns hold words that the worksheets work out, and no readings; left aside: dilution_governs, aeration_needed, cell_may_run, cell_symptom_look.',
      )
      expect(status).toBe(0)
      expect(JSON.parse(said.at(-1) ?? '')).toMatchObject({ rows: 3, samples: 3, refused: 0 })
      const [header = [], first = []] = Papa.parse<string[]>(out.trimEnd(), { delimiter: ',' }).data
      const at = (name: string) => first[header.indexOf(name)]
      const stands = (name: string) => view.outcome(BASELINE ?? '', name)
      for (const name of ['ph', 'lsi', 'volume']) {
        const outcome = stands(name)
        expect(Number(at(name))).toBeCloseTo(Number(hasValue(outcome) ? outcome.value : Number.NaN), 9)
      }
      const setting = stands('setting')
      expect(at('setting')).toBe(hasValue(setting) ? setting.value : '')
      expect(header).not.toContain('cell_may_run')
    },
  )

  test('keep the limit of a test as one: it is no number, and it is not lost', () => {
    const limit = { kind: 'limit', side: 'below', entered: '<0.2', unit: 'mg/L as Cl2', canonical: 0.2 } as const
    const notebook = edited(EXAMPLE, cell(BASELINE ?? '', 'free_chlorine', limit))
    const { header, lines } = csvOf({ ...notebook, profile: 'metric' })
    expect(lines[0]?.[header.findIndex((name) => name.startsWith('free_chlorine'))]).toBe('<0.2')
    const view = viewOf(notebook)
    const rows = bookOf(view, view.catalog().worksheets, view.scenarios(), 'en').sheets.flatMap(({ groups }) => groups)
    const [first] = rows.flatMap((group) => group.rows).filter(({ name }) => name === 'free_chlorine')
    expect(first?.cells[0]?.value).toMatch(/^< 0\.2/)
  })

  // What spreadsheets take for the beginning of a formula: OWASP, "CSV injection".
  test.each(['=1+1', '+1', '-1', '@SUM(1)', '=HYPERLINK("x";"y"), z'])('let no spreadsheet run the name %s', (name) => {
    const { text, lines } = csvOf(edited(EXAMPLE, scenario('evil', 'aZ', name)))
    expect(text).not.toMatch(/(^|[,\n])"?[=+@-](?![\d.])/)
    expect(lines.at(-1)?.[0]).toBe(`'${name}`)
  })

  test('write a figure with the digits that lead back to it, and no others', () => {
    expect(exactIn(15, '°C', '°F')).toBe(59)
    expect(exactIn(0.1 + 0.2, '1', '1')).toBe(0.30000000000000004)
    expect(exactIn(1, 'mg/L', 'kg')).toBeNull()
    const same = UNITS.flatMap((a) => UNITS.map((b) => [a, b] as const)).filter(
      ([a, b]) => a.dimension === b.dimension && a.basis === b.basis,
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...same),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-9),
        ([from, to], value) => {
          const figure = exactIn(value, from.code, to.code)
          const back = figure === null ? null : convert(figure, to.code, from.code)
          const size = Math.max(Math.abs(value), Math.abs(from.offset), Math.abs(to.offset), Number.MIN_VALUE)
          expect(typeof back === 'number' && Math.abs(back - value) <= size * 2 ** -49).toBe(true)
        },
      ),
      { seed: 11, numRuns: 500 },
    )
  })
})

describe('worksheets as a spreadsheet', () => {
  test('keep to the standard’s schema, every worksheet and the sources', () => {
    const view = viewOf(edited(EXAMPLE, cell(BASELINE ?? '', 'volume', { kind: 'formula', text: '40 + 2' })))
    const book = bookOf(view, view.catalog().worksheets, view.scenarios(), 'en')
    const xml = contentXml(book)
    expect(schemaFaults('document', xml)).toBe('')
    expect(book.sheets).toHaveLength(view.catalog().worksheets.length)
    expect(ods(book).length).toBeGreaterThan(5_000)
  })

  test('show a large figure without decimals that it does not have', () => {
    const volume = { kind: 'value', entered: '60', unit: 'm³', canonical: 60 } as const
    const view = viewOf({ ...edited(EXAMPLE, cell(BASELINE ?? '', 'volume', volume)), profile: 'us' })
    const rows = bookOf(view, view.catalog().worksheets, view.scenarios(), 'en').sheets.flatMap(({ groups }) => groups)
    const [first] = rows.flatMap((group) => group.rows).filter(({ name }) => name === 'volume')
    expect(first?.cells[0]).toMatchObject({ shown: '15,850', decimals: 0 })
  })

  test('mark an assumption where it stands and list it with its scenario and value', () => {
    const view = viewOf(
      edited(EXAMPLE, cell(BASELINE ?? '', 'volume', { kind: 'value', entered: '42', unit: 'm³', canonical: 42 })),
    )
    const book = bookOf(view, view.catalog().worksheets, view.scenarios(), 'en')
    const rows = book.sheets.flatMap(({ groups }) => groups.flatMap((group) => group.rows))
    const marked = rows.filter(({ cells }) => cells.some(({ assumed }) => assumed)).map(({ name }) => name)
    expect(new Set(marked)).toEqual(new Set(['volume']))
    expect(rows.find(({ name }) => name === 'volume')?.cells.every(({ assumed }) => assumed)).toBe(true)
    expect(book.sources).toContainEqual(expect.arrayContaining(['Volume', 'As tested']))
  })

  test('say which functions made the numbers, in which version, and from what source', () => {
    const view = viewOf(EXAMPLE)
    const [saturation] = view.catalog().worksheets.filter(({ id }) => id === 'saturation')
    if (!saturation) throw new Error('there is no such worksheet')
    const book = bookOf(view, [saturation], view.scenarios(), 'en')
    const lsi = book.sheets[0]?.groups.flatMap(({ rows }) => rows).find(({ name }) => name === 'lsi')
    expect(lsi?.functions).toMatch(/^[A-Z_]+ \d+/)
    expect(book.sources.some(([first, , source]) => lsi?.functions.startsWith(first ?? '-') && source)).toBe(true)
  })
})

test('a name for a file has nothing that file systems refuse', () => {
  expect(fileName('A/B: "C"', 'Salt', 'csv')).toBe('A B C, Salt.csv')
  expect(fileName('??', '', 'ods')).toBe('notebook.ods')
})

describe('on one page', () => {
  test('a sheet lies on its side when it is larger that way, and never leaves the paper', () => {
    expect(fitOnPage(400, 300)).toEqual({ scale: 1, wide: false })
    expect(fitOnPage(900, 300).wide).toBe(true)
    expect(fitOnPage(600, 1400).wide).toBe(false)
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 20_000 }), fc.integer({ min: 50, max: 20_000 }), (width, height) => {
        const { scale, wide } = fitOnPage(width, height)
        // A4 is 210 by 297 mm, US letter 215.9 by 279.4 mm; margins of 12 mm
        const [across, down] = wide ? [279.4 - 24, 210 - 24] : [210 - 24, 279.4 - 24]
        expect((width * scale * 25.4) / 96).toBeLessThanOrEqual(across)
        expect((height * scale * 25.4) / 96).toBeLessThanOrEqual(down)
      }),
      { seed: 3 },
    )
  })
})
