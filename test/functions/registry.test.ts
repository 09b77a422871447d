import temml from 'temml'
import { describe, expect, test } from 'vitest'
import { type Failure, isFailure } from '../../src/chemistry/failure'
import { type Check, isSolve, type LockedFunction, type Parameter, type Value } from '../../src/functions/define'
import { LOCKED, lockedFunction, namesOf } from '../../src/functions/registry'
import { isUnit } from '../../src/units/unit'
import { hasWords } from '../../src/words/say'

type Argument = Value | undefined

/** The result of a formula, or of a solve the one output that is asked for. */
function result(f: LockedFunction, args: readonly Argument[], output?: string): Value | Failure {
  if (!isSolve(f)) return f.evaluate(...(args as never[]))
  const all = f.solve(...(args as never[]))
  if (isFailure(all)) return all
  const found = all[f.outputs.findIndex((o) => o.name === output)]
  if (found === undefined) throw new Error(`${f.name} has no output ${output}`)
  return found
}

function isNumber({ unit }: Parameter): boolean {
  return unit !== 'choice' && unit !== 'truth'
}

function isTex(equation: string): boolean {
  try {
    return temml.renderToString(equation, { throwOnError: true }).startsWith('<math')
  } catch {
    return false
  }
}

function knownUnit(code: string): boolean {
  return code === 'truth' || code === 'choice' || isUnit(code)
}

/** What a function's entry lacks. */
function gaps(f: LockedFunction): string[] {
  const outputs = isSolve(f) ? f.outputs : [f.result]
  const lacking: string[] = []
  const need = (there: unknown, what: string) => there || lacking.push(what)
  need(Number.isInteger(f.version) && f.version >= 1, 'version')
  need(f.source.length > 10, 'source')
  need(f.equation.length > 2 && isTex(f.equation), 'equation that can be set')
  need(hasWords(`function.${f.name}.says`), 'words')
  need(f.checks.length > 0 && f.checks.every((c) => c.where.length > 5), 'check with a source')
  for (const o of outputs) need(knownUnit(o.unit), `unit of ${o.name}`)
  for (const p of f.parameters) {
    need(knownUnit(p.unit), `unit of ${p.name}`)
    need(hasWords(`function.${f.name}.${p.name}`), `words of ${p.name}`)
    if (p.unit === 'choice') need(p.choices && p.choices.length > 1, `choices of ${p.name}`)
    if (!isNumber(p)) continue
    need(p.min !== undefined && p.max !== undefined && p.min < p.max, `range of ${p.name}`)
    if (p.fitted)
      need(p.fitted[0] >= (p.min ?? 0) && p.fitted[1] <= (p.max ?? 0), `fitted range of ${p.name} inside its range`)
  }
  need(new Set(f.parameters.map((p) => p.name)).size === f.parameters.length, 'parameters with names of their own')
  need(new Set(outputs.map((o) => o.name)).size === outputs.length, 'outputs with names of their own')
  return lacking
}

describe.each(LOCKED)('$name', (f) => {
  test('has version, source, equation, words, ranges and a check', () => expect(gaps(f)).toEqual([]))

  test.each(f.checks)('gives $expect, $where', ({ args, expect: want, output, tolerance }: Check) => {
    const got = result(f, args, output)
    if (typeof want !== 'number' || typeof got !== 'number') return expect(got).toEqual(want)
    expect(Math.abs(got - want), `${got} for ${want}`).toBeLessThanOrEqual(tolerance)
  })

  const numbers = f.parameters.flatMap((p, i) =>
    isNumber(p) && f.checks[0].args[i] !== undefined ? [{ ...p, i }] : [],
  )
  test.each(numbers)('refuses $name that is no number or out of range', ({ i, min = 0, max = 0 }) => {
    const { args, output } = f.checks[0]
    const margin = (max - min) * 1e-6
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, min - margin, max + margin]) {
      expect(result(f, args.with(i, wrong), output), `${wrong}`).toHaveProperty('failure')
    }
  })
})

test('a function is found by its name', () => {
  expect(lockedFunction('POOL_VOLUME')).toBe(LOCKED.find((f) => f.name === 'POOL_VOLUME'))
  expect(lockedFunction('pool_volume')).toBeUndefined()
})

test('two functions of one name, and a name that reads as a cell address, are refused', () => {
  const [first] = LOCKED
  if (!first) throw new Error('no locked function')
  expect(() => namesOf([first, first])).toThrow(`two locked functions are called ${first.name}`)
  expect(() => namesOf([{ ...first, name: 'CO2' }])).toThrow('"CO2" is no name')
  expect(() => namesOf([{ ...first, name: 'lower_case' }])).toThrow('is no name')
})
