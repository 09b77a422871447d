import fc from 'fast-check'
import { strFromU8, unzipSync } from 'fflate'
import { XmlDocument } from 'libxml2-wasm'
import { describe, expect, test } from 'vitest'
import { ODS_TYPE, ods } from '../../src/out/ods'
import { contentXml } from '../../src/out/odsContent'
import type { SheetBook, SheetCell } from '../../src/out/sheet'
import { escaped } from '../../src/out/xml'
import { schemaFaults } from './odfSchema'

const cell = (value: SheetCell['value'], shown: string, more: Partial<SheetCell> = {}): SheetCell => ({
  value,
  shown,
  decimals: shown.split('.')[1]?.length ?? 0,
  assumed: false,
  note: '',
  ...more,
})

/** An invented pool. */
const BOOK: SheetBook = {
  title: 'Little Heron & sons',
  language: 'en',
  words: {
    quantity: 'Quantity',
    name: 'In formulas',
    unit: 'Unit',
    formula: 'Formula, as text',
    functions: 'Functions',
    sample: 'Sample',
    sources: 'Sources',
  },
  sheets: [
    {
      title: 'Saturation: index',
      scenarios: [
        { name: 'As tested', sample: 'The first bottle, 2026-05-09' },
        { name: '=1+1', sample: '' },
      ],
      groups: [
        {
          label: 'Readings',
          rows: [
            {
              name: 'ph',
              label: 'pH',
              unit: '',
              unitCode: null,
              formula: '',
              functions: '',
              cells: [cell(7.8, '7.80'), cell(null, 'not taken')],
            },
            {
              name: 'lsi',
              label: 'Saturation  index',
              unit: '1',
              unitCode: '1',
              formula: '=water.lsi < 2 & "x"',
              functions: 'SATURATION 3',
              cells: [cell(0.123456789012345, '0.12'), cell(-0.3, '−0.30', { assumed: true, note: 'Assumed:\ntyped' })],
            },
            {
              name: 'shell',
              label: 'Shell',
              unit: '',
              unitCode: null,
              formula: '',
              functions: '',
              cells: [cell('vinyl', 'vinyl liner'), cell(true, 'yes')],
            },
          ],
        },
      ],
    },
    { title: 'Saturation [index]', scenarios: [], groups: [] },
  ],
  sources: [['Assumptions'], ['Saturation index', '=1+1', '−0.30', 'typed over']],
}

const files = (book: SheetBook) => {
  const unzipped = unzipSync(ods(book))
  return (path: string) => strFromU8(unzipped[path] ?? new Uint8Array())
}

const NS = {
  office: 'urn:oasis:names:tc:opendocument:xmlns:office:1.0',
  table: 'urn:oasis:names:tc:opendocument:xmlns:table:1.0',
  text: 'urn:oasis:names:tc:opendocument:xmlns:text:1.0',
}

function query(xml: string, path: string): string[] {
  const document = XmlDocument.fromString(xml)
  try {
    return document.find(path, NS).map((node) => node.content)
  } finally {
    document.dispose()
  }
}

describe('an OpenDocument spreadsheet', () => {
  test('keeps to the standard’s schemas, file by file', () => {
    const read = files(BOOK)
    for (const path of ['content.xml', 'styles.xml', 'meta.xml']) expect(schemaFaults('document', read(path))).toBe('')
    expect(schemaFaults('manifest', read('META-INF/manifest.xml').replaceAll('version="1.3"', 'version="1.2"'))).toBe(
      '',
    )
  })

  test('whose schemas refuse what the standard does not have', () => {
    const broken = files(BOOK)('content.xml').replace('<table:table-row>', '<table:table-line/><table:table-row>')
    expect(schemaFaults('document', broken)).not.toBe('')
  })

  // ODF 1.3 part 2, 3.3: `mimetype` first, neither compressed nor with an extra field, so that the type stands at byte 38.
  test('says what it is at the fixed place of the standard', () => {
    const bytes = ods(BOOK)
    const text = (from: number, length: number) => strFromU8(bytes.subarray(from, from + length), true)
    expect(text(0, 4)).toBe('PK\u0003\u0004')
    expect([bytes[8], bytes[9]]).toEqual([0, 0])
    expect([bytes[28], bytes[29]]).toEqual([0, 0])
    expect(text(30, 8)).toBe('mimetype')
    expect(text(38, ODS_TYPE.length)).toBe(ODS_TYPE)
  })

  test('has the same bytes for the same content', () => {
    expect(ods(structuredClone(BOOK))).toEqual(ods(BOOK))
  })

  test('names every file of the package in its manifest', () => {
    const named = [...files(BOOK)('META-INF/manifest.xml').matchAll(/full-path="([^"]+)"/g)].map(([, path]) => path)
    expect(named.sort()).toEqual(['/', 'content.xml', 'meta.xml', 'styles.xml'])
  })

  test('has values with all their digits, shows them as the page does, and leaves what is missing empty', () => {
    const xml = contentXml(BOOK)
    expect(query(xml, '//table:table-cell[@office:value-type="float"]/@office:value')).toEqual([
      '7.8',
      '0.123456789012345',
      '-0.3',
    ])
    expect(query(xml, '//table:table-cell[@office:value-type="float"]/text:p')).toEqual(['7.80', '0.12', '−0.30'])
    expect(xml).not.toContain('not taken')
    expect(query(xml, '//office:annotation/text:p')).toEqual(['Assumed:', 'typed'])
    expect(query(xml, '//table:table/@table:name')).toEqual(['Saturation index', 'Saturation index 2', 'Sources'])
  })

  test('never holds a formula, whatever names and texts look like one', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 40 }),
        fc.constantFrom('=', '+', '-', '@', ''),
        (text, first) => {
          const [sheet] = BOOK.sheets
          if (!sheet) return
          const named = first + text
          const book: SheetBook = {
            ...BOOK,
            title: named,
            sheets: [{ ...sheet, title: named, scenarios: sheet.scenarios.map((one) => ({ ...one, name: named })) }],
          }
          const xml = contentXml(book)
          expect(xml).not.toMatch(/table:formula/)
          expect(schemaFaults('document', xml)).toBe('')
        },
      ),
      { seed: 5, numRuns: Number(process.env.LONG ?? 0) > 0 ? 300 : 25 },
    )
  }, 60_000)

  test('keeps every text that XML can hold', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        const document = XmlDocument.fromString(`<a>${escaped(text)}</a>`)
        const back = document.root.content
        document.dispose()
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML 1.0 cannot hold
        expect(back).toBe(text.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, '\uFFFD'))
      }),
      { seed: 6, numRuns: 300 },
    )
  })
})
