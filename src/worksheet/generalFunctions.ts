/** How many arguments a function takes: at least, at most. */
export type Arity = readonly [least: number, most: number]

const MANY = 30

/**
 * The functions that formulas may call besides the locked ones; names and meanings as in OpenFormula, computed by the
 * engine. Left out on purpose: all that hide a refusal (IFERROR, IFNA, IS*, COUNT*), that give another answer each
 * time (RAND, NOW, TODAY), that run away (REPT) or reach elsewhere (INDIRECT, OFFSET, HYPERLINK).
 *
 * Ours are DEFAULT(x; y), which is y where x was not taken and x in every other case, an error included; and
 * MISSING(x), true where x was not taken.
 */
export const GENERAL_FUNCTIONS: ReadonlyMap<string, Arity> = new Map<string, Arity>([
  ['DEFAULT', [2, 2]],
  ['MISSING', [1, 1]],

  ['IF', [3, 3]],
  ['SWITCH', [3, MANY]],
  ['CHOOSE', [2, MANY]],
  ['AND', [1, MANY]],
  ['OR', [1, MANY]],
  ['XOR', [1, MANY]],
  ['NOT', [1, 1]],

  ['SUM', [1, MANY]],
  ['PRODUCT', [1, MANY]],
  ['SUMSQ', [1, MANY]],
  ['MIN', [1, MANY]],
  ['MAX', [1, MANY]],
  ['AVERAGE', [1, MANY]],
  ['MEDIAN', [1, MANY]],
  ['GEOMEAN', [1, MANY]],
  ['HARMEAN', [1, MANY]],
  ['STDEV', [2, MANY]],
  ['STDEVP', [1, MANY]],
  ['VAR', [2, MANY]],
  ['VARP', [1, MANY]],
  ['AVEDEV', [1, MANY]],
  ['DEVSQ', [1, MANY]],

  ['ABS', [1, 1]],
  ['SIGN', [1, 1]],
  ['SQRT', [1, 1]],
  ['POWER', [2, 2]],
  ['EXP', [1, 1]],
  ['LN', [1, 1]],
  ['LOG', [1, 2]],
  ['LOG10', [1, 1]],
  ['MOD', [2, 2]],
  ['QUOTIENT', [2, 2]],
  ['INT', [1, 1]],
  ['TRUNC', [1, 2]],
  ['ROUND', [1, 2]],
  ['ROUNDUP', [1, 2]],
  ['ROUNDDOWN', [1, 2]],
  ['MROUND', [2, 2]],
  ['CEILING', [2, 2]],
  ['FLOOR', [2, 2]],
  ['EVEN', [1, 1]],
  ['ODD', [1, 1]],
  ['GCD', [1, MANY]],
  ['LCM', [1, MANY]],
  ['FACT', [1, 1]],
  ['COMBIN', [2, 2]],
  ['ERF', [1, 2]],

  ['PI', [0, 0]],
  ['DEGREES', [1, 1]],
  ['RADIANS', [1, 1]],
  ['SIN', [1, 1]],
  ['COS', [1, 1]],
  ['TAN', [1, 1]],
  ['ASIN', [1, 1]],
  ['ACOS', [1, 1]],
  ['ATAN', [1, 1]],
  ['ATAN2', [2, 2]],
  ['SINH', [1, 1]],
  ['COSH', [1, 1]],
  ['TANH', [1, 1]],
  ['ASINH', [1, 1]],
  ['ACOSH', [1, 1]],
  ['ATANH', [1, 1]],
])
