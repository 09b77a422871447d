import { isSolve, type LockedFunction, type Value } from '../functions/define'
import { LIMITS } from '../notebook/limits'
import { type Problem, problem } from '../words/problem'
import type { Expression } from '../worksheet/formula'
import { isScenario } from '../worksheet/nameKey'
import { checkArgument } from './check'
import type { Notice } from './outcome'
import { type Held, isList, runLocked } from './runLocked'

/** What a formula's names and marks reach, for the column that is being worked out. */
export interface Reach {
  /** a quantity, or a solve's output as `water.lsi`; undefined when there is none of that name */
  read(of: string | null, name: string): (() => Held) | undefined
  raise(notice: Notice): void
  readonly functions: ReadonlyMap<string, LockedFunction>
}

/** Thrown where only the formula engine knows the answer: text in arithmetic, comparisons across kinds. */
export const BEYOND: unique symbol = Symbol('beyond')

type Run = () => Held
type Op = Extract<Expression, { kind: 'binary' }>['operator']

/**
 * A formula as nested functions, with the engine's own rules: both operands and all arguments are worked out before any
 * is used, the first problem among them stands, a result that is no finite number is a problem, and minus zero is zero.
 * Null for a formula that it does not cover.
 */
export function closureOf(tree: Expression, reach: Reach): Run | null {
  switch (tree.kind) {
    case 'number':
    case 'text':
    case 'truth': {
      const { value } = tree
      return () => value
    }
    case 'name':
      if (isScenario(tree)) {
        const gone = problem('scenario_gone', [], { name: tree.of ?? '' })
        return () => gone
      }
      return reach.read(tree.of, tree.name) ?? null
    case 'unary': {
      const operand = closureOf(tree.operand, reach)
      if (!operand || tree.operator !== '-') return null
      return () => {
        const value = operand()
        return isNumber(value) ? whole(-value) : value
      }
    }
    case 'binary': {
      const left = closureOf(tree.left, reach)
      const right = closureOf(tree.right, reach)
      const operate = OPERATORS[tree.operator]
      if (!left || !right || !operate) return null
      return () => {
        const a = left()
        const b = right()
        if (typeof a === 'object') return a
        return typeof b === 'object' ? b : operate(a, b)
      }
    }
    case 'call': {
      const args: Run[] = []
      for (const argument of tree.arguments) {
        const run = closureOf(argument, reach)
        if (!run) return null
        args.push(run)
      }
      const locked = reach.functions.get(tree.function)
      if (!locked) return GENERAL[tree.function]?.(args) ?? null
      if (isSolve(locked)) return null
      const run = lockedClosure(locked, args, reach.raise)
      return () => {
        const result = run()
        return isList(result) ? problem('not_computable') : result
      }
    }
  }
}

/** A locked function on its arguments, checked; the first problem among them stands. A solve gives a list. */
export function lockedClosure(
  f: LockedFunction,
  args: readonly (Run | undefined)[],
  raise: Reach['raise'],
): () => Held | readonly Held[] {
  const outsideFit = (name: string) => raise(`fitted:${name}`)
  return () => {
    const values: (Value | undefined)[] = new Array(f.parameters.length)
    for (let i = 0; i < f.parameters.length; i++) {
      const parameter = f.parameters[i]
      if (!parameter) continue
      const given = args[i]?.()
      if (given === undefined || isMissing(given)) {
        if (!parameter.optional) return given ?? problem('missing', [], { names: parameter.name })
        continue
      }
      if (typeof given === 'object') return given
      const value = checkArgument(f, parameter, given, outsideFit)
      if (typeof value === 'object') return value
      values[i] = value
    }
    return runLocked(f, values)
  }
}

export function isMissing(value: Held): value is Problem {
  return typeof value === 'object' && value.code === 'missing'
}

/** What a cell may hold: a finite number, a text that is not too long, a truth; never minus zero. */
export function whole(value: Value): Held {
  if (typeof value === 'string' && value.length > LIMITS.text)
    return problem('text_too_long', [], { most: LIMITS.text })
  if (typeof value !== 'number') return value
  return Number.isFinite(value) ? value + 0 : problem('no_number')
}

/** True for a number, false for a problem; the formula engine must tell what any other kind counts for. */
function isNumber(value: Held): value is number {
  if (typeof value === 'number') return true
  if (typeof value === 'object') return false
  throw BEYOND
}

function number(value: Value): number {
  if (typeof value === 'number') return value
  throw BEYOND
}

const arithmetic =
  (operate: (a: number, b: number) => number) =>
  (a: Value, b: Value): Held =>
    whole(operate(number(a), number(b)))

const comparison =
  (holds: (a: number, b: number) => boolean) =>
  (a: Value, b: Value): Held =>
    holds(number(a), number(b))

const OPERATORS: Readonly<Partial<Record<Op, (a: Value, b: Value) => Held>>> = {
  '+': arithmetic((a, b) => a + b),
  '-': arithmetic((a, b) => a - b),
  '*': arithmetic((a, b) => a * b),
  '/': (a, b) => {
    const over = number(a)
    const under = number(b)
    return under === 0 ? problem('division_by_zero') : whole(over / under)
  },
  '^': arithmetic((a, b) => a ** b),
  '<': comparison((a, b) => a < b),
  '<=': comparison((a, b) => a <= b),
  '>': comparison((a, b) => a > b),
  '>=': comparison((a, b) => a >= b),
  '=': equal,
  '<>': (a, b) => !equal(a, b),
}

/** Names of choices are compared without regard to capitals; other texts may be dates, or letters that collate alike. */
const PLAIN = /^[A-Za-z_][A-Za-z0-9_]*$/

function equal(a: Value, b: Value): boolean {
  if (typeof a !== typeof b) throw BEYOND
  if (typeof a !== 'string' || typeof b !== 'string') return a === b
  if (!PLAIN.test(a) || !PLAIN.test(b)) throw BEYOND
  return a.toLowerCase() === b.toLowerCase()
}

/** Works out all arguments; where the first is a problem it stands, else `then` chooses. */
function chosen(args: readonly Run[], then: (values: readonly Held[]) => Held): Run {
  return () => {
    const values = args.map((run) => run())
    const [first] = values
    return typeof first === 'object' ? first : then(values)
  }
}

/** Works out all arguments, then goes through them in order. */
function truths(args: readonly Run[], then: (values: readonly boolean[]) => boolean): Run {
  return () => {
    const values: boolean[] = []
    for (const value of args.map((run) => run())) {
      if (typeof value === 'object') return value
      values.push(truth(value))
    }
    return then(values)
  }
}

function truth(value: Held | undefined): boolean {
  if (typeof value === 'boolean') return value
  throw BEYOND
}

function reduced(least: number, join: (a: number, b: number) => number) {
  return (args: readonly Run[]): Run =>
    () => {
      let result = least
      for (const run of args) {
        const value = run()
        if (!isNumber(value)) return value
        result = join(result, value)
      }
      return whole(result)
    }
}

function ofNumber(of: (x: number) => number) {
  return ([arg]: readonly Run[]): Run | null =>
    arg
      ? () => {
          const value = arg()
          return isNumber(value) ? whole(of(value)) : value
        }
      : null
}

const GENERAL: Readonly<Record<string, (args: readonly Run[]) => Run | null>> = {
  DEFAULT: ([x, y]) =>
    x && y
      ? () => {
          const taken = x()
          return isMissing(taken) ? y() : taken
        }
      : null,
  MISSING: ([x]) =>
    x
      ? () => {
          const taken = x()
          return typeof taken === 'object' && !isMissing(taken) ? taken : isMissing(taken)
        }
      : null,
  IF: (args) => chosen(args, ([condition, yes, no]) => (truth(condition) ? yes : no) ?? false),
  SWITCH: (args) =>
    chosen(args, ([selector, ...rest]) => {
      let i = 0
      for (; i + 1 < rest.length; i += 2) {
        const value = rest[i]
        const result = rest[i + 1]
        if (value === undefined || result === undefined || typeof value === 'object') continue
        if (typeof selector !== 'object' && selector !== undefined && equal(selector, value)) return result
      }
      return rest[i] ?? problem('not_computable')
    }),
  AND: (args) => truths(args, (values) => values.every(Boolean)),
  OR: (args) => truths(args, (values) => values.some(Boolean)),
  NOT: (args) => truths(args, ([value]) => !value),
  MAX: reduced(Number.NEGATIVE_INFINITY, Math.max),
  MIN: reduced(Number.POSITIVE_INFINITY, Math.min),
  SUM: reduced(0, (a, b) => a + b),
  ABS: ofNumber(Math.abs),
  EXP: ofNumber(Math.exp),
  INT: ofNumber(Math.floor),
}
