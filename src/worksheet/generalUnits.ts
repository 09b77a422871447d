/** How a general function treats the units of its arguments. */
export type UnitRule =
  /** arguments of one unit, which the result has too */
  | 'alike'
  /** as adding them */
  | 'sum'
  /** how far they lie apart; the square of that */
  | 'spread'
  | 'square'
  | 'product'
  /** the unit of the first; the others say how, in numbers */
  | 'first'
  | 'quotient'
  | 'power'
  | 'root'
  | 'if'
  | 'switch'
  | 'truth'
  /** a number without a unit, whatever comes in */
  | 'plain'
  /** it cannot be told: a logarithm in an empirical formula may stand for anything */
  | 'open'

/** By name; a function that is not here cannot be told either. */
export const GENERAL_UNITS: ReadonlyMap<string, UnitRule> = new Map(
  Object.entries({
    alike: ['DEFAULT', 'MIN', 'MAX', 'AVERAGE', 'MEDIAN', 'GEOMEAN', 'HARMEAN', 'MROUND', 'CEILING', 'FLOOR', 'MOD'],
    sum: ['SUM'],
    spread: ['STDEV', 'STDEVP', 'AVEDEV'],
    square: ['VAR', 'VARP', 'DEVSQ'],
    product: ['PRODUCT'],
    first: ['ABS', 'INT', 'TRUNC', 'ROUND', 'ROUNDUP', 'ROUNDDOWN', 'EVEN', 'ODD'],
    quotient: ['QUOTIENT'],
    power: ['POWER'],
    root: ['SQRT'],
    if: ['IF', 'CHOOSE'],
    switch: ['SWITCH'],
    truth: ['MISSING', 'AND', 'OR', 'XOR', 'NOT'],
    plain: ['PI'],
    open: ['SUMSQ', 'SIGN', 'EXP', 'LN', 'LOG', 'LOG10', 'ERF'],
  } satisfies Partial<Record<UnitRule, readonly string[]>>).flatMap(([rule, names]) =>
    names.map((name): [string, UnitRule] => [name, rule as UnitRule]),
  ),
)
