/** What the engine says of a cell without a value, and of itself: where, what was found, what is accepted, what to do. */
export const problems = {
  'problem.not_a_number': '{path}: the result is not a number.',
  'problem.no_number':
    '{path}: the result is not a number that exists. Look at what the formula divides by, or takes a root or logarithm of.',
  'problem.not_computable': '{path}: this cannot be worked out. Look at the formula and at what it reads.',
  'problem.division_by_zero': '{path}: the formula divides by zero.',
  'problem.circular': '{path}: this formula needs its own result. Take the quantity that leads back here out of it.',
  'problem.not_a_number_here': '{path}: the formula entered gives no number. This row takes numbers.',
  'problem.text_too_long': '{path}: the formula gives a text of more than {most} characters. Put less of it together.',
  'problem.entry_out_of_range': '{path}: the formula entered gives {found}{unit}; this row takes {min} to {max}{unit}.',
  'problem.unknown_quantity': '{path}: there is no quantity “{name}”.',
  'problem.engine_failed':
    'The worksheets stopped computing ({why}). They were started again from the notebook; nothing that was entered is lost.',
  'problem.engine_slow':
    'A computation took longer than {seconds} seconds and was stopped. The worksheets were started again from the notebook; nothing that was entered is lost.',
  'problem.engine_runaway':
    'The last change, {what}, could not be worked out in time, twice, and was taken back. The worksheets were started again from the notebook; nothing else that was entered is lost.',
  'problem.engine_runaway_kept':
    'The last change could not be worked out in time, twice. The worksheets were started again from the notebook; nothing that was entered is lost.',
  'engine.what.cell': '“{quantity}” in “{scenario}”',
  'engine.what.row': 'the row “{name}”',
  'engine.what.worksheet': 'the worksheet “{name}”',
  'engine.what.other': 'the one made before the worksheets stopped',

  'problem.engine_gave_up':
    'The worksheets cannot compute this notebook. Undo the last formula or save the notebook to a file; nothing that was entered is lost.',
} as const
