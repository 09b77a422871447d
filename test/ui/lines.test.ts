import { expect, test } from 'vitest'
import { rowsOf } from '../../src/ui/grid/gridRow'
import { foldId, isRow, linesOf } from '../../src/ui/grid/line'
import { matchRows } from '../../src/ui/grid/matchRows'
import { shippedOutline } from '../../src/worksheet/shippedOutline'

const catalog = shippedOutline()
const rows = rowsOf(catalog)

test('what is folded is one line, and nothing of it is left', () => {
  expect(linesOf(rows, new Set())).toEqual(rows)
  const [first] = rows
  if (!first) throw new Error('no rows')
  const group = foldId(first.worksheet, first.group)
  const lines = linesOf(rows, new Set([group]))
  expect(lines[0]).toEqual({ key: `fold:${group}`, worksheet: first.worksheet, fold: group })
  expect(lines.slice(1)).toEqual(rows.filter((row) => foldId(row.worksheet, row.group) !== group))
  // a folded worksheet is one line, whatever is folded in it
  const folded = linesOf(rows, new Set([group, foldId(first.worksheet), 'salt']))
  expect(folded.filter((line) => line.worksheet === first.worksheet)).toHaveLength(1)
  expect(folded.filter((line) => !isRow(line)).map(({ key }) => key)).toEqual([`fold:${first.worksheet}`, 'fold:salt'])
  expect(linesOf(rows, new Set(catalog.worksheets.map(({ id }) => id)))).toHaveLength(catalog.worksheets.length)
})

test('a part of a name finds the quantity, its own worksheet before those that show it too', () => {
  const found = (typed: string) => matchRows(rows, catalog.worksheets, typed).map(({ key }) => key)
  expect(found('langelier')[0]).toBe('saturation/lsi')
  expect(found('lsi')).toContain('saturation/lsi')
  expect(found('total alk')[0]).toBe('sample/total_alkalinity')
  expect(found('total alk')).toContain('saturation/total_alkalinity')
  expect(found('RYZNAR')).toEqual(['saturation/ryznar'])
  expect(found('  ')).toEqual([])
  expect(found('no such thing')).toEqual([])
})
