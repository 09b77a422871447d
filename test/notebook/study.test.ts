import { expect, test } from 'vitest'
import { checkEdit } from '../../src/notebook/checkEdit'
import { fromFile } from '../../src/notebook/file'
import type { Chart } from '../../src/notebook/notebook'
import { toFile } from '../../src/notebook/toFile'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { applied, EMPTY, edited, refusal } from './samples'

const chart: Chart = {
  id: 'one',
  name: 'Index against pH',
  kind: 'sweep',
  input: 'ph',
  from: 7,
  to: 8,
  points: 41,
  outputs: ['lsi'],
  scenarios: [],
}
const asked = (edit: Parameters<typeof checkEdit>[1]) => refusal(checkEdit(EMPTY, edit, shippedCatalog(), () => null))

test('a chart comes, changes, goes, and comes back by undo', () => {
  const put = applied(EMPTY, { type: 'put_chart', chart })
  const changed = applied(put.notebook, { type: 'put_chart', chart: { ...chart, points: 21 } })
  expect(edited(changed.notebook, changed.inverse).charts).toEqual({ one: chart })
  const gone = applied(changed.notebook, { type: 'remove_chart', chart: 'one' })
  expect(gone.notebook.charts).toEqual({})
  expect(edited(gone.notebook, gone.inverse)).toEqual(changed.notebook)
  expect(edited(put.notebook, put.inverse)).toEqual(EMPTY)
})

test('a precision is set, and taken back to the usual one', () => {
  const precision = { kind: 'value', entered: '0.2', unit: 'pH', canonical: 0.2 } as const
  const set = applied(EMPTY, { type: 'set_precision', quantity: 'ph', precision })
  expect(set.notebook.precisions).toEqual({ ph: precision })
  expect(edited(set.notebook, { type: 'set_precision', quantity: 'ph', precision: null })).toEqual(EMPTY)
  expect(edited(set.notebook, set.inverse)).toEqual(EMPTY)
})

test('charts and precisions are kept in the file', () => {
  const notebook = edited(
    EMPTY,
    { type: 'put_chart', chart },
    {
      type: 'put_chart',
      chart: { id: 'two', name: 'Side by side', kind: 'comparison', outputs: ['ph'], scenarios: [] },
    },
    { type: 'set_precision', quantity: 'ph', precision: { kind: 'method', method: 'strip' } },
  )
  expect(fromFile(toFile(notebook), 'book.json')).toEqual(notebook)
})

test('what cannot be drawn or meant is refused', () => {
  const put = (change: object) => asked({ type: 'put_chart', chart: { ...chart, ...change } as Chart })
  expect(put({})).toBe('not refused')
  expect(put({ outputs: ['nothing'] })).toMatch(/nothing/)
  expect(put({ input: 'shell' })).toMatch(/not a number/)
  expect(put({ input: 'lsi' })).toMatch(/not a number/)
  expect(put({ from: 8, to: 8 })).toMatch(/ends before it begins/)
  const precise = (unit: string) =>
    asked({
      type: 'set_precision',
      quantity: 'ph',
      precision: { kind: 'value', entered: '1', unit, canonical: 1 },
    })
  expect(precise('pH')).toBe('not refused')
  expect(precise('mg/L')).not.toBe('not refused')
})
