/** `problem.<code>.<name>`: why a worksheet gives no value, where the reason is its own. */
export const refusals = {
  'problem.not_for.sanitizer':
    '{path}: this pool is kept with bromine or biguanide, and this worksheet is about chlorine; its numbers would be wrong.',
  'problem.disagree.salt':
    '{path}: the salt readings are over 400 mg/L apart. No salt on a doubtful reading: test once more, by another way.',
  'problem.upside_down.cell_salt': '{path}: the cell takes at most less salt than at least. Look at its window again.',
  'problem.upside_down.cell_flow': '{path}: the cell takes at most less flow than at least. Look at its limits again.',
  'problem.outside_window.target_salt':
    '{path}: the salt that is wanted lies outside what the cell takes. Change the one or the other.',
  'problem.wide_error.salt_test_error':
    '{path}: the test’s error is as wide as the cell’s window; use a better test before the water is changed.',
  'problem.dry.acid_product': '{path}: a dry acid is weighed; see its mass.',
  'problem.out_of_range.chlorine_product': '{path}: a dry product is weighed; see its mass.',
  'problem.out_of_range.acid_product': '{path}: a dry product is weighed; see its mass.',
  'problem.out_of_range.product_age':
    '{path}: after a year only a titration tells what is left. Enter its strength as titrated, and 0 for the age.',
  'problem.unreachable.salt':
    '{path}: the fill water holds as much salt as the limit, or takes the pool over it. Use other fill water.',
  'problem.unreachable.cyanuric_acid':
    '{path}: the fill water holds as much cyanuric acid as the limit, or takes the pool over it. Use other fill water.',
  'problem.unreachable.calcium_hardness':
    '{path}: the fill water holds as much calcium as the limit, or takes the pool over it. Use other fill water.',
  'problem.unreachable.tds':
    '{path}: the fill water holds as many dissolved solids as the limit, or takes the pool over it. Use other fill water.',
  'problem.unreachable.ph':
    '{path}: that pH cannot be reached with these products; caustic soda could, where it is chosen.',
  'problem.unreachable.drain_fraction': '{path}: all of the water would have to go; no number of rounds does that.',

  'page.short.disagree': 'readings disagree',
  'page.short.not_for': 'not for this pool',
  'page.short.upside_down': 'limits upside down',
  'page.short.outside_window': 'outside the window',
  'page.short.wide_error': 'test too coarse',
  'page.short.dry': 'see the mass',
  'page.short.refused': 'no answer',
} as const
