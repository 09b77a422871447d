/** What can be wrong with a formula or a worksheet definition. */
export const problemsWorksheet = {
  'problem.formula_empty': '{path}: the formula is empty.',
  'problem.formula_too_long': '{path}: the formula has {found} characters; at most {most} are read.',
  'problem.formula_too_large':
    '{path}: the formula has more than {most} parts; put some of it into rows of their own and use their names.',
  'problem.formula_too_deep':
    '{path}: more than {most} parentheses, functions or operators stand inside one another; put some of it into rows of their own.',
  'problem.formula_number_too_large': '{path}: {found} is too large for a number.',
  'problem.formula_ends_early':
    '{path}: the formula ends after “{after}”, where a number, a quantity or a function has to follow.',
  'problem.formula_not_closed': '{path}: the parenthesis at character {at} is not closed; a “)” is missing at the end.',
  'problem.formula_comma':
    '{path}: a comma stands at character {at}; arguments are separated by “;” and decimals are written with a point.',
  'problem.formula_text_not_closed': '{path}: the text that starts at character {at} is not closed; a “"” is missing.',
  'problem.formula_scenario_name':
    "{path}: at character {at} a name in single quotation marks starts; it is a scenario, and a point and a quantity follow it, as in 'As tested'.ph.",
  'problem.formula_wants_operand':
    '{path}: “{found}” stands at character {at}, where a number, a quantity or a function is expected.',
  'problem.formula_wants_operator':
    '{path}: “{found}” stands at character {at}, where an operator such as + or the end is expected.',
  'problem.formula_wants_close': '{path}: “{found}” stands at character {at}, where an operator or “)” is expected.',
  'problem.formula_wants_argument_end':
    '{path}: “{found}” stands at character {at}, where an operator, “;” or “)” is expected.',
} as const
