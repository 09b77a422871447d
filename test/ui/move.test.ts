import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { move, type Position } from '../../src/ui/grid/move'

const size = { rows: 5, columns: 3, page: 2 }
const press = (key: string, ctrl = false, shift = false) => ({ key, ctrl, shift })
const at = (row: number, column: number): Position => ({ row, column })

// The keys are those of the data grid in the WAI-ARIA Authoring Practices; Tab walks cell by cell, as in a spreadsheet.
describe('move', () => {
  test.each([
    ['ArrowDown', at(1, 1), at(2, 1)],
    ['ArrowUp', at(0, 1), at(0, 1)],
    ['ArrowRight', at(1, 2), at(1, 2)],
    ['ArrowLeft', at(1, 2), at(1, 1)],
    ['PageDown', at(1, 0), at(3, 0)],
    ['PageDown', at(4, 0), at(4, 0)],
    ['PageUp', at(1, 0), at(0, 0)],
    ['Home', at(2, 2), at(2, 0)],
    ['End', at(2, 0), at(2, 2)],
    ['Tab', at(1, 2), at(2, 0)],
  ])('%s', (key, from, to) => {
    expect(move(from, press(key), size)).toEqual(to)
  })

  test('Ctrl with Home, End and arrows goes to the edges', () => {
    expect(move(at(2, 2), press('Home', true), size)).toEqual(at(0, 0))
    expect(move(at(2, 0), press('End', true), size)).toEqual(at(4, 2))
    expect(move(at(2, 1), press('ArrowDown', true), size)).toEqual(at(4, 1))
  })

  test('Tab leaves after the last cell, Shift Tab before the first', () => {
    expect(move(at(4, 2), press('Tab'), size)).toBe('out')
    expect(move(at(0, 0), press('Tab', false, true), size)).toBe('out')
  })

  test('other keys do not move', () => {
    expect(move(at(0, 0), press('a'), size)).toBeNull()
  })

  test('never leaves the grid', () => {
    const keys = fc.constantFrom(
      'ArrowUp',
      'ArrowDown',
      'ArrowLeft',
      'ArrowRight',
      'Home',
      'End',
      'PageUp',
      'PageDown',
      'Tab',
    )
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 9 }),
        fc.array(fc.record({ key: keys, ctrl: fc.boolean(), shift: fc.boolean() }), { maxLength: 40 }),
        (rows, columns, presses) => {
          let now = at(0, 0)
          for (const one of presses) {
            const next = move(now, one, { rows, columns, page: 4 })
            if (next === null || next === 'out') continue
            now = next
            expect(now.row).toBeGreaterThanOrEqual(0)
            expect(now.row).toBeLessThan(rows)
            expect(now.column).toBeGreaterThanOrEqual(0)
            expect(now.column).toBeLessThan(columns)
          }
        },
      ),
      { seed: 7 },
    )
  })

  test('Tab then Shift Tab comes back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 2 }), (row, column) => {
        const next = move(at(row, column), press('Tab'), size)
        if (next === null || next === 'out') return
        expect(move(next, press('Tab', false, true), size)).toEqual(at(row, column))
      }),
      { seed: 7 },
    )
  })
})
