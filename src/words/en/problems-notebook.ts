/** What can be wrong with an edit, a notebook file, or what the browser keeps. */
export const problemsNotebook = {
  'formula.removed_scenario': 'removed scenario',
  'formula.plan_of': 'the step plan of “{scenario}”',
  'formula.in_scenario': '{name} in “{scenario}”',

  'problem.scenario_gone': 'This scenario is no longer in the notebook.',
  'problem.scenario_exists': 'The scenario “{name}” is in the notebook already.',
  'problem.scenario_name_taken': 'A scenario named “{name}” is there already; choose another name.',
  'problem.scenario_name_reserved':
    '“{name}” cannot be a scenario’s name: in formulas that word always means the first scenario. Choose another name.',
  'problem.scenario_is_last': '“{name}” is the last scenario already.',
  'problem.plan_of_itself': 'A scenario cannot follow its own step plan.',
  'problem.scenario_followed':
    'The plan of “{name}” is followed by another scenario, whose links have to become numbers in the same step.',
  'problem.baseline_stays':
    '“{name}” is the baseline, which the other scenarios follow; it stays first and cannot be removed.',
  'problem.before_baseline':
    '“{name}” cannot stand before “{baseline}”, which is the baseline that the other scenarios follow.',
  'problem.order_taken': '“{name}” and “{other}” cannot have the same place.',
  'problem.order_unreadable': 'The place of “{name}” among the scenarios cannot be read.',
  'problem.name_empty': 'The name is empty; enter one.',
  'problem.name_too_long': 'The name has {length} characters; at most {most} are kept.',
  'problem.name_unwritable': 'A name is one line, without tabs, line breaks and other control characters.',
  'problem.note_too_long': 'The note has {length} characters; at most {most} are kept.',
  'problem.sample_gone': 'This sample is no longer in the notebook.',
  'problem.sample_in_use': 'The sample “{name}” is used by {scenarios}; choose another sample there first.',
  'problem.worksheet_gone': 'The worksheet “{id}” is no longer in the notebook.',
  'problem.worksheet_in_use': 'The worksheet “{id}” is read by {users}; change these formulas first.',
  'problem.worksheet_id': 'The definition says another id than “{id}”.',
  'problem.row_gone': 'This row is no longer in the notebook.',
  'problem.row_at_end': '“{name}” stands at the end already.',
  'problem.row_of_words':
    'A row of your own gives a number, or yes or no, not words. Say TRUE or FALSE, or give it a unit.',
  'problem.row_name_taken': 'There is a quantity “{name}” already; choose another name for the row.',
  'problem.row_in_use': '“{name}” is read by {users}; change these formulas first.',
  'problem.too_many_rows': 'A notebook holds at most {most} rows of its own; remove one first.',
  'problem.too_many_edits': 'More than {most} changes at once; make them in parts.',
  'problem.too_many_scenarios': 'A notebook holds at most {most} scenarios; remove some, or begin another notebook.',
  'problem.too_many_products': 'The shelf is full: it holds {most} products.',
  'problem.too_many_rules': 'A notebook changes at most {most} values of the rules.',
  'problem.case_gone': 'The case “{id}” is not in this notebook any more.',
  'problem.case_id': 'The case calls itself by another id than “{id}”.',
  'problem.too_many_cases': 'A notebook holds at most {most} cases of its own.',
  'problem.product_gone': 'This product is not on the shelf any more.',
  'problem.too_many_charts': 'A notebook holds at most {most} charts; remove one first.',
  'problem.chart_gone': 'This chart is not in the notebook any more.',
  'problem.too_many_precisions': 'A notebook holds at most {most} precisions of its own.',
  'problem.not_an_input': '{quantity} is not a number that is entered, so nothing can be drawn against it.',
  'problem.span_empty': 'The span ends before it begins: the first end has to be below the second.',
  'problem.plan_given_already':
    'This plan stands in the record already, and a plan that was given stays as it was given.',
  'problem.plan_record_gone': 'This plan is not in the record any more.',
  'problem.addition_gone': 'This addition is not in the record any more.',
  'problem.remark_gone': 'This note is not in the record any more.',
  'problem.lesson_gone': 'This is not in the record any more.',
  'problem.record_full': 'The record is full: it holds {most} of these.',
  'problem.too_many_samples': 'A notebook holds at most {most} samples; remove some, or begin another notebook.',
  'problem.too_many_cells': 'A notebook holds at most {most} entries; remove some, or begin another notebook.',
  'problem.too_many_worksheets': 'A notebook holds at most {most} worksheets of its own; remove one first.',
  'problem.too_many_units': 'At most {most} rows can have units of their own.',

  'problem.quantity_unknown': '{path}: no worksheet of this notebook has a quantity “{quantity}”.',
  'problem.outside_accept':
    '{path}: {label}: {found}{unit} cannot be; it lies from {low} to {high}{unit}. Check the entry.',
  'problem.entered_other':
    '{path}: “{found}{unit}” was entered, which is {read}{own}, but {canonical}{own} stands beside it. Correct one of the two.',
  'problem.entered_unreadable':
    '{path}: what was entered, “{found}{unit}”, cannot be read as a number; {canonical} stands beside it.',
  'problem.wants_number': '{path}: {label} takes a number, not a choice.',
  'problem.wants_choice': '{path}: {label} takes one of its choices: {choices}.',
  'problem.choice_unknown': '{path}: {label}: “{found}” is not one of its choices: {choices}.',
  'problem.reading_of_computed':
    '{path}: {label} is worked out by the notebook, so a sample cannot have a reading of it.',
  'problem.computed_not_taken': '{path}: {label} is worked out by the notebook; it cannot be marked as not taken.',
  'problem.formula_no_such_scenario': '{path}: the formula names a scenario “{name}”, and none has that name.',
  'problem.link_circle':
    '{path}: this would run in a circle: {circle}. No formula and no plan can wait for its own answer; leave one of these links out.',
  'problem.carry_nothing':
    'Nothing is foretold of this water yet, so there is nothing to carry forward. The worksheet says what it still needs.',
  'problem.formula_scenario_gone': '{path}: the formula names a scenario that is no longer in the notebook.',

  'problem.file_too_large': '{path} has more than {most} million characters; so large a file is not read.',
  'problem.json_too_deep': '{path}: more than {most} brackets stand inside one another; such a file is not read.',
  'problem.json_unreadable': '{path} is not JSON text, or it is cut off; nothing was read.',
  'problem.json_reserved_key': '{path}: this key is not accepted in any file.',
  'problem.json_not_data': '{path}: what stands there cannot be written as JSON.',
  'problem.not_a_notebook': '{path} is not a notebook file: its “format” does not say “basinbook-notebook”.',
  'problem.file_no_version': '{path}: its “version” is not a whole number from 1; this program reads up to {ours}.',
  'problem.file_newer':
    '{path} is written in version {found} of the notebook format, and this program reads up to version {ours}; open it with a newer Basinbook.',
  'problem.file_missing': '{path} is missing.',
  'problem.file_unknown_key': '{path}: a notebook has nothing of this name.',
  'problem.file_unknown_name': '{path}: this cannot be a name here.',
  'problem.file_unknown_kind': '{path}: nothing of this kind is known: {found}.',
  'problem.file_wants_text': '{path}: text in quotation marks is expected here, not {found}.',
  'problem.file_wants_number': '{path}: a number is expected here, not {found}.',
  'problem.file_wants_whole': '{path}: a whole number is expected here, not {found}.',
  'problem.file_wants_truth': '{path}: true or false is expected here, not {found}.',
  'problem.file_wants_list': '{path}: a list in square brackets is expected here, not {found}.',
  'problem.file_wants_record': '{path}: names with values in curly brackets are expected here, not {found}.',
  'problem.file_wants_one_of': '{path}: one of {choices} is expected here, not {found}.',
  'problem.file_unreadable': '{path}: “{found}” cannot stand here.',
  'problem.file_text_too_long': '{path}: the text is longer than {most} characters.',
  'problem.file_too_many': '{path}: there are more than {most} entries.',
  'problem.file_number_too_small': '{path}: {found} is less than {least}.',
  'problem.file_no_scenario': '{path}: a notebook has at least one scenario.',
  'problem.file_no_such_sample': '{path}: the notebook has no sample with this id.',
  'problem.file_no_such_scenario': '{path}: the notebook has no scenario with this id.',
  'problem.file_other_id': '{path}: it has to be the same as the name it stands under, “{id}”.',
  'problem.file_order_taken': '{path}: another scenario has the same place.',
  'problem.file_name_empty': '{path}: the name is empty.',
  'problem.file_name_too_long': '{path}: the name has {length} characters; at most {most} are kept.',
  'problem.file_name_unwritable': '{path}: a name is one line, without tabs, line breaks and other control characters.',
  'problem.file_row_name_taken': '{path}: “{name}” is the name of another row already.',
  'problem.file_name_taken': '{path}: “{name}” is taken by another scenario, or means the baseline.',

  'problem.stored_no_snapshot':
    '{path}: what the browser keeps of this notebook is damaged. Save the stored records to a file and ask for help with it.',
  'problem.stored_edit_missing':
    '{path}: of {head} stored changes, number {seq} is missing. Save the stored records to a file and ask for help with it.',
  'problem.stored_edit_damaged':
    '{path}: of {head} stored changes, number {seq} cannot be read. Save the stored records to a file and ask for help with it.',
  'problem.state_of_another': 'This is a state of another notebook; open it as a copy.',
  'problem.state_gone': 'This earlier state is no longer kept.',
  'problem.state_damaged': 'This earlier state is damaged and cannot be read.',
  'problem.notebook_not_stored': 'The browser no longer keeps this notebook; save it to a file.',
  'problem.notebook_stored_already': 'The notebook “{name}” is stored already.',
  'problem.notebook_not_open': 'This notebook is not open in this tab, so nothing was written.',
  'problem.written_elsewhere':
    'Another tab has changed this notebook since it was opened here. Save this one to a file if you need it, then open it again.',
  'problem.storage_blocked':
    'This browser does not let the page keep anything, as in some private windows. What you enter is gone when the tab closes: save the notebook to a file.',
  'problem.storage_held':
    'Another tab runs an older Basinbook and keeps the store busy. Close the other tabs, then load this page again.',
  'problem.storage_newer':
    'What the browser keeps was written by a newer Basinbook. Load the page again; if that does not help, clear the browser’s cache of it.',
  'problem.storage_full':
    'The browser has no room left, so the last changes are not saved. Delete notebooks that you no longer need, or save this one to a file.',
  'problem.storage_lost':
    'The connection to the browser’s store was closed. Save the notebook to a file, then load the page again.',
  'problem.storage_failed': 'The browser could not keep the last changes: {why}. Save the notebook to a file.',
} as const
