import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Failure, isFailure } from '../../src/chemistry/failure'
import { isSolve, type LockedFunction, type Parameter, type Value } from '../../src/functions/define'
import { LOCKED } from '../../src/functions/registry'
import { hasWords } from '../../src/words/say'

const RUNS = process.env.LONG ? 1_000_000 : 100_000

/** Inside the range, at and just over its ends, and what a broken cell or a typing slip may send. */
function argument({ unit, min = -1e6, max = 1e6, choices, optional }: Parameter): fc.Arbitrary<Value | undefined> {
  const usual: fc.Arbitrary<Value | undefined> = choices
    ? fc.constantFrom(...choices)
    : unit === 'truth'
      ? fc.boolean()
      : fc.double({ min, max, noNaN: true })
  const odd = fc.constantFrom<Value>(
    ...[min, max, min - 1e-9, max * 1.001, -1, 0, 1e-300, 1e300, Number.NaN, Number.POSITIVE_INFINITY, -0],
  )
  return fc.oneof(
    { weight: 12, arbitrary: usual },
    { weight: choices ? 0 : 1, arbitrary: odd },
    { weight: optional ? 3 : 0, arbitrary: fc.constant(undefined) },
  )
}

/** Why an answer is none: no number at all, or a failure without its parts. */
function wrong(answer: Value | Failure | undefined): boolean {
  if (isFailure(answer)) return answer.failure === undefined || answer.quantity === ''
  return answer === undefined || (typeof answer === 'number' && !Number.isFinite(answer))
}

function answers(f: LockedFunction, args: readonly (Value | undefined)[]): readonly (Value | Failure)[] {
  if (!isSolve(f)) return [f.evaluate(...(args as never[]))]
  const all = f.solve(...(args as never[]))
  return isFailure(all) ? [all] : all
}

const call = fc.constantFrom(...LOCKED).chain((f) => fc.tuple(fc.constant(f), fc.tuple(...f.parameters.map(argument))))

test(`${RUNS} calls with good and bad arguments: each answers a number or says why not`, { timeout: 600_000 }, () => {
  let numbers = 0
  let slowest = 0
  const codes = new Set<string>()
  fc.assert(
    fc.property(call, ([f, args]) => {
      const start = performance.now()
      const given = answers(f, args)
      slowest = Math.max(slowest, performance.now() - start)
      for (const answer of given) {
        if (wrong(answer)) throw new Error(`${f.name}(${args.join('; ')}) gives ${JSON.stringify(answer)}`)
        if (isFailure(answer)) codes.add(answer.failure)
        else numbers++
      }
    }),
    { seed: 20_260_714, numRuns: RUNS, endOnFailure: true },
  )
  for (const code of codes) expect(hasWords(`problem.${code}`), code).toBe(true)
  // the fuzz is worth something only where many calls get through, and none may keep a cell waiting
  expect(numbers).toBeGreaterThan(RUNS / 10)
  expect(slowest).toBeLessThan(1_000)
})
