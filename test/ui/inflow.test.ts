import { expect, test } from 'vitest'
import { createInflow } from '../../src/ui/shell/inflow'

/** Slices wait until they are let through. */
function gate() {
  const waiting: (() => void)[] = []
  return {
    yielded: (next: () => void) => void waiting.push(next),
    open() {
      for (let next = waiting.shift(); next; next = waiting.shift()) next()
    },
  }
}

/** Long enough that a few of them fill a slice. */
function slow(): void {
  const until = performance.now() + 0.2
  while (performance.now() < until);
}

test('few changes are written at once', () => {
  const written: number[] = []
  createInflow<number>(
    (n) => written.push(n),
    () => expect.unreachable(),
  ).put([1, 2, 3])
  expect(written).toEqual([1, 2, 3])
})

test('many are written in slices, all of them, in the order in which they came', () => {
  const written: number[] = []
  const { yielded, open } = gate()
  const inflow = createInflow<number>((n) => {
    slow()
    written.push(n)
  }, yielded)
  const first = Array.from({ length: 250 }, (_, n) => n)
  inflow.put(first)
  expect(written.length).toBeLessThan(250)
  inflow.put([1000, 1001])
  open()
  expect(written).toEqual([...first, 1000, 1001])
})

test('looks at the clock after each, where nothing is to be written in one go', () => {
  const written: number[] = []
  const { yielded } = gate()
  const inflow = createInflow<number>(
    (n) => {
      for (let i = 0; i < 100; i++) slow()
      written.push(n)
    },
    yielded,
    1,
  )
  inflow.put([1, 2, 3])
  expect(written).toEqual([1])
})

test('goes on after it has run dry', () => {
  const written: number[] = []
  const inflow = createInflow<number>((n) => written.push(n))
  inflow.put([1])
  inflow.put([])
  inflow.put([2])
  expect(written).toEqual([1, 2])
})
