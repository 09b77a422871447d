import { beforeAll, describe, expect, test } from 'vitest'
import { newNotebook } from '../../src/notebook/create'
import { inOrder } from '../../src/notebook/order'
import { prepareFormulas } from '../../src/ui/shell/formulas'
import { readEntry } from '../../src/ui/shell/readEntry'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const notebook = newNotebook('Invented', 'As tested', 'us')
const [baseline] = inOrder(notebook)

/** The canonical value of what was read; NaN where it was no value. */
function valueFor(entered: string, name: string, unit: string): number {
  const cell = cellFor(entered, name, unit)
  return typeof cell === 'object' && cell !== null && 'canonical' in cell ? cell.canonical : Number.NaN
}

function cellFor(entered: string, name: string, unit: string) {
  const quantity = shippedCatalog().quantities.get(name)
  if (!quantity || !baseline) throw new RangeError(name)
  const read = readEntry(entered, { scenario: baseline.id, quantity, unit, notebook })
  if (isProblem(read)) return sentence(read)
  return read.type === 'set_cell' ? read.cell : read
}

test('until what reads formulas is there, a formula is refused and told why', () => {
  expect(cellFor('=ph', 'ph', 'pH')).toMatch(/^pH: what reads formulas is still on its way/)
})

describe('readEntry', () => {
  beforeAll(prepareFormulas)

  test('a bare number is in the unit that is shown', () => {
    // the boiling point of water: 212 °F is 100 °C
    expect(cellFor('212', 'temperature', '°F')).toMatchObject({ kind: 'value', entered: '212', unit: '°F' })
    expect(valueFor('212', 'temperature', '°F')).toBeCloseTo(100, 9)
  })

  test('a number with its unit is in that unit', () => {
    // 1 US gal is 3.785411784 L exactly
    expect(valueFor('15,000 gal', 'measured_volume', 'm³')).toBeCloseTo(56.78117676, 8)
  })

  test('nothing clears, a dash is "not taken"', () => {
    expect(cellFor('  ', 'ph', 'pH')).toBeNull()
    expect(cellFor('-', 'ph', 'pH')).toEqual({ kind: 'not_taken' })
    expect(cellFor('−', 'ph', 'pH')).toEqual({ kind: 'not_taken' })
  })

  test('a limit of a test is kept as one, in its unit, where a reading may be one', () => {
    expect(cellFor('>100', 'cyanuric_acid', 'ppm')).toEqual({
      kind: 'limit',
      side: 'above',
      entered: '100',
      unit: 'ppm',
      canonical: 100,
    })
    // 3.2 g/L is 3200 mg/L
    expect(cellFor('< 3.2 g/L', 'salt', 'ppm as NaCl')).toMatchObject({ kind: 'limit', side: 'below', canonical: 3200 })
    expect(cellFor('>', 'salt', 'ppm as NaCl')).toMatch(/is a limit/)
    expect(cellFor('>50', 'measured_volume', 'm³')).toMatch(/is a limit/)
  })

  test('an equals sign begins a formula', () => {
    expect(cellFor('= baseline.ph - 0.2', 'ph', 'pH')).toEqual({ kind: 'formula', text: 'baseline.ph - 0.2' })
  })

  test('what cannot be read comes back as a sentence that starts with the quantity', () => {
    expect(cellFor('=ph +', 'ph', 'pH')).toMatch(/^pH: the formula ends/)
    expect(cellFor('abc', 'ph', 'pH')).toMatch(/^pH: /)
    expect(cellFor('59 °F', 'ph', 'pH')).toMatch(/^pH: /)
    expect(cellFor("='Nowhere'.ph", 'ph', 'pH')).toMatch(/^pH: /)
  })
})
