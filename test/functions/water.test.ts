import { describe, expect, test } from 'vitest'
import { isFailure } from '../../src/chemistry/failure'
import { isSolve } from '../../src/functions/define'
import { WATER_FUNCTIONS } from '../../src/functions/water'

describe.each(WATER_FUNCTIONS)('$name', (f) => {
  test.each(f.checks)('agrees with $where', (check) => {
    const args = check.args as never[]
    const all = isSolve(f) ? f.solve(...args) : [f.evaluate(...args)]
    if (isFailure(all)) throw new Error(JSON.stringify(all))
    const value = all[isSolve(f) ? f.outputs.findIndex((o) => o.name === check.output) : 0]
    expect(typeof value).toBe('number')
    expect(Math.abs(Number(value) - Number(check.expect))).toBeLessThanOrEqual(check.tolerance)
  })

  test('gives one result an output', () => {
    if (!isSolve(f)) return
    const all = f.solve(...(f.checks[0].args as never[]))
    expect(isFailure(all) ? all : all.length).toBe(f.outputs.length)
  })
})
