import { describe, test } from 'vitest'
import { built } from './built'
import { rate, report } from './report'

const EDITS = 30
const PLANS = 40

describe('all worksheets', () => {
  test('an edit of pH in the baseline of 24 scenarios, to all values told', async () => {
    const { bareEdits, liveEdits } = await built<typeof import('./editRuns')>('test/bench/editRuns.ts')
    const live = liveEdits(24)
    const bare = bareEdits(24)
    const all = (edit: (number: number) => void) => () => {
      for (let i = 0; i < EDITS; i++) edit(i)
    }
    const [ours, reference] = [rate(EDITS, all(live)), rate(EDITS, all(bare))]
    const time = (speed: number) => `${(1000 / speed).toFixed(2)} ms`
    report('edit of pH, 24 scenarios, all worksheets', time(ours), `bare engine ${time(reference)}`, reference / ours)
  })

  test('plans a second', async () => {
    const { plans } = await built<typeof import('./planRuns')>('test/bench/planRuns.ts')
    const run = plans(PLANS)
    const columns = run() / PLANS
    const speed = rate(PLANS, () => void run(), 3)
    report('plans', `${speed.toFixed(1)} plans/s`, `${columns.toFixed(0)} columns a plan`, null)
  })
})
