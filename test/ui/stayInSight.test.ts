import { describe, expect, test } from 'vitest'
import { leaveSight, stayInSight } from '../../src/ui/grid/stayInSight'

/** Drawings of a page, one at a time. */
function page() {
  const waiting: (() => void)[] = []
  return {
    after: (run: () => void) => void waiting.push(run),
    draw: (times = 1) => {
      for (let i = 0; i < times; i++) for (const run of waiting.splice(0)) run()
    },
    waits: () => waiting.length > 0,
  }
}

describe('a cell that was jumped to', () => {
  test('is brought into sight again while the rows above it grow, and left alone when they are drawn', () => {
    const { after, draw, waits } = page()
    const grown = [900, 940, 980, 980, 1020, 1020]
    let reached = 0
    stayInSight(() => grown[reached++] ?? 1020, after)
    draw(6)
    expect(reached).toBe(6)
    expect(waits()).toBe(true)
    draw(50)
    expect(reached).toBeLessThan(15)
    expect(waits()).toBe(false)
  })

  test('is left when it is not selected any more', () => {
    const { after, draw, waits } = page()
    let selected = true
    stayInSight(() => (selected ? 100 : null), after)
    draw(2)
    selected = false
    draw(1)
    expect(waits()).toBe(false)
  })

  test('is left when the reader scrolls, and for the next cell', () => {
    const { after, draw } = page()
    let [first, second] = [0, 0]
    stayInSight(() => first++, after)
    draw(2)
    stayInSight(() => second++, after)
    draw(3)
    expect([first, second]).toEqual([2, 3])
    leaveSight()
    draw(3)
    expect([first, second]).toEqual([2, 3])
  })

  test('does not run on for ever where the page never comes to rest', () => {
    const { after, draw, waits } = page()
    let at = 0
    stayInSight(() => at++, after)
    draw(500)
    expect(waits()).toBe(false)
  })
})
