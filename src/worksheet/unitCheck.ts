import type { LockedFunction } from '../functions/define'
import { isSolve } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import { ANY } from './counted'
import type { Expression } from './formula'
import { GENERAL_UNITS } from './generalUnits'
import {
  CHOICE,
  type Disagreement,
  disagreement,
  distance,
  hasUnit,
  type Measure,
  measureOf,
  merged,
  NUMBER,
  negated,
  OPEN,
  product,
  raised,
  sum,
  TRUTH,
} from './measure'
import { nameKey } from './nameKey'
import { exponential, isBareLogarithm, isPerDegree, logarithm, mayBeNumber, numberOf, senseless } from './scales'

/** Two units that do not go together, and where in the formula's text. */
export interface UnitFlag {
  readonly problem: Problem
  readonly from: number
  readonly to: number
}

/** What the checker knows of names. */
export interface UnitScope {
  /** the unit of a quantity, in whichever scenario, or of a solve's output; undefined for what is not known */
  readonly unitOf: (key: string) => string | undefined
  readonly functions: ReadonlyMap<string, LockedFunction>
}

type Call = Extract<Expression, { kind: 'call' }>
type Binary = Extract<Expression, { kind: 'binary' }>

/**
 * Where a formula's units do not agree, by dimension, size of unit and substance counted. Numbers that are written in it
 * have no unit: added or compared they stand for what is beside them, and as a factor they may convert (other unit, other
 * substance) but never change the dimension. What cannot be told is let pass.
 * @param declared the unit of the row that the formula is for; null where nothing is said
 * @param path where the formula stands, for the sentences
 */
export function unitFlags(
  tree: Expression,
  scope: UnitScope,
  declared: string | null,
  path: Problem['path'] = [],
): readonly UnitFlag[] {
  const flags: UnitFlag[] = []

  /** Notes what does not agree; what is over it is not told once more. */
  function flag(code: string, why: Disagreement, facts: Problem['facts'], { from, to }: Expression): Measure {
    // Only where two meet is there something to say of a size: which factor converts it.
    const ending = why === 'unit' || (why === 'size' && code !== 'together') ? '' : `_${why}`
    flags.push({ problem: problem(`units_${code}${ending}`, path, { at: from + 1, ...facts }), from, to })
    return OPEN
  }

  function together(a: Measure, b: Measure, at: Expression, apart = disagreement(a, b)): Measure {
    if (apart) return flag('together', apart, { left_unit: labelOf(a), right_unit: labelOf(b) }, at)
    return merged(a, b)
  }

  /** All of them stand for each other, and for what they are looked at beside. */
  function alike([first, ...rest]: readonly Expression[], beside?: Measure): Measure {
    if (!first) return beside ?? OPEN
    const start = beside ? together(beside, of(first), first) : of(first)
    return rest.reduce((all, one) => together(all, of(one), one), start)
  }

  function wanted(given: Measure, code: string, facts: Problem['facts'], at: Expression): void {
    const target = measureOf(code)
    const apart = disagreement(given, target)
    if (apart) flag('argument', apart, { ...facts, found_unit: labelOf(given), wanted_unit: labelOf(target) }, at)
  }

  /** What has to be a number without a unit: flagged and open where it is none. */
  function number(e: Expression, name: string, given = of(e), apart = distance(given, NUMBER)): Measure {
    if (apart === null) return given
    return flag('number', 'unit', { function: name, found_unit: labelOf(given), wanted_unit: NUMBER.label }, e)
  }

  /** The same, where a number that is written in it may carry a unit of its own. */
  function asNumber(e: Expression, name: string, given = of(e)): Measure {
    if (isBareLogarithm(given)) return number(e, name, given, 'unit')
    return mayBeNumber(given) ? given : number(e, name, given)
  }

  /** How many: a pH, which is no number to count with, is none either. */
  function count(e: Expression, name: string): Measure {
    const given = of(e)
    return number(e, name, given, disagreement(given, NUMBER))
  }

  function of(e: Expression): Measure {
    switch (e.kind) {
      case 'number':
        return { kind: 'plain', value: e.value }
      case 'text':
        return CHOICE
      case 'truth':
        return TRUTH
      case 'name': {
        const unit = scope.unitOf(nameKey(e))
        return unit === undefined ? OPEN : measureOf(unit)
      }
      case 'unary': {
        const operand = of(e.operand)
        if (e.operator === '%') return multiplied(operand, { kind: 'plain', value: 0.01 }, 1, e)
        return e.operator === '-' ? negated(operand) : operand
      }
      case 'binary':
        return ofBinary(e)
      case 'call':
        return ofCall(e)
    }
  }

  function ofBinary(e: Binary): Measure {
    const [left, right] = [of(e.left), of(e.right)]
    switch (e.operator) {
      case '+':
      case '-': {
        const apart = distance(left, right) ?? (isWord(left) && isWord(right) ? 'unit' : null)
        return apart ? together(left, right, e, apart) : sum(left, right, e.operator === '+' ? 1 : -1)
      }
      case '*':
      case '/':
        return multiplied(left, right, e.operator === '*' ? 1 : -1, e)
      case '^':
        return ofPower(left, right, e.right, '^', e)
      case '&':
        return CHOICE
      default:
        together(left, right, e)
        return TRUTH
    }
  }

  function multiplied(a: Measure, b: Measure, power: 1 | -1, at: Expression): Measure {
    if (isWord(a) || isWord(b)) return together(a, b, at, 'unit')
    const why = senseless(a, b, power)
    return why ? flag(why, 'unit', { left_unit: labelOf(a), right_unit: labelOf(b) }, at) : product(a, b, power)
  }

  function ofPower(base: Measure, power: Measure, exponent: Expression, name: string, at: Expression): Measure {
    if (isWord(base)) return together(base, power, at, 'unit')
    if (power.kind === 'plain' && power.value !== null) {
      const one: Measure = { kind: 'plain', value: 1 }
      return power.value < 0 ? raised(multiplied(one, base, -1, at), -power.value) : raised(base, power.value)
    }
    if (power.kind !== 'open' && hasUnit(base))
      return flag('power', 'unit', { left_unit: labelOf(base), right_unit: labelOf(power) }, at)
    return exponential(base, isPerDegree(base, power) ? NUMBER : asNumber(exponent, name, power))
  }

  function ofCall(e: Call): Measure {
    const locked = scope.functions.get(e.function)
    if (locked) return ofLocked(e, locked)
    const found = ofGeneral(e)
    // The value of one written number is known, that of a function of several is not.
    return found.kind === 'plain' && e.function !== 'SQRT' && e.function !== 'POWER'
      ? { kind: 'plain', value: null }
      : found
  }

  function ofGeneral(e: Call): Measure {
    const rule = GENERAL_UNITS.get(e.function)
    const [first, second] = e.arguments
    if (!rule || !first) return rule === 'truth' ? TRUTH : rule === 'plain' ? { kind: 'plain', value: null } : OPEN
    switch (rule) {
      case 'truth':
        for (const argument of e.arguments) of(argument)
        return TRUTH
      case 'alike':
        return alike(e.arguments)
      case 'sum':
        return e.arguments.slice(1).reduce((all, one) => add(all, one), of(first))
      case 'spread':
        return difference(alike(e.arguments))
      case 'square':
        return raised(difference(alike(e.arguments)), 2)
      case 'product':
        return e.arguments.slice(1).reduce((all, one) => multiplied(all, of(one), 1, e), of(first))
      case 'squares':
        return raised(alike(e.arguments), 2)
      case 'first':
        return of(first)
      case 'rounded':
        if (second) count(second, e.function)
        return of(first)
      case 'quotient':
        return second ? multiplied(of(first), of(second), -1, e) : OPEN
      case 'power':
        return second ? ofPower(of(first), of(second), second, e.function, e) : OPEN
      case 'root':
        return raised(of(first), 0.5)
      case 'if':
        of(first)
        return alike(e.arguments.slice(1))
      case 'choose':
        count(first, e.function)
        return alike(e.arguments.slice(1))
      case 'switch':
        return ofSwitch(e.arguments)
      case 'plain':
        return { kind: 'plain', value: null }
      case 'number':
        return numberOf(
          e.arguments.map((one) => asNumber(one, e.function)),
          e.function,
        )
      case 'count':
        return numberOf(
          e.arguments.map((one) => count(one, e.function)),
          e.function,
        )
      case 'ratio':
        return ofRatio(alike(e.arguments))
      case 'logarithm':
        if (second) count(second, e.function)
        return ofLogarithm(first, e.function)
    }
  }

  function ofLogarithm(e: Expression, name: string): Measure {
    const given = of(e)
    return isWord(given) ? number(e, name, given) : logarithm(given, name)
  }

  function add(all: Measure, one: Expression): Measure {
    const measure = of(one)
    const apart = distance(all, measure)
    return apart ? together(all, measure, one, apart) : sum(all, measure, 1)
  }

  /** SWITCH(looked at; case; result; case; result ...; else) */
  function ofSwitch([looked, ...rest]: readonly Expression[]): Measure {
    const results: Expression[] = []
    const cases: Expression[] = []
    rest.forEach((one, i) => {
      const isResult = i % 2 === 1 || i === rest.length - 1
      ;(isResult ? results : cases).push(one)
    })
    if (looked) alike(cases, of(looked))
    return alike(results)
  }

  function ofLocked(e: Call, f: LockedFunction): Measure {
    let counted: Measure = OPEN
    e.arguments.forEach((argument, i) => {
      const given = of(argument)
      const parameter = f.parameters[i]
      if (!parameter) return
      if (parameter.ofAnyBasis) {
        const bare = ofAnyBasis(given)
        wanted(bare, parameter.unit, { function: f.name, parameter: parameter.name }, argument)
        counted = together(counted, given, argument)
      } else wanted(given, parameter.unit, { function: f.name, parameter: parameter.name }, argument)
    })
    if (isSolve(f)) return OPEN
    const result = measureOf(f.result.unit)
    if (!f.result.ofAnyBasis || result.kind !== 'quantity') return result
    return counted.kind === 'quantity'
      ? { ...result, counted: counted.counted, label: counted.label }
      : ofAnyBasis(result)
  }

  const found = of(tree)
  if (declared === null) return flags
  const row = measureOf(declared)
  const apart = disagreement(found, row)
  const isNumber = declared === '1' && apart === 'difference'
  if (apart && !isNumber && !(apart === 'difference' && declared === 'K' && labelOf(found) !== 'K'))
    flag('row', apart, { found_unit: labelOf(found), wanted_unit: declared }, tree)
  return flags
}

/** A sign, or an angle, is the same in every unit. */
function ofRatio(a: Measure): Measure {
  return a.kind === 'open' ? OPEN : NUMBER
}

function isWord({ kind }: Measure): boolean {
  return kind === 'choice' || kind === 'truth'
}

/** How far readings lie apart is no reading. */
function difference(a: Measure): Measure {
  return a.kind === 'quantity' ? { ...a, points: 0 } : a
}

function ofAnyBasis(a: Measure): Measure {
  return a.kind === 'quantity' ? { ...a, counted: ANY } : a
}

function labelOf(a: Measure): string {
  if (a.kind === 'quantity') return a.label
  return a.kind === 'plain' ? '1' : a.kind
}
