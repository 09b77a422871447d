import fc from 'fast-check'
import type { Expression } from '../../src/worksheet/formula'

const place = { from: 0, to: 0 }
const names = fc.constantFrom('ph', 'salt_used', 'total_alkalinity', 'b2')

const leaf = fc.oneof(
  fc
    .double({ min: 0, max: 1e9, noNaN: true })
    .map((value) => ({ kind: 'number' as const, value: value + 0, ...place })),
  fc.string({ maxLength: 6 }).map((value) => ({ kind: 'text' as const, value, ...place })),
  fc.boolean().map((value) => ({ kind: 'truth' as const, value, ...place })),
  names.map((name) => ({ kind: 'name' as const, of: null, quoted: false, name, ...place })),
  fc
    .tuple(fc.constantFrom('baseline', 'water'), names)
    .map(([of, name]) => ({ kind: 'name' as const, of, quoted: false, name, ...place })),
  fc
    .tuple(fc.string({ maxLength: 8 }), names)
    .map(([of, name]) => ({ kind: 'name' as const, of, quoted: true, name, ...place })),
)

/** Any tree that the grammar can write. */
export const expressions: fc.Arbitrary<Expression> = fc.letrec<{ tree: Expression }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 6 },
    leaf,
    fc.record({
      kind: fc.constant('unary' as const),
      operator: fc.constantFrom('-' as const, '+' as const, '%' as const),
      operand: tie('tree'),
      from: fc.constant(0),
      to: fc.constant(0),
    }),
    fc.record({
      kind: fc.constant('binary' as const),
      operator: fc.constantFrom('+', '-', '*', '/', '^', '&', '=', '<>', '<', '<=', '>', '>='),
      left: tie('tree'),
      right: tie('tree'),
      from: fc.constant(0),
      to: fc.constant(0),
    }),
    fc.record({
      kind: fc.constant('call' as const),
      function: fc.constantFrom('MIN', 'IF', 'LANGELIER_INDEX'),
      arguments: fc.array(tie('tree'), { maxLength: 3 }),
      from: fc.constant(0),
      to: fc.constant(0),
    }),
  ),
})).tree
