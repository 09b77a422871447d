import { afterEach, describe, expect, test } from 'vitest'
import { pastedTable } from '../../src/intake/pastedTable'
import type { Cell } from '../../src/notebook/notebook'
import { copyBlock } from '../../src/ui/grid/copyBlock'
import { parseEntry } from '../../src/units/parseEntry'
import { setLocale } from '../../src/words/locale'
import { cell, EMPTY, edited, number } from '../notebook/samples'
import { bookFor } from './bookFor'

const limit: Cell = { kind: 'limit', side: 'above', entered: '12000.5', unit: 'ppm as NaCl', canonical: 12_000.5 }
const notebook = edited(
  { ...EMPTY, units: { salt: 'mg/L as NaCl' } },
  cell('first', 'phosphate', number(1.255, 'mg/L as PO4')),
  cell('first', 'length', number(12_345.5 / 100, 'm')),
  cell('first', 'salt', { ...limit, unit: 'mg/L as NaCl' }),
)
const book = bookFor(notebook)
const copyOf = (...names: readonly string[]) => {
  const rows = names.map((name) => {
    const quantity = book.catalog().quantities.get(name)
    if (!quantity) throw new Error(name)
    return { key: name, worksheet: '', group: '', quantity }
  })
  return copyBlock(book, { rows, scenarios: ['first'] }, false)
}

afterEach(() => setLocale({ language: 'en', tag: 'en', decimal: '.' }))

describe('what is copied', () => {
  test.each(['.', ','] as const)('is read back equal by a reader whose decimal mark is %s', (decimal) => {
    setLocale({ language: 'en', tag: decimal === ',' ? 'en-DE' : 'en', decimal })
    const { text, html } = copyOf('phosphate', 'length')
    expect(pastedTable(text)).toEqual([[`1${decimal}255`], [`123${decimal}455`]])
    expect(html).toContain(`<td>1${decimal}255</td>`)
    const [[first = ''] = []] = pastedTable(text)
    const back = parseEntry(first, 'mg/L as PO4', { profile: 'metric', displayed: book.unit('phosphate') })
    expect(back).toMatchObject({ entered: '1.255' })
  })

  test('is kept by the notebook with a point, whatever the reader’s mark', () => {
    setLocale({ language: 'es', tag: 'es', decimal: ',' })
    expect(copyOf('phosphate').cells).toMatchObject([[{ cell: { entered: '1.255' } }]])
  })

  test('has no marks between groups, and a limit stays one', () => {
    setLocale({ language: 'es', tag: 'es', decimal: ',' })
    expect(copyOf('salt').text).toBe('> 12000,5')
  })
})
