import fc from 'fast-check'
import { type CellValue, HyperFormula } from 'hyperformula'
import { describe, expect, test } from 'vitest'
import { isProblem } from '../../src/words/problem'
import { compile } from '../../src/worksheet/compile'
import type { Expression } from '../../src/worksheet/formula'
import { GENERAL_FUNCTIONS } from '../../src/worksheet/generalFunctions'
import { MOST_NODES, parseFormula } from '../../src/worksheet/parse'

/** A sheet with a number, a reading that was not taken, a choice and a truth, under these names. */
const CELLS: Readonly<Record<string, string>> = { a: 'A1', b: 'B1', missing: 'C1', shape: 'D1', yes: 'E1' }
const engine = HyperFormula.buildFromArray([[4, 0.5, '=1/0', "'round", '=TRUE()']], {
  licenseKey: 'gpl-v3',
  functionArgSeparator: ';',
  smartRounding: false,
})

function tree(text: string): Expression {
  const formula = parseFormula(text)
  if (isProblem(formula)) throw new Error(formula.code)
  return formula.tree
}

function compiled(text: string): string {
  return compile(tree(text), ({ name }) => CELLS[name] ?? 'Z99')
}

/** The engine's answer: a value, or the sign of its error. */
function value(text: string): CellValue | string {
  const found = engine.calculateFormula(`=${compiled(text)}`, 0)
  if (Array.isArray(found)) throw new Error('an array')
  return typeof found === 'object' && found !== null ? String(found.value) : found
}

describe('the text for the engine', () => {
  test.each([
    ['a + b * 2', '(A1+(B1*2))'],
    ['a - b - 2', '(A1-B1-2)'],
    ['a - (b - 2)', '(A1-(B1-2))'],
    ['-a ^ 2', '((-A1)^2)'],
    ['a% & "x"', '((A1%)&"x")'],
    ['if(a > 1; TRUE; ln(b))', 'IF((A1>1);TRUE();LN(B1))'],
    ['max(a; b + 1)', 'MAX((A1+0);(B1+1))'],
    ['"5"" pipe"', '("5"&CHAR(34)&" pipe")'],
    ['1e21', '1e+21'],
  ])('%s', (text, engineText) => {
    expect(compiled(text)).toBe(engineText)
  })

  test('names are asked with the scenario that they stand for', () => {
    const asked: unknown[] = []
    compile(tree("ph + baseline.ph + 'As tested'.ph + water.lsi"), ({ of, quoted, name }) => {
      asked.push([of, quoted, name])
      return 'A1'
    })
    expect(asked).toEqual([
      [null, false, 'ph'],
      ['baseline', false, 'ph'],
      ['As tested', true, 'ph'],
      ['water', false, 'lsi'],
    ])
  })
})

describe('the engine reads it as OpenFormula does', () => {
  test.each([
    ['-2^2', 4],
    ['2^3^2', 64],
    ['2^-1', 0.5],
    ['8/4/2', 1],
    ['50%', 0.5],
    ['1+2&3', '33'],
    ['1 < 2 = TRUE', true],
    ['"a\\b\\"', 'a\\b\\'],
    ['"say ""yes"""', 'say "yes"'],
    ['shape = "round"', true],
    ['a <> 4', false],
  ])('%s', (text, result) => {
    expect(value(text)).toBe(result)
  })

  test('a sum as long as is allowed', () => {
    const terms = MOST_NODES / 2
    expect(value(Array(terms).fill('1').join('+'))).toBe(terms)
  })

  test('law: arithmetic gives what a plain evaluation of the tree gives', () => {
    fc.assert(
      fc.property(sums, (e) => {
        const found = engine.calculateFormula(`=${compile(e, () => 'A1')}`, 0)
        return Object.is(Number(found) + 0, evaluated(e) + 0)
      }),
      { seed: 3, numRuns: 1_000 },
    )
  })
})

describe('no general function hides a missing reading or a text', () => {
  const lazy = new Set(['DEFAULT', 'MISSING', 'IF', 'SWITCH', 'CHOOSE'])
  const eager = [...GENERAL_FUNCTIONS].filter(([name]) => !lazy.has(name))

  test.each(eager.filter(([, [least]]) => least > 0))('%s', (name, [least, most]) => {
    const count = Math.max(least, Math.min(most, 3))
    for (let place = 0; place < count; place++) {
      const call = (stranger: string) =>
        `${name}(${Array.from({ length: count }, (_, i) => (i === place ? stranger : 'b')).join(';')})`
      expect(value(call('missing')), call('missing')).toBe('#DIV/0!')
      expect(value(call('shape')), call('shape')).toBe('#VALUE!')
    }
  })

  test('those that choose give the error of what they choose by, and of what they choose', () => {
    expect(value('IF(missing; 1; 2)')).toBe('#DIV/0!')
    expect(value('IF(TRUE; missing; 2)')).toBe('#DIV/0!')
    expect(value('SWITCH(missing; 1; 2; 3)')).toBe('#DIV/0!')
    expect(value('CHOOSE(missing; 1; 2)')).toBe('#DIV/0!')
    expect(value('CHOOSE(1; missing; 2)')).toBe('#DIV/0!')
  })

  test('each is one of the engine, but for our own two', () => {
    const known = new Set(HyperFormula.getRegisteredFunctionNames('enGB'))
    expect([...GENERAL_FUNCTIONS.keys()].filter((name) => !known.has(name))).toEqual(['DEFAULT', 'MISSING'])
  })

  test('takes as many arguments as the list says', () => {
    const wrong: string[] = []
    const answer = (name: string, count: number) => {
      const found = engine.calculateFormula(`=${name}(${Array(count).fill('TRUE()').join(';')})`, 0)
      return typeof found === 'object' && found !== null && 'message' in found ? found.message : ''
    }
    for (const [name, [least, most]] of GENERAL_FUNCTIONS) {
      if (name === 'DEFAULT' || name === 'MISSING') continue
      for (const count of [least, Math.min(most, 5)]) {
        if (answer(name, count) === 'Wrong number of arguments.') wrong.push(`${name} with ${count}`)
      }
    }
    expect(wrong).toEqual([])
  })
})

type Sum = Extract<Expression, { kind: 'number' | 'unary' | 'binary' }>
const at = { from: 0, to: 0 }
const sums: fc.Arbitrary<Sum> = fc.letrec<{ sum: Sum }>((tie) => ({
  sum: fc.oneof(
    { maxDepth: 5 },
    fc.integer({ min: 1, max: 9 }).map((value): Sum => ({ kind: 'number', value, ...at })),
    fc
      .tuple(fc.constantFrom('-' as const, '%' as const), tie('sum'))
      .map(([operator, operand]): Sum => ({ kind: 'unary', operator, operand, ...at })),
    fc
      .tuple(fc.constantFrom('+' as const, '-' as const, '*' as const), tie('sum'), tie('sum'))
      .map(([operator, left, right]): Sum => ({ kind: 'binary', operator, left, right, ...at })),
  ),
})).sum

function evaluated(e: Expression): number {
  if (e.kind === 'number') return e.value
  if (e.kind === 'unary') return e.operator === '-' ? -evaluated(e.operand) : evaluated(e.operand) / 100
  if (e.kind !== 'binary') return Number.NaN
  const [left, right] = [evaluated(e.left), evaluated(e.right)]
  return e.operator === '+' ? left + right : e.operator === '-' ? left - right : left * right
}
