import { describe, test } from 'vitest'
import type { Measured } from '../../src/chemistry/measuredWater'
import { built } from './built'
import { rate, report } from './report'

/** Waters spread over the usual span of a pool by the golden ratio, each at another temperature. */
const readings = Array.from({ length: 5_000 }, (_, i): Measured => {
  const share = (k: number) => ((i + 1) * k * 0.618_033_988_75) % 1
  return {
    ph: 7 + share(1),
    temperature: 278.15 + 30 * share(2),
    titratedAlkalinity: (80 + 120 * share(3)) / 50_043.5,
    calcium: (50 + 600 * share(5)) / 100_087,
    magnesium: 0,
    sulfate: 0,
    chloride: (500 + 5_000 * share(7)) / 58_443,
    borate: i % 3 === 0 ? 0.002 : 0,
    cyanurate: (80 * share(11)) / 129_075,
    chlorine: 0,
  }
})

const AIM: Readonly<Record<string, string>> = { 'SI from readings': 'aim 200 000 /s', CCPP: 'aim 50 000 /s' }

describe('chemistry, solves a second on one core', () => {
  test('against as many bare Math.exp', async () => {
    const { read, solves } = await built<typeof import('./chemistrySolves')>('test/bench/chemistrySolves.ts')
    const waters = readings.map(read)
    let sum = 0
    const exponentials = rate(readings.length, () => {
      for (const r of readings) sum += Math.exp(-r.ph)
    })
    for (const [what, solve] of solves) {
      const speed = rate(waters.length, () => {
        for (const [i, water] of waters.entries()) sum += solve(water, readings[i] ?? readings[0] ?? waterless())
      })
      report(what, `${speed.toFixed(0)} /s`, 'bare Math.exp', exponentials / speed, AIM[what])
    }
    if (Number.isNaN(sum)) throw new Error('a solve gave no number')
  })
})

function waterless(): never {
  throw new RangeError('as many readings as waters')
}
