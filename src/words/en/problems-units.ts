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

  // what a unit is of, by its dimension; it stands after “a unit of”
  'unit_kind.concentration': 'concentration',
  'unit_kind.concentration a day': 'concentration a day',
  'unit_kind.amount concentration': 'molar concentration',
  'unit_kind.amount': 'amount of substance',
  'unit_kind.temperature': 'temperature',
  'unit_kind.length': 'length',
  'unit_kind.area': 'area',
  'unit_kind.volume': 'volume',
  'unit_kind.mass': 'mass',
  'unit_kind.mass flow': 'mass by time',
  'unit_kind.flow': 'flow',
  'unit_kind.time': 'time',
  'unit_kind.hours a day': 'hours a day',
  'unit_kind.rate': 'rate',
  'unit_kind.depth a day': 'depth a day',
  'unit_kind.speed': 'speed',
  'unit_kind.pressure': 'pressure',
  'unit_kind.conductivity': 'conductivity',
  'unit_kind.voltage': 'voltage',
  'unit_kind.current': 'electric current',
  'unit_kind.turbidity': 'turbidity',
  'unit_kind.share of air': 'share of the air',
  'unit_kind.pH': 'pH',
  'unit_kind.number': 'plain number',
  'unit_kind.choice': 'choice',
} as const
