/** What can be wrong with a formula or a worksheet definition. */
export const problemsWorksheet = {
  'problem.only_a_limit':
    '{path}: a reading is only a limit of its test. Dilute the sample and test again; nothing is worked out from a limit.',
  'problem.formulas_on_their_way':
    '{path}: what reads formulas is still on its way to this browser. Enter it once more in a moment.',
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
  'problem.formula_unknown_name': '{path}: “{name}” at character {at} is no quantity.',
  'problem.formula_name_in_capitals':
    '{path}: “{name}” at character {at} is no quantity; names are written in small letters: “{meant}”.',
  'problem.formula_name_not_taken':
    '{path}: “{name}” at character {at} belongs to another worksheet; list it under “takes”.',
  'problem.formula_other_scenario':
    '{path}: “{name}” at character {at} reads another scenario, which a worksheet that comes with the app may not.',
  'problem.formula_unknown_function': '{path}: “{name}” at character {at} is no function that formulas may use.',
  'problem.formula_calls_solve':
    '{path}: “{name}” at character {at} gives many results; declare it under “solves” and read its outputs by name.',
  'problem.formula_argument_count':
    '{path}: {name} at character {at} has {found|# argument|# arguments}; it takes {accepted}.',
  'problem.formula_circle': '{path}: the formulas go round in a circle: {circle}.',
  'problem.formula_chain':
    '{path}: “{name}” stands at the end of a chain of more than {most} formulas that read one another.',

  'problem.units_together':
    '{path}: at character {at} {left_unit} and {right_unit} meet; they cannot be added, compared or stand for each other, and no factor makes the one into the other.',
  'problem.units_together_size':
    '{path}: at character {at} {left_unit} and {right_unit} meet; they are units of one kind, but not of one size. Convert one of them with a factor.',
  'problem.units_together_basis':
    '{path}: at character {at} {left_unit} and {right_unit} meet; they count different substances. Convert one of them with a factor.',
  'problem.units_together_difference':
    '{path}: a reading and a difference, {left_unit} and {right_unit}, meet at character {at}; they cannot stand for each other.',
  'problem.units_number':
    '{path}: {function} takes a number without a unit; what stands at character {at} is in {found_unit}. Divide it by something in the same unit.',
  'problem.units_power':
    '{path}: at character {at} {left_unit} is raised to a power ({right_unit}) that is not one number written in the formula, so no unit of the result can be told.',
  'problem.units_multiplied':
    '{path}: at character {at} {left_unit} and {right_unit} are multiplied or divided. A logarithmic reading, such as a pH, is no amount of anything: take a difference of two, or 10 to its power.',
  'problem.units_divided':
    '{path}: at character {at} {left_unit} is divided by a reading in {right_unit}, a scale whose zero is only agreed. Divide by a difference; temperatures also in kelvin.',
  'problem.units_argument':
    '{path}: {function} takes {parameter} in {wanted_unit}; what stands at character {at} is in {found_unit}.',
  'problem.units_argument_basis':
    '{path}: {function} takes {parameter} in {wanted_unit}; what stands at character {at} is in {found_unit}, which counts another substance.',
  'problem.units_argument_difference':
    '{path}: {function} takes {parameter} as a reading in {wanted_unit}; at character {at} stands a difference or a sum of readings.',
  'problem.units_row': '{path}: the row’s unit is {wanted_unit}, and its formula gives {found_unit}.',
  'problem.units_row_basis':
    '{path}: the row is in {wanted_unit}, and its formula gives {found_unit}, which does not count the same substance.',
  'problem.units_row_difference':
    '{path}: the row’s unit is {wanted_unit}, and its formula gives a difference or a sum of readings, which would be shown as a reading. A difference of temperatures belongs into a row in K.',
  'problem.formula_refused': '{path}: the formula of “{name}” cannot be worked out as it stands.',
  'problem.units_flagged': '{path}: the units in the formula of “{name}” do not agree, so its number is not shown.',

  'problem.definition_missing': '{path} is missing.',
  'problem.definition_wants_text': '{path}: a text in quotation marks is expected here, not {found}.',
  'problem.definition_wants_number': '{path}: a number is expected here, not {found}.',
  'problem.definition_wants_whole_number': '{path}: a whole number is expected here, not {found}.',
  'problem.definition_wants_list': '{path}: a list in square brackets is expected here, not {found}.',
  'problem.definition_wants_two_numbers': '{path}: two numbers in square brackets are expected here, not {found}.',
  'problem.definition_wants_object': '{path}: names and values in curly brackets are expected here, not {found}.',
  'problem.definition_wants_other': '{path}: {found} is not what is expected here.',
  'problem.definition_empty_text': '{path}: the text is empty.',
  'problem.definition_long_text': '{path}: the text has more than {bound} characters.',
  'problem.definition_too_low': '{path}: {found} is too small; at least {bound} is accepted.',
  'problem.definition_too_high': '{path}: {found} is too large; at most {bound} is accepted.',
  'problem.definition_too_few': '{path}: at least {bound|one entry is|# entries are} expected here.',
  'problem.definition_too_many': '{path}: at most {bound|one entry is|# entries are} accepted here.',
  'problem.definition_bad_name':
    '{path}: {found} is no name; a name has at most 64 small letters a to z, digits and _, and begins with a letter.',
  'problem.definition_bad_notice': '{path}: {found} is no notice; write a kind and a name, as in "disagree:tds".',
  'problem.definition_bad_choice':
    '{path}: {found} is no id of a choice; it has at most 64 letters a to z, digits and _, and begins with a small letter.',
  'problem.definition_bad_value': '{path}: {found} is not accepted here; use {accepted}.',
  'problem.definition_unknown_key': '{path}: nothing of this name is known here.',

  'problem.worksheet_twice': '{path}: there is a worksheet “{name}” already, in {other}; give this one another id.',
  'problem.worksheet_shadows_shipped':
    '{path}: “{name}” is a worksheet that comes with the app and cannot be replaced; give this one another id.',
  'problem.name_twice': '{path}: “{name}” is there already, in {other}; a name means one quantity in all worksheets.',
  'problem.name_shadows_shipped':
    '{path}: “{name}” comes with the app, in {other}, and cannot be replaced; use another name, such as my_{name}.',
  'problem.name_is_function': '{path}: “{name}” is a function and cannot be the name of a quantity.',
  'problem.name_reserved': '{path}: “{name}” means something else in formulas and cannot be the name of a quantity.',
  'problem.takes_nothing': '{path}: no worksheet gives “{name}”.',
  'problem.chart_not_input': '{path}: {name} is not a number that is entered, so nothing can be drawn against it.',
  'problem.chart_not_number': '{path}: {name} is not a number, so it cannot be drawn.',
  'problem.row_not_known': '{path}: there is no quantity “{name}”.',
  'problem.row_not_taken': '{path}: “{name}” belongs to another worksheet; list it under “takes”.',
  'problem.unit_unknown':
    '{path}: “{found}” is no unit that is known here; write it as in “mg/L as CaCO3”, “°C” or “m³”.',
  'problem.span_order': '{path}: the low end, {low}, is not under the high end, {high}.',
  'problem.default_outside': '{path}: {found} is outside what the row accepts, {low} to {high}.',
  'problem.default_not_a_choice': '{path}: “{found}” is not one of the choices {accepted}.',
  'problem.plausible_outside': '{path}: this reaches outside what the row accepts, {low} to {high}.',
  'problem.band_without_ends': '{path}: a band needs a low end, a high end, or both.',
  'problem.when_of_wrong_kind':
    '{path}: a condition on a choice is a list of ids, and one on a number is “from” and “below”.',
  'problem.when_not_a_choice': '{path}: “{found}” is not one of the choices {accepted}.',
  'problem.refused': '{path}: no answer here: {why}',
  'problem.stand_in_not_read': '{path}: the row’s formula does not read “{name}”.',
  'problem.solve_unknown_function': '{path}: there is no locked function “{name}”.',
  'problem.solve_of_one_result': '{path}: {name} gives one result; call it in a formula.',
  'problem.solve_unknown_input': '{path}: {function} has no input “{name}”; it has {accepted}.',
  'problem.solve_input_unit':
    '{path}: {function} takes {parameter} in {wanted_unit}; the quantity given is in {found_unit}.',
  'problem.solve_input_missing': '{path}: {function} needs an input “{name}”.',
} as const
