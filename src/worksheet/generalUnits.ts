/** How a general function treats the units of its arguments. */
export type UnitRule =
  /** arguments of one unit, which the result has too */
  | 'alike'
  /** as adding them */
  | 'sum'
  /** how far they lie apart; the square of that, and of themselves */
  | 'spread'
  | 'square'
  | 'squares'
  | 'product'
  /** the unit of the first */
  | 'first'
  /** the unit of the first; the second says how many digits */
  | 'rounded'
  | 'quotient'
  | 'power'
  | 'root'
  | 'if'
  /** the first is a number, and chooses */
  | 'choose'
  | 'switch'
  | 'truth'
  /** a number written in the formula */
  | 'plain'
  /** numbers without a unit, and so is the result: no series in a concentration adds up */
  | 'number'
  /** the same, where a written factor does not help either */
  | 'count'
  | 'logarithm'
  /** a number without a unit, of arguments of one unit */
  | 'ratio'

/** By name, all of them. */
export const GENERAL_UNITS: ReadonlyMap<string, UnitRule> = new Map(
  Object.entries({
    alike: [
      ...['DEFAULT', 'MIN', 'MAX', 'AVERAGE', 'MEDIAN', 'GEOMEAN', 'HARMEAN'],
      ...['MROUND', 'CEILING', 'FLOOR', 'MOD', 'GCD', 'LCM'],
    ],
    sum: ['SUM'],
    spread: ['STDEV', 'STDEVP', 'AVEDEV'],
    square: ['VAR', 'VARP', 'DEVSQ'],
    squares: ['SUMSQ'],
    product: ['PRODUCT'],
    first: ['ABS', 'INT', 'EVEN', 'ODD'],
    rounded: ['TRUNC', 'ROUND', 'ROUNDUP', 'ROUNDDOWN'],
    quotient: ['QUOTIENT'],
    power: ['POWER'],
    root: ['SQRT'],
    if: ['IF'],
    choose: ['CHOOSE'],
    switch: ['SWITCH'],
    truth: ['MISSING', 'AND', 'OR', 'XOR', 'NOT'],
    plain: ['PI'],
    number: [
      ...['EXP', 'ERF', 'DEGREES', 'RADIANS', 'SIN', 'COS', 'TAN', 'ASIN', 'ACOS', 'ATAN'],
      ...['SINH', 'COSH', 'TANH', 'ASINH', 'ACOSH', 'ATANH'],
    ],
    count: ['FACT', 'COMBIN'],
    logarithm: ['LN', 'LOG', 'LOG10'],
    ratio: ['SIGN', 'ATAN2'],
  } satisfies Record<UnitRule, readonly string[]>).flatMap(([rule, names]) =>
    names.map((name): [string, UnitRule] => [name, rule as UnitRule]),
  ),
)
