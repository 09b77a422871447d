/** The pool's record: what was measured, planned, added and written down, and what that teaches. */
export const recordWords = {
  'record.intro':
    'Everything that is known of this pool by date: tests, plans as they were given, what was really added, and notes.',
  'record.empty':
    'Nothing is in the record yet. Keep a plan as given, write down an addition, or take samples in from a lab file.',
  'record.save_csv': 'Save samples and additions as CSV',
  'record.csv_name': '{name}, record',
  'record.no_date': 'no date',
  'record.today': 'Today',

  'record.plan.keep': 'Keep this plan as given',
  'record.plan.kept': 'In the record as given on {when}.',
  'record.plan.kept_now': 'The plan is in the record as it was given.',
  'record.plan.see': 'See the record',
  'record.plan.sample_name': 'Test of {when}',
  'record.plan.supposed': 'This plan is for a supposed water: what is measured later is not held against it.',
  'record.step.when': 'When',
  'record.step.when_for': 'When: {step}',
  'record.step.done': 'Mark as done',
  'record.step.done_for': 'Mark as done: {step}',
  'record.step.is_done': 'Done on {when}.',

  'record.kind.sample': 'Test',
  'record.kind.plan': 'Plan given',
  'record.kind.addition': 'Added',
  'record.kind.remark': 'Note',
  'record.kind.lesson': 'Learned',
  'record.timeline': 'By date',
  'record.sample.no_figures': 'no readings',
  'record.sample.from': 'From {file}, row {row}.',
  'record.remove': 'Take out',
  'record.remove_what': 'Take out of the record: {what}',
  'record.plan.steps': '{count|One step|# steps}',
  'record.plan.no_steps': 'no step',
  'record.plan.scenario': 'For “{scenario}”.',
  'record.plan.moved':
    'Since it was given, what it was worked out with has changed: {names}. It stands as it was given; a new plan may differ.',
  'record.plan.moved_one': '{name} (version {was}, now {is})',
  'record.plan.moved_gone': '{name} (version {was}, gone now)',
  'record.plan.moved_rules': 'the plan’s rules',
  'record.plan.moved_worksheet': 'worksheet {name}',
  'record.addition': '{amount} of {product}',
  'record.addition.strength': '{strength} {basis}',
  'record.addition.by_plan': 'as the plan of {when} asked',

  'record.add': 'Write down what was added',
  'record.add.when': 'When',
  'record.add.product': 'Product',
  'record.add.on_hand': 'On hand',
  'record.add.others': 'Others',
  'record.add.water': 'Water renewed',
  'record.add.amount': 'Amount, in {unit} unless a unit is written',
  'record.add.strength': 'Strength on the label',
  'record.add.basis': 'Which counts',
  'record.add.note': 'Note',
  'record.add.do': 'Put into the record',
  'problem.record_no_amount': 'Write how much was added, with a figure over nothing.',
  'record.remark': 'Write a note',
  'record.remark.text': 'What was seen, done or said',

  'record.outcome': 'What became of the plan',
  'record.outcome.says': 'The test of {measured} against what the plan of {given} foretold.',
  'record.outcome.done.all': 'All that it asked for is marked as done.',
  'record.outcome.done.unknown': 'Nothing is marked as done, so this holds only if all of it was.',
  'record.outcome.done.some':
    'Of its {all} additions and water changes only the first {count|is|# are} marked as done: the water foretold after that counts.',
  'record.outcome.before': 'Before',
  'record.outcome.foretold': 'Foretold',
  'record.outcome.measured': 'Measured',
  'record.outcome.verdict': 'Told by the tests',
  'record.outcome.quantity': 'Reading',
  'record.outcome.as_foretold': 'as foretold, so far as the tests can tell',
  'record.outcome.more': 'more than foretold: {low} to {high} was to be expected',
  'record.outcome.less': 'less than foretold: {low} to {high} was to be expected',
  'record.cause.ph.more':
    'pH often climbs by itself, with a salt cell, aeration or fresh plaster; or less acid went in than was written down.',
  'record.cause.ph.less': 'More acid may have gone in, or rain and chlorine tablets may have brought the pH down.',
  'record.cause.total_alkalinity.more': 'The fill water may carry alkalinity, or less acid went in.',
  'record.cause.total_alkalinity.less': 'More acid may have gone in, or water was lost and replaced by softer water.',
  'record.cause.calcium_hardness.more':
    'The fill water may carry calcium, plaster may give it off, or the pool holds less water than was taken.',
  'record.cause.calcium_hardness.less':
    'It may have come out as scale, water may have been lost, or the pool holds more water than was taken.',
  'record.cause.cyanuric_acid.more':
    'Stabilized chlorine may have been used beside it, or the pool holds less water than was taken.',
  'record.cause.cyanuric_acid.less':
    'It dissolves over days and may still lie in the sock or filter; or water was lost; or the pool holds more water than was taken.',
  'record.cause.borate.more': 'More may have gone in, or the pool holds less water than was taken.',
  'record.cause.borate.less':
    'It may not have been dissolved yet, water may have been lost, or the pool holds more water than was taken.',
  'record.cause.salt.more':
    'More may have gone in, water may have evaporated without being made up, or the pool holds less water than was taken.',
  'record.cause.salt.less':
    'It may not have been dissolved and mixed yet, water may have been lost, or the pool holds more water than was taken.',
  'record.cause.says': 'Possible causes, of which the record cannot tell one from another:',

  'record.learn': 'What the record teaches',
  'record.learn.nothing':
    'Nothing yet. A known addition and a test within two weeks narrow the pool’s volume; a night with the cell on tells its real output.',
  'record.learn.accept': 'Take it over',
  'record.learn.accept_what': 'Take it over: {what}',
  'record.learn.taken': 'Taken over. Undo takes it back.',
  'record.learn.volume': 'The volume lies between {low} and {high}; until now {known}.',
  'record.learn.volume.known': '{low} to {high} was known',
  'record.learn.volume.unknown': 'none was known',
  'record.learn.volume.as_known':
    '{count|One retest agrees|# retests agree} with the volume that is known, and cannot narrow it: {low} to {high}.',
  'record.learn.volume.at_least':
    '{count|One retest says|# retests say} that the pool holds at least {low}, which was known.',
  'record.learn.volume.contradiction':
    'Two retests contradict each other, so neither is used: {first}, and {second}. One of the readings, amounts or dates may be wrong, or water was lost.',
  'record.learn.volume.against_known':
    'The retests agree on {low} to {high}, and the volume in the worksheet is {known}. Measure the pool again, or look at the readings and amounts: nothing is taken over.',
  'record.learn.volume.against_known_open':
    'The retests agree that the pool holds at least {low}, and the volume in the worksheet is {known}. Measure the pool again, or look at the readings and amounts: nothing is taken over.',
  'record.learn.volume.one': '{quantity} from {from} to {to} ({low} to {high})',
  'record.learn.volume.one_open': '{quantity} from {from} to {to} (at least {low})',
  'record.learn.volume.by': 'It follows from: {evidence}.',
  'record.learn.provenance': 'record, {date}',
  'record.learn.display.right':
    'The cell’s salt display agrees with the tests within their error, in {count|one sample|# samples}.',
  'record.learn.display.off':
    'The cell’s salt display reads {by} too {side} in {count|one sample|# samples}; the tests allow {low} to {high}.',
  'record.learn.display.low': 'low',
  'record.learn.display.high': 'high',
  'record.learn.display.wanders':
    'The cell’s salt display is off by different amounts in {count} samples, so no one correction holds: cold water, scale or worn plates read as low salt.',
  'record.learn.display.kept': 'Correction of the cell’s display in the record: {by} is added to what it shows.',

  'record.night': 'An overnight test',
  'record.night.intro':
    'Test free chlorine at dusk and before dawn, with pump and cell on all night: the rise is what the cell makes. With the cell off, the fall is what the water uses up in the dark. The next dusk gives the demand of a day.',
  'record.night.dusk': 'Free chlorine at dusk',
  'record.night.dawn': 'Free chlorine at dawn',
  'record.night.hours': 'Hours between them',
  'record.night.setting': 'Cell setting, 0 to 1; 0 is off',
  'record.night.next_dusk': 'Free chlorine at the next dusk',
  'record.night.cell_hours': 'Hours the cell ran from dusk to dusk',
  'record.night.do': 'Work it out',
  'problem.record_night_incomplete': 'Dusk, dawn, the hours and the cell’s setting are needed.',
  'problem.record_night_no_volume': 'The pool’s volume is needed first.',
  'problem.record_night_within_error':
    'Chlorine rose by {rise}, which is no more than two tests can be off: this night says nothing of the cell.',
  'problem.record_night_refused': 'These figures cannot be: look at them again.',
  'record.night.output': 'The cell makes {value} at full setting; the tests allow {low} to {high}.',
  'record.night.output_least': 'What the water used up in the dark is not in it, so this is the least.',
  'record.night.output_loss': 'What the water uses up in the dark is counted, by the night with the cell off.',
  'record.night.demand': 'The pool uses {value} a day; the tests allow {low} to {high}.',
  'record.night.loss': 'In the dark the water uses {value} an hour; the tests allow {low} to {high}.',

  'record.lesson.volume': 'Volume {low} to {high}, by the record.',
  'record.lesson.night_on': 'Cell output {output} by an overnight test.',
  'record.lesson.night_off': 'Loss in the dark {loss}, by a night with the cell off.',
  'record.lesson.salt_display': 'Correction of the cell’s salt display: {by}.',

  'record.trends': 'How the readings went',
  'record.trends.few': 'Lines are drawn once two tests have a date.',
  'record.trends.wanted': 'wanted',
  'record.trends.keys': 'Left and right step through the tests.',
  'record.trends.at': '{name} {value} on {when}',
  'record.trends.says': '{name}: {count|one test|# tests}, last {value}',
  'record.trends.foretold': 'foretold {value}',
  'record.trends.table': 'The same in a table',
  'record.trends.test': 'Test',
  'record.trends.last': 'The last {count} of {all} tests; the CSV of the record has all.',
  'record.earlier': 'Show {count} earlier',
} as const
