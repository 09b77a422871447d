import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkEntered } from '../../src/notebook/checkEntered'
import { checkNotebook } from '../../src/notebook/checkNotebook'
import { valueCell } from '../../src/notebook/valueCell'
import { convert } from '../../src/units/convert'
import { parseEntry } from '../../src/units/parseEntry'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { catalogFor } from '../../src/worksheet/catalogFor'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { cell, EMPTY, edited, sample } from './samples'

const catalog = shippedCatalog()

function against(name: string, entered: string, unit: string, canonical: number): string | null {
  const quantity = catalog.quantities.get(name)
  if (!quantity) throw new Error(name)
  const fault = checkEntered(quantity, { kind: 'value', entered, unit, canonical })
  return fault && sentence(fault)
}

describe('an entry in a file and the value beside it', () => {
  test('that contradict each other are refused with their place and both figures', () => {
    const wrong = { kind: 'value', entered: '7.4', unit: 'pH', canonical: 9.4 } as const
    const over = { kind: 'limit', side: 'above', entered: '100', unit: 'mg/L', canonical: 10 } as const
    const notebook = edited(EMPTY, cell('first', 'ph', wrong), {
      type: 'put_sample',
      sample: { ...sample('one', { cyanuric_acid: over }), others: { ph: [wrong] } },
    })
    expect(checkNotebook(notebook, catalog, 'mine.json').map(sentence)).toMatchInlineSnapshot(`
      [
        "mine.json, cells.first/ph: “7.4” was entered, which is 7.4, but 9.4 stands beside it. Correct one of the two.",
        "mine.json, samples.one.readings.cyanuric_acid: “100 mg/L” was entered, which is 100 mg/L, but 10 mg/L stands beside it. Correct one of the two.",
        "mine.json, samples.one.others.ph.0: “7.4” was entered, which is 7.4, but 9.4 stands beside it. Correct one of the two.",
      ]
    `)
  })

  test.each([
    ['ph', '7.4', 'pH', 7.44],
    ['ph', '7', 'pH', 7.4],
    ['temperature', '82', '°F', 82],
    ['temperature', '0', '°C', 0.3],
    ['volume', '15000', 'US gal', 15000],
    ['salt', '3200', 'mg/L as NaCl', 3201],
    ['salt', '', 'mg/L as NaCl', 3200],
    ['salt', '-', 'mg/L as NaCl', 3200],
    ['salt', '3.2 or so', 'mg/L as NaCl', 3200],
    ['salt', '3200 g/L', 'mg/L as NaCl', 3200],
  ] as const)('%s: “%s” %s is not %d', (name, entered, unit, canonical) => {
    expect(against(name, entered, unit, canonical)).not.toBeNull()
  })

  test.each([
    ['salt', '3200.0000000000005', 'mg/L as NaCl', 3200],
    ['salt', '3200', 'mg/L as NaCl', 3200.0000000000005],
    ['salt', '6e3', 'mg/L as NaCl', 6000],
    ['temperature', '32', '°F', 0],
    ['volume', '6000', 'US gal', 22.7125],
    ['measured_volume', '1/3', 'm³', 1 / 3],
  ] as const)('%s: “%s” %s is %d', (name, entered, unit, canonical) => {
    expect(against(name, entered, unit, canonical)).toBeNull()
  })

  test('in a row of the reader’s own may be of the unit that the row had before: the file still opens', () => {
    const own = { name: 'my_salt', unit: 'lb', formula: '2 * bag_mass' }
    const notebook = edited(
      EMPTY,
      { type: 'put_row', row: { id: 'r', worksheet: 'salt', after: 'salt_mass', order: 'a1', row: own } },
      cell('first', 'my_salt', { kind: 'value', entered: '3', unit: 'kg', canonical: 3 }),
    )
    expect(checkNotebook(notebook, catalogFor({}, notebook.rows), 'mine.json')).toEqual([])
  })

  test('whatever can be typed in any row agrees with itself', () => {
    const numbers = [...catalog.quantities.values()].filter(({ row }) => !('choices' in row))
    const units = ['US gal', '°F', 'ft', 'in', 'lb', '%', 'g/L', 'mmol/L', 'mg/L as N', 'mg/L as Ca', '°dH', 'oz', '']
    const texts = ['15\' 6"', '5 ft 6 in', '2 lb 3 oz', '1/3', '5 1/2', '33 %', '15,000', '7.40', '-3', '.5', '1e-7']
    const text = fc.oneof(
      fc.constantFrom(...texts),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }).map(String),
      fc.tuple(fc.constantFrom('3', '0.25', '120', '1/8'), fc.constantFrom(...units)).map((parts) => parts.join(' ')),
    )
    let read = 0
    fc.assert(
      fc.property(fc.constantFrom(...numbers), text, fc.constantFrom('metric', 'us'), (quantity, typed, profile) => {
        const entry = parseEntry(typed, quantity.row.unit, { profile, decimal: '.', quantity: quantity.name })
        if (entry === null || entry === 'not_taken' || isProblem(entry)) return
        read++
        expect(checkEntered(quantity, { kind: 'value', ...entry })).toBeNull()
      }),
      { seed: 20261129, numRuns: 3000 },
    )
    expect(read).toBeGreaterThan(1000)
  })

  test('and so does whatever was worked out, copied to twelve figures, or taken from a laboratory’s file', () => {
    const value = fc.double({ min: -1e5, max: 1e5, noNaN: true })
    const temperature = catalog.quantities.get('temperature')
    if (!temperature) throw new Error('temperature')
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), (canonical, places) => {
        expect(checkEntered(temperature, valueCell(catalog, 'temperature', canonical))).toBeNull()
        const shown = Number(convert(canonical, '°C', '°F'))
        const copied = String(Number(shown.toPrecision(12)))
        expect(checkEntered(temperature, { kind: 'value', entered: copied, unit: '°F', canonical })).toBeNull()
        // a laboratory's figure in its unit and places
        const figure = Number(canonical.toFixed(places))
        const inFile = Number(convert(Number(convert(figure, '°F', '°C')), '°C', '°F')).toFixed(places)
        const taken = { kind: 'value', entered: inFile, unit: '°F', canonical: Number(convert(figure, '°F', '°C')) }
        expect(checkEntered(temperature, taken as never)).toBeNull()
      }),
      { seed: 20261129, numRuns: 1000 },
    )
  })
})
