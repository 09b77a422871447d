/** What the list of assumptions says. */
export const assumptions = {
  'assumptions.intro':
    'A value that was typed over what the notebook works out. It goes on into everything that rests on it: the other worksheets, the step plan, what is printed and exported. Nothing else is changed by it, and its formula stands again when it is removed.',
  'assumptions.none':
    'Nothing is assumed: every worked-out value follows its formula. To assume another, select its cell and type over it.',
  'assumptions.col.quantity': 'Quantity',
  'assumptions.col.scenario': 'Scenario',
  'assumptions.col.typed': 'Typed',
  'assumptions.col.formula': 'The formula gives',
  'assumptions.followed': '{count|followed by one scenario|followed by # scenarios}',
  'assumptions.as_formula': '{value}, by = {formula}',
  'assumptions.working': 'being worked out…',
  'assumptions.no_value': 'no value',
  'assumptions.remove': 'Remove',
  'assumptions.remove_one': 'Remove the assumption of {name} in “{scenario}”',
  'assumptions.remove_all': 'Remove all',
  'assumptions.removed': '{count|One assumption was removed|# assumptions were removed}. Undo brings them back.',
  'assumptions.rests': 'It rests on what was typed over the worksheets’ own formulas:',
} as const
