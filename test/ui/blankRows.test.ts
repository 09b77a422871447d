import { expect, test } from 'vitest'
import { type ImportedColumns, STATE } from '../../src/intake/columnar'
import { createTexts, textAt } from '../../src/intake/texts'
import { blankRows } from '../../src/ui/lab/blankRows'
import { isAbout, rowsAbout } from '../../src/ui/lab/rowsAbout'

const texts = (...all: readonly string[]) => {
  const made = createTexts()
  for (const text of all) made.push(text)
  return made.finish()
}
const COLUMNS: ImportedColumns = {
  count: 3,
  rows: Int32Array.of(2, 3, 5),
  names: texts('Peña pool', 'Else', 'North'),
  dates: texts('2026-05-01', '2026-05-02', ''),
  quantities: [
    {
      quantity: 'ph',
      unit: 'pH',
      values: Float64Array.of(7.1, 7.2, 7.3),
      states: Uint8Array.of(STATE.value, STATE.value, STATE.unlikely),
      decimals: Uint8Array.of(1, 1, 1),
    },
  ],
  notes: [{ heading: 'Remarks', texts: texts('', 'rain', 'next to PENA POOL') }],
}

test('the rows that speak of a pool are found by name and note, whatever the case and accents', () => {
  expect(rowsAbout(COLUMNS, ['peña pool', ''])).toEqual([2, 5])
  expect(rowsAbout(COLUMNS, ['nobody'])).toEqual([])
  expect(rowsAbout(COLUMNS, ['', ' '])).toEqual([])
  expect(isAbout('7;Pena Pool;unreadable', ['Peña pool'])).toBe(true)
})

test('blank rows stand in their place with nothing in them, and the others are as they were', () => {
  const blank = blankRows(COLUMNS, new Set([2, 5]))
  expect(blank.count).toBe(3)
  expect([...blank.rows]).toEqual([2, 3, 5])
  expect([0, 1, 2].map((i) => textAt(blank.names, i))).toEqual(['', 'Else', ''])
  expect([0, 1, 2].map((i) => textAt(blank.dates, i))).toEqual(['', '2026-05-02', ''])
  expect([0, 1, 2].map((i) => textAt(blank.notes[0]?.texts ?? texts(), i))).toEqual(['', 'rain', ''])
  expect([...(blank.quantities[0]?.values ?? [])]).toEqual([Number.NaN, 7.2, Number.NaN])
  expect([...(blank.quantities[0]?.states ?? [])]).toEqual([STATE.notTaken, STATE.value, STATE.notTaken])
  expect(new TextDecoder().decode(blank.names.bytes)).toBe('Else')
})
