/** Sentences about numbers and units that were entered or read. */
export const problemsUnits = {
  'problem.unreadable_number': '{path}: “{found}” is not a number here; the decimal mark is “{decimal}”.',
  'problem.limit_entered':
    '{path}: “{found}” is a limit, not a reading. Here a number is wanted, or “-” where there is none.',
  'problem.long_entry': '{path}: “{found}” is too long; an entry has at most {most} characters.',
  'problem.not_finite': '{path}: “{found}” is beyond what can be computed.',
  'problem.wrong_compound':
    '{path}: “{found}” is not one amount. Type a whole number of {large} and a smaller rest in {small}.',
  'problem.unknown_unit': '{path}: “{found}” is not a unit we know.',
  'problem.unread_unit': '{path}: “{found}” is not a unit we know here; use for example {accepted}.',
  'problem.wrong_dimension':
    '{path}: “{found}” is a unit of {found_kind}; here a unit of {wanted_kind} is wanted, such as {wanted}.',
  'problem.wrong_basis': '{path}: “{found}” counts another substance; here {wanted} is wanted.',
  'problem.ambiguous_unit': '{path}: “{found}” can mean {choices}. Type the one that is meant.',
} as const
