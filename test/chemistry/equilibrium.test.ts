import { expect, test } from 'vitest'
import { setIonicStrength, setTemperature, startFree, water } from '../../src/chemistry/equilibrium'
import { isFailure } from '../../src/chemistry/failure'
import { measuredWater } from '../../src/chemistry/measuredWater'
import { NO_TOTALS } from '../../src/chemistry/totals'

const reading = {
  ph: 7.5,
  temperature: 298.15,
  titratedAlkalinity: 0.002,
  calcium: 0.003,
  magnesium: 0,
  sulfate: 0,
  chloride: 0.05,
  borate: 0,
}

/** Leaves constants behind that are no numbers, as a hopeless attempt at an impossible brine does. */
function spoil(): void {
  startFree(water, Object.fromEntries(Object.keys(NO_TOTALS).map((name) => [name, 1])) as typeof NO_TOTALS)
  setTemperature(reading.temperature)
  setIonicStrength(1e6)
}

test.each([
  ['neither cyanurate nor chlorine', 0, 0],
  ['cyanurate and no chlorine', 0.0005, 0],
  ['chlorine and no cyanurate', 0, 0.00005],
])('a water with %s is the same whatever water came before it', (_, cyanurate, chlorine) => {
  const alone = measuredWater({ ...reading, cyanurate, chlorine })
  spoil()
  const after = measuredWater({ ...reading, cyanurate, chlorine })
  if (isFailure(alone) || isFailure(after)) throw new Error('no water')
  expect([...after.species]).toEqual([...alone.species])
  expect(after.calciteIndex).toBe(alone.calciteIndex)
})
