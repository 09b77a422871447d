import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Batch, type Given } from '../../src/engine/batch'
import { createCalculator } from '../../src/engine/calculator'
import { layoutFor } from '../../src/engine/layout'
import type { Value } from '../../src/functions/define'
import { LOCKED } from '../../src/functions/registry'
import { isProblem } from '../../src/words/problem'
import type { Catalog, Quantity } from '../../src/worksheet/catalog'
import type { Row } from '../../src/worksheet/definition'
import type { Formula } from '../../src/worksheet/formula'
import { parseFormula } from '../../src/worksheet/parse'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const catalog = shippedCatalog()
const worksheets = catalog.worksheets.map(({ id }) => id)
const rows = [...catalog.quantities.values()].map(({ row }) => row)

/** Anything that the row takes, its ends and what is unlikely included. */
function valueFor(row: Row): fc.Arbitrary<Value> {
  if ('choices' in row) return fc.constantFrom(...row.choices)
  if (!('accept' in row)) return fc.double({ min: 0, max: 500, noNaN: true })
  const [min, max] = row.accept
  const [low, high] = row.plausible ?? row.accept
  return fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: low, max: high, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
  )
}

/** A column in which most inputs are there, some are not, and now and then a worked-out quantity is given. */
const column: fc.Arbitrary<Given> = fc
  .tuple(
    ...rows.map((row) => {
      const absent = 'input' in row ? 2 : 40
      return fc.oneof(
        { weight: absent, arbitrary: fc.constant(undefined) },
        { weight: 'input' in row ? 7 : 1, arbitrary: row.unit === 'truth' ? fc.boolean() : valueFor(row) },
      )
    }),
  )
  .map((values) => {
    const given = new Map<string, Value>()
    values.forEach((value, i) => {
      const name = rows[i]?.name
      if (value !== undefined && name !== undefined) given.set(name, value)
    })
    return given
  })

describe('formulas as functions and through the formula engine', () => {
  test.each(worksheets)(
    'give the same answers, problems and notices: %s',
    (worksheet) => {
      const wanted = [...catalog.quantities.values()]
        .filter((q) => q.worksheet === worksheet && q.formula)
        .map(({ name }) => name)
      const functions = new Batch(catalog, wanted)
      const engine = new Batch(catalog, wanted, 8, 'engine')
      fc.assert(
        fc.property(fc.array(column, { minLength: 1, maxLength: 4 }), (columns) => {
          expect(functions.evaluate(columns)).toEqual(engine.evaluate(columns))
          columns.forEach((_, i) => {
            expect(functions.notices(i)).toEqual(engine.notices(i))
          })
        }),
        { seed: 7, numRuns: process.env.LONG ? 2_000 : 60 },
      )
      engine.close()
      functions.close()
    },
    600_000,
  )

  test.each(worksheets)('cover every formula of %s', (worksheet) => {
    const wanted = [...catalog.quantities.values()].filter((q) => q.worksheet === worksheet).map(({ name }) => name)
    expect(createCalculator(layoutFor(catalog, wanted))).not.toBeNull()
  })

  test('give the same answers for any formula over numbers, texts and truths', () => {
    const leaf = fc.constantFrom(
      'a',
      'b',
      'shape',
      'wet',
      '0',
      '2.5',
      '-3',
      '"round"',
      '"Round"',
      '""',
      '"1"',
      'TRUE',
      'baseline.a',
    )
    const { formula } = fc.letrec<{ formula: string }>((tie) => ({
      formula: fc.oneof(
        { depthSize: 'small', withCrossShrink: true },
        leaf,
        fc
          .tuple(
            tie('formula'),
            fc.constantFrom('+', '-', '*', '/', '^', '&', '=', '<>', '<', '<=', '>', '>='),
            tie('formula'),
          )
          .map(([left, operator, right]) => `(${left} ${operator} ${right})`),
        fc
          .tuple(
            fc.constantFrom(
              'IF(#; #; #)',
              'SWITCH(#; #; #; #)',
              'AND(#; #)',
              'OR(#; #)',
              'NOT(#)',
              'MAX(#; #)',
              'MIN(#; #)',
              'SUM(#; #; #)',
              'ABS(#)',
              'INT(#)',
              'DEFAULT(#; #)',
              'MISSING(#)',
              'ROUND(#; #)',
              'TURNOVER_TIME(#; #)',
              '(-#)',
            ),
            fc.array(tie('formula'), { minLength: 4, maxLength: 4 }),
          )
          .map(([shape, parts]) => {
            let at = 0
            return shape.replaceAll('#', () => parts[at++] ?? '0')
          }),
      ),
    }))
    const given = fc.record(
      {
        a: fc.oneof(fc.double({ min: 0, max: 10, noNaN: true }), fc.constantFrom(0, 1, 2.5, 3)),
        b: fc.constantFrom(0, 1, 3),
        shape: fc.constantFrom('round', 'oval'),
        wet: fc.boolean(),
      },
      { requiredKeys: ['wet'] },
    )
    fc.assert(
      fc.property(
        fc.array(formula, { minLength: 1, maxLength: 20 }),
        fc.array(given, { minLength: 1, maxLength: 6 }),
        (texts, columns) => {
          expectSame(
            texts,
            columns.map((values) => new Map(Object.entries(values)) as Given),
          )
        },
      ),
      { seed: 11, numRuns: process.env.LONG ? 1_000 : 40 },
    )
  }, 600_000)

  test('give the same answers to each operator and function where values are equal, in order, and not', () => {
    const pairs = ['a # b', 'b # a', 'a # a', '-a # b'].flatMap((pair) =>
      ['+', '-', '*', '/', '^', '=', '<>', '<', '<=', '>', '>='].map((operator) => pair.replace('#', operator)),
    )
    const calls = ['MAX(a; b)', 'MIN(a; b)', 'SUM(a; b; a)', 'ABS(-a)', 'INT(-b)', 'INT(b)', 'NOT(wet)', 'MISSING(a)']
    const choices = ['IF(wet; a; b)', 'AND(wet; a = b)', 'OR(wet; a = b)', 'DEFAULT(a; b)', 'SWITCH(a; 1; 5; 2; 6; 7)']
    const texts = ['SWITCH(shape; "round"; a; b)', 'shape = "round"', 'shape <> "Round"', 'wet = (a = b)']
    const columns = [0, 1, 2, 2.5].flatMap((a) =>
      [0, 1, 2].flatMap((b) =>
        [true, false].map(
          (wet): Given =>
            new Map<string, Value>([
              ['a', a],
              ['b', b],
              ['wet', wet],
              ['shape', wet ? 'round' : 'oval'],
            ]),
        ),
      ),
    )
    expectSame([...pairs, ...calls, ...choices, ...texts], columns)
  })

  test('give a text only up to the bound, put together or as it is written', () => {
    const [longest, longer] = [1_000, 1_001].map((length) => `"${'a'.repeat(length)}"`)
    const texts = [`${longest}`, `${longer}`, `SWITCH(wet; TRUE; ${longer}; shape)`, `IF(wet; shape; ${longer})`]
    const joined = [`${longest} & ""`, `${longest} & shape`, `${longer} & ${longer}`]
    const columns = [true, false].map(
      (wet): Given =>
        new Map<string, Value>([
          ['wet', wet],
          ['shape', 'oval'],
        ]),
    )
    expectSame(texts, columns)
    expectSame([...texts, ...joined], columns)
    const catalog = catalogWith([...texts, ...joined].map((text) => parseFormula(text) as Formula))
    for (const way of ['functions', 'engine'] as const) {
      const batch = new Batch(catalog, ['answer_0', 'answer_1', 'answer_5'], 8, way)
      expect(batch.evaluate(columns)[0]).toMatchObject([
        { value: 'a'.repeat(1_000) },
        { problem: { code: 'text_too_long', facts: { most: 1_000 } } },
        { problem: { code: 'text_too_long', facts: { most: 1_000 } } },
      ])
      batch.close()
    }
  })
})

function expectSame(texts: readonly string[], columns: readonly Given[]): void {
  const formulas = texts.map((text) => parseFormula(text)).filter((formula): formula is Formula => !isProblem(formula))
  const catalog = catalogWith(formulas)
  const wanted = formulas.map((_, i) => `answer_${i}`)
  const [functions, engine] = [new Batch(catalog, wanted), new Batch(catalog, wanted, 8, 'engine')]
  expect(functions.evaluate(columns)).toEqual(engine.evaluate(columns))
  engine.close()
  functions.close()
}

/** A catalog of four inputs of every kind and these formulas, put in past the checks that a definition's formula goes through. */
function catalogWith(formulas: readonly Formula[]): Catalog {
  const input = { worksheet: 'mixed', formula: null, checks: [], refusals: [], reads: [], readBy: [], calls: [] }
  const wide: [number, number] = [-1e9, 1e9]
  const inputs: Quantity[] = [
    { ...input, name: 'a', index: 0, row: { name: 'a', unit: '1', input: 'number', accept: wide } },
    { ...input, name: 'b', index: 1, row: { name: 'b', unit: '1', input: 'number', accept: wide } },
    {
      ...input,
      name: 'shape',
      index: 2,
      row: { name: 'shape', unit: 'choice', input: 'choice', choices: ['round', 'oval'] },
    },
    { ...input, name: 'wet', index: 3, row: { name: 'wet', unit: 'truth', formula: 'TRUE' } },
  ]
  const answers = formulas.map(
    (formula, i): Quantity => ({
      ...input,
      name: `answer_${i}`,
      index: 4 + i,
      row: { name: `answer_${i}`, unit: '1', formula: formula.text },
      formula,
      reads: inputs.map(({ name }) => name),
    }),
  )
  const all = [...inputs, ...answers]
  return {
    worksheets: [],
    quantities: new Map(all.map((quantity) => [quantity.name, quantity])),
    solves: new Map(),
    order: all.map(({ name }) => name),
    functions: new Map(LOCKED.map((f) => [f.name, f])),
  }
}
