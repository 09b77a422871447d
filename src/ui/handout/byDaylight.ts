import type { Step } from '../../planner/step'
import { after } from './clock'

/** Hours of the clock between which nobody is sent to the pool. */
const LATE = 22
const EARLY = 7

/**
 * The same steps by daylight: what would fall into the night waits until the morning, and all that follows waits with it. The
 * first step starts when the reader says; a wait that nobody has to do anything for may begin at any hour.
 */
export function byDaylight(steps: readonly Step[], start: Date): readonly Step[] {
  let delay = 0
  return steps.map((step) => {
    if (step.kind !== 'wait' && step.at > 0) delay += hoursToMorning(after(start, step.at + delay))
    return delay === 0 ? step : { ...step, at: step.at + delay }
  })
}

function hoursToMorning(time: Date): number {
  const hour = time.getHours() + time.getMinutes() / 60
  if (hour >= LATE) return 24 - hour + EARLY
  return hour < EARLY ? EARLY - hour : 0
}
