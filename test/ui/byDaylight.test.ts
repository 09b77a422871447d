import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { byDaylight } from '../../src/ui/handout/byDaylight'
import { after } from '../../src/ui/handout/clock'
import { plan } from '../planner/bench'
import { pools } from '../planner/pools'

const SEED = 20_261_129

describe('steps by daylight', () => {
  test('over random pools and hours: nobody is sent out at night, nothing comes sooner, and the order stays', () => {
    fc.assert(
      fc.property(pools, fc.integer({ min: 6, max: 21 }), fc.constantFrom(0, 30), (values, hour, minute) => {
        const start = new Date(2026, 4, 9, hour, minute)
        const { steps } = plan(values)
        const moved = byDaylight(steps, start)
        let before = 0
        moved.forEach((step, i) => {
          const was = steps[i]?.at ?? 0
          expect(step.at).toBeGreaterThanOrEqual(was)
          if (step.kind === 'wait' || was === 0) return
          const clock = after(start, step.at).getHours()
          expect(clock >= 7 && clock < 22, `step ${i + 1} at ${clock}`).toBe(true)
          expect(step.at).toBeGreaterThanOrEqual(before - 1e-9)
          before = step.at
          // each wait between two steps is kept
          const last = steps.slice(0, i).findLast(({ kind, at }) => kind !== 'wait' && at > 0)
          const lastMoved = moved.slice(0, i).findLast(({ kind }, k) => kind !== 'wait' && (steps[k]?.at ?? 0) > 0)
          if (last && lastMoved) expect(step.at - lastMoved.at).toBeGreaterThanOrEqual(was - last.at - 1e-9)
        })
      }),
      { seed: SEED, numRuns: process.env.LONG ? 1_000 : 40 },
    )
  })
})
