import { expect, test } from 'vitest'
import { nearestIn, paceAt } from '../../src/ui/grid/scrollOn'

const sight = { left: 100, top: 50, right: 500, bottom: 400 }

test('inside, its edges included, nothing scrolls', () => {
  for (const point of [
    { x: 100, y: 50 },
    { x: 300, y: 200 },
    { x: 500, y: 400 },
  ])
    expect(paceAt(point, sight)).toEqual({ x: 0, y: 0 })
})

test('past an edge the pace grows with the distance, towards that edge, and has an end', () => {
  const down = [1, 10, 60].map((past) => paceAt({ x: 300, y: 400 + past }, sight).y)
  expect(down[0]).toBeGreaterThan(0)
  expect(down).toEqual([...down].sort((a, b) => a - b))
  expect(paceAt({ x: 300, y: 40 }, sight).y).toBe(-(down[1] ?? 0))
  expect(paceAt({ x: 90, y: 200 }, sight)).toEqual({ x: -(down[1] ?? 0), y: 0 })
  expect(paceAt({ x: 560, y: 460 }, sight)).toEqual({ x: down[2], y: down[2] })
  expect(paceAt({ x: 1e6, y: 200 }, sight).x).toBe(paceAt({ x: 2e6, y: 200 }, sight).x)
})

test('the range ends at the place in sight that is nearest', () => {
  expect(nearestIn({ x: 20, y: 900 }, sight)).toEqual({ x: 100, y: 400 })
  expect(nearestIn({ x: 120, y: 90 }, sight)).toEqual({ x: 120, y: 90 })
})
