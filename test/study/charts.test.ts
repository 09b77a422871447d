import { describe, expect, test } from 'vitest'
import { LOCKED } from '../../src/functions/registry'
import { hasWords } from '../../src/words/say'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Definition } from '../../src/worksheet/definition'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const { worksheets, quantities } = shippedCatalog()
const shipped = worksheets.flatMap(({ id, charts }) => (charts ?? []).map((chart) => ({ worksheet: id, ...chart })))

describe('the charts of the worksheets', () => {
  test.each(shipped)('$worksheet, $id: it has words, and stays within what its input accepts', (chart) => {
    expect(hasWords(`chart.${chart.worksheet}.${chart.id}`)).toBe(true)
    const row = quantities.get(chart.input)?.row
    if (!row || !('accept' in row)) throw new Error('no number input')
    expect(chart.from).toBeGreaterThanOrEqual(row.accept[0])
    expect(chart.to).toBeLessThanOrEqual(row.accept[1])
    expect(chart.outputs.every((name) => quantities.get(name)?.formula)).toBe(true)
  })

  test('what cannot be drawn is refused, with its place', () => {
    const sheet = (chart: object): Definition =>
      ({
        format: 'basinbook-worksheet',
        version: 1,
        id: 'mine',
        edition: 1,
        takes: [],
        groups: [
          {
            id: 'all',
            rows: [
              { name: 'a', unit: '1', input: 'number', accept: [0, 9] },
              { name: 'b', unit: '1', formula: 'a * 2' },
              { name: 'c', unit: 'truth', formula: 'a > 2' },
            ],
          },
        ],
        charts: [{ id: 'x', input: 'a', from: 1, to: 2, outputs: ['b'], ...chart }],
      }) as Definition
    const faults = (chart: object) => {
      const built = buildCatalog([{ definition: sheet(chart), file: 'mine.json', shipped: false }], LOCKED)
      return isCatalog(built) ? [] : built.map(({ code, path }) => `${code} ${path.join('.')}`)
    }
    expect(faults({})).toEqual([])
    expect(faults({ input: 'z' })).toEqual(['row_not_known mine.json.charts.0.input'])
    expect(faults({ input: 'b' })).toEqual(['chart_not_input mine.json.charts.0.input'])
    expect(faults({ from: 2 })).toEqual(['span_order mine.json.charts.0.from'])
    expect(faults({ outputs: ['b', 'z'] })).toEqual(['row_not_known mine.json.charts.0.outputs.1'])
    expect(faults({ outputs: ['c'] })).toEqual(['chart_not_number mine.json.charts.0.outputs.0'])
  })
})
