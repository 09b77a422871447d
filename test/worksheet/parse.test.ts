import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import type { Expression } from '../../src/worksheet/formula'
import { MOST_CHARACTERS, MOST_DEPTH, MOST_NODES, parseFormula } from '../../src/worksheet/parse'
import { expressions } from './expressions'
import { print } from './print'

function shape(text: string): string {
  const formula = parseFormula(text)
  return isProblem(formula) ? sentence(formula) : print(formula.tree)
}

describe('precedence and associativity, OpenDocument 1.3 part 4, section 5.5 table 1', () => {
  test.each([
    ['1+2*3', '(1+(2*3))'],
    ['1-2-3', '((1-2)-3)'],
    ['8/4/2', '((8/4)/2)'],
    ['2^3^2', '((2^3)^2)'],
    ['-2^2', '((-2)^2)'],
    ['2^-3', '(2^(-3))'],
    ['-5%', '((-5)%)'],
    ['2^50%', '(2^(50%))'],
    ['- -2', '(-(-2))'],
    ['+a', '(+a)'],
    ['1+2&3', '((1+2)&3)'],
    ['a&b=c', '((a&b)=c)'],
    ['1<2=TRUE', '((1<2)=TRUE)'],
    ['a<>b+1', '(a<>(b+1))'],
    ['(1+2)*3', '((1+2)*3)'],
    ['50%%', '((50%)%)'],
  ])('%s', (text, tree) => {
    expect(shape(text)).toBe(tree)
  })
})

describe('what a formula is made of', () => {
  test.each([
    ['ph', 'ph'],
    ['=ph', 'ph'],
    ['  = ph ', 'ph'],
    ['baseline.ph', 'baseline.ph'],
    ["'Drain a third'.ph", "'Drain a third'.ph"],
    ["'the cook''s'.ph", "'the cook''s'.ph"],
    ['water.calcite_si', 'water.calcite_si'],
    ['min(a; b ;3)', 'MIN(a;b;3)'],
    ['PI()', 'PI()'],
    ['TRUE()', 'TRUE'],
    ['false', 'FALSE'],
    ['"a ""b"" c"', '"a ""b"" c"'],
    ['.5', '0.5'],
    ['1.5e-3', '0.0015'],
    ['1E3', '1000'],
    ['a\n+\tb', '(a+b)'],
  ])('%s', (text, tree) => {
    expect(shape(text)).toBe(tree)
  })

  test('keeps the text and the places in it as they were typed', () => {
    const formula = parseFormula('= ph - water.ph_saturation')
    if (isProblem(formula)) throw new Error(sentence(formula))
    expect(formula.text).toBe('= ph - water.ph_saturation')
    expect(formula.tree).toEqual({
      kind: 'binary',
      operator: '-',
      left: { kind: 'name', of: null, quoted: false, name: 'ph', from: 2, to: 4 },
      right: { kind: 'name', of: 'water', quoted: false, name: 'ph_saturation', from: 7, to: 26 },
      from: 2,
      to: 26,
    })
  })
})

test('an error names the place, what stands there and what is expected', () => {
  const texts = [
    '',
    '=',
    '1+',
    'MIN(1;',
    'MIN(1;;2)',
    '1+*2',
    '1 2',
    'ph)',
    '7,4',
    'MIN(1, 2)',
    '(1',
    'MIN(1; (2)',
    '(1 2)',
    '(1; 2)',
    'MIN(1 2)',
    '"round',
    "'As tested'",
    'A1:B2',
    '{1}',
    '#REF!',
    '<=3',
    '2.x',
    '()',
    'µ',
    '1e999',
  ]
  expect(texts.map((text) => `${text.padEnd(12)} ${shape(text)}`).join('\n')).toMatchInlineSnapshot(`
    "             The formula is empty.
    =            The formula is empty.
    1+           The formula ends after “+”, where a number, a quantity or a function has to follow.
    MIN(1;       The formula ends after “;”, where a number, a quantity or a function has to follow.
    MIN(1;;2)    “;” stands at character 7, where a number, a quantity or a function is expected.
    1+*2         “*” stands at character 3, where a number, a quantity or a function is expected.
    1 2          “2” stands at character 3, where an operator such as + or the end is expected.
    ph)          “)” stands at character 3, where an operator such as + or the end is expected.
    7,4          A comma stands at character 2; arguments are separated by “;” and decimals are written with a point.
    MIN(1, 2)    A comma stands at character 6; arguments are separated by “;” and decimals are written with a point.
    (1           The parenthesis at character 1 is not closed; a “)” is missing at the end.
    MIN(1; (2)   The parenthesis at character 4 is not closed; a “)” is missing at the end.
    (1 2)        “2” stands at character 4, where an operator or “)” is expected.
    (1; 2)       “;” stands at character 3, where an operator or “)” is expected.
    MIN(1 2)     “2” stands at character 7, where an operator, “;” or “)” is expected.
    "round       The text that starts at character 1 is not closed; a “"” is missing.
    'As tested'  At character 1 a name in single quotation marks starts; it is a scenario, and a point and a quantity follow it, as in 'As tested'.ph.
    A1:B2        “:” stands at character 3, where an operator such as + or the end is expected.
    {1}          “{” stands at character 1, where a number, a quantity or a function is expected.
    #REF!        “#” stands at character 1, where a number, a quantity or a function is expected.
    <=3          “<” stands at character 1, where a number, a quantity or a function is expected.
    2.x          “.” stands at character 2, where an operator such as + or the end is expected.
    ()           “)” stands at character 2, where a number, a quantity or a function is expected.
    µ            “µ” stands at character 1, where a number, a quantity or a function is expected.
    1e999        1e999 is too large for a number."
  `)
})

describe('limits', () => {
  const code = (text: string) => {
    const formula = parseFormula(text)
    return isProblem(formula) ? formula.code : 'read'
  }

  test('characters', () => {
    expect(code(`1${' '.repeat(MOST_CHARACTERS - 1)}`)).toBe('read')
    expect(code(`1${' '.repeat(MOST_CHARACTERS)}`)).toBe('formula_too_long')
  })

  test.each([
    ['parentheses', (n: number) => '('.repeat(n) + 1 + ')'.repeat(n)],
    ['calls', (n: number) => 'ABS('.repeat(n) + 1 + ')'.repeat(n)],
    ['signs', (n: number) => `${'-'.repeat(n)}1`],
    ['right operands', (n: number) => `${'1+('.repeat(n / 2)}1${')'.repeat(n / 2)}`],
  ])('depth by %s', (_, nested) => {
    expect(code(nested(MOST_DEPTH))).toBe('read')
    expect(code(nested(MOST_DEPTH + 2))).toBe('formula_too_deep')
  })

  test('a long sum is not deep, but large', () => {
    expect(
      code(
        Array(MOST_NODES / 2)
          .fill('1')
          .join('+'),
      ),
    ).toBe('read')
    expect(code(Array(MOST_NODES).fill('1').join('+'))).toBe('formula_too_large')
  })

  test.each(['(', '-', 'ABS(', ')', '1+', '1"', "'", '1 ', '1%', 'a.', 'IF(1;', '^'])(
    'a text full of %s is refused and does not overflow',
    (part) => {
      expect(code(part.repeat(Math.floor(MOST_CHARACTERS / part.length)))).toMatch(/^formula_/)
    },
  )
})

test('law: a printed tree is read back as the same tree', () => {
  fc.assert(
    fc.property(expressions, (tree) => {
      const text = print(tree)
      const formula = parseFormula(text)
      if (isProblem(formula)) return /too_(long|large|deep)/.test(formula.code)
      return print(formula.tree) === text && same(formula.tree, tree)
    }),
    { seed: 1, numRuns: 2_000 },
  )
})

test('law: any text gives a tree or a problem, whose place lies inside the text', () => {
  const piece = fc.constantFrom(
    '1',
    'ph',
    '(',
    ')',
    ';',
    '+',
    '-',
    '%',
    '"',
    "'",
    '.',
    ',',
    ' ',
    'MIN(',
    '=',
    '\u{1F4A7}',
  )
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
      const text = pieces.join('')
      const formula = parseFormula(text)
      if (!isProblem(formula)) return formula.tree.to <= text.length
      const at = formula.facts.at
      return sentence(formula) !== '' && (at === undefined || (Number(at) >= 1 && Number(at) <= text.length))
    }),
    { seed: 2, numRuns: 5_000 },
  )
})

function same(a: Expression, b: Expression): boolean {
  const plain = (tree: Expression) => JSON.stringify(tree, (key, value) => (key === 'from' || key === 'to' ? 0 : value))
  return plain(a) === plain(b)
}
