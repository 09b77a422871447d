import { describe, expect, test } from 'vitest'
import { leftWhenCleared, leftWhenFilled, withLeft } from '../../src/ui/grid/leftAlone'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { cell, EMPTY, edited, number, scenario } from '../notebook/samples'

const catalog = shippedCatalog()
const notebook = edited(
  EMPTY,
  scenario('second', 'a1'),
  cell('first', 'ph', number(7.4)),
  cell('first', 'volume', number(40, 'm³')),
)
const block = { quantities: ['ph', 'lsi', 'volume'], scenarios: ['first', 'second'] }

describe('worked-out cells in a range', () => {
  test('are counted where nothing is typed over them', () => {
    // the index in both scenarios, the volume in the second
    expect(leftWhenCleared(notebook, catalog, block)).toBe(3)
    expect(leftWhenCleared(notebook, catalog, { ...block, quantities: ['ph'] })).toBe(0)
  })

  test('are left by a fill that has no assumption to fill from', () => {
    expect(leftWhenFilled(notebook, catalog, block)).toBe(1)
    expect(leftWhenFilled(notebook, catalog, { ...block, scenarios: [] })).toBe(0)
  })

  test('are named in what is said, and only where there are any', () => {
    expect(withLeft('0 entries taken out', 1)).toBe('0 entries taken out; one worked-out cell was left as it is')
    expect(withLeft('one entry taken out', 3)).toBe('one entry taken out; 3 worked-out cells were left as they are')
    expect(withLeft('one entry taken out', 0)).toBe('one entry taken out')
  })
})
