import { describe, test } from 'vitest'
import { built } from './built'
import { rate, report } from './report'
import { waters } from './waters'

describe('columns a second', () => {
  const columns = waters(2_000)

  test('through the engine, against the chemistry alone', async () => {
    const { computedOf, throughEngine, throughSolve } =
      await built<typeof import('./columnRuns')>('test/bench/columnRuns.ts')
    const line = (what: string, wanted: readonly string[], solves: readonly string[]) => {
      const run = throughEngine(wanted)
      const bare = solves.map(throughSolve)
      const speed = rate(columns.length, () => run(columns), 3)
      const chemistry = rate(columns.length, () => {
        for (const solve of bare) solve(columns)
      })
      report(what, `${speed.toFixed(0)} columns/s`, `solves alone ${chemistry.toFixed(0)} /s`, chemistry / speed)
    }
    line('lsi and calcite_si', ['lsi', 'calcite_si'], ['WATER'])
    line('every quantity of saturation', computedOf('saturation'), ['WATER', 'WATER_EQUILIBRIA'])
    line('every quantity of stabilizer', computedOf('stabilizer'), ['CHLORINE'])
    const all = ['saturation', 'stabilizer', 'salt', 'dilution', 'ph_alkalinity', 'calcium', 'chlorine', 'generator']
    line('every quantity of all worksheets', all.flatMap(computedOf), ['WATER', 'WATER_EQUILIBRIA', 'CHLORINE'])
  })
})
