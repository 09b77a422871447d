/**
 * The sentences of a step plan: what to do, where and how, what to watch, what to test again, and what the plan says of each
 * reading. Amounts, products and readings come as words already (`planSentence`).
 */
export const planWords = {
  'plan.step.dose': 'Add {amount} of {product}.',
  'plan.step.dose_packs':
    'Add {amount} of {product}: {whole|one whole pack|# whole packs} of {pack} and {rest} measured.',
  'plan.step.dose_whole_packs': 'Add {amount} of {product}: {whole|one whole pack|# whole packs} of {pack}.',
  'plan.step.dose_at_most': 'Then add the rest of the {product} by the new reading, at most {amount}.',
  'plan.step.daily_chlorine':
    '{days|Put back by hand what the day took: |On each of # days put back by hand what the day took: }{amount} of {product}.',
  'plan.step.sequestrant': 'Add a sequestrant by its own label, for {readings}.',
  'plan.step.dilute': 'Drain {amount}, {percent} % of the water, and fill up again (round {round}).',
  'plan.step.dilute_depth':
    'Let the level down by {centimetres} ({amount}, {percent} % of the water) and fill up again (round {round}).',
  'plan.step.aerate': 'Let air into the water for {hours} hours: returns up, fountains and jets on, cover off.',
  'plan.step.carbonate_settles': 'Wait {hours} hours, so that bicarbonate or soda ash and calcium do not meet.',
  'plan.step.let_fall': 'Add no chlorine for {hours} hours and let it fall.',
  'plan.step.stabilizer_acid':
    'Let the stabilizer dissolve for {hours} hours with the pump on and returns up: it is an acid, and the pH comes back as carbon dioxide leaves.',
  'plan.step.stabilizer_dissolves': 'Let the stabilizer dissolve for {hours} hours; no backwash meanwhile.',
  'plan.step.tomorrow': 'That is enough for today. Go on tomorrow, in {hours} hours.',
  'plan.step.cell_on': 'Switch the cell on.',
  'plan.step.cell_on_hours': 'Switch the cell on for {hours} hours a day.',

  'plan.case.text': '{text}',
  'plan.case.asks': 'Not known yet: {readings}. Until then this stands.',

  'plan.how.acid':
    'Pump on, cell off. Pour it slowly and close to the water along the deep end, never into the skimmer.',
  'plan.how.pour': 'Pour it slowly along the edge, in front of a return, with the pump on.',
  'plan.how.discharge':
    'Let its chlorine fall first, cell off, or take it out with a neutralizer in the hose; ask where salt water may go.',
  'plan.how.dissolve': 'Dissolve it in a bucket of pool water first, then pour it along the edge with the pump on.',
  'plan.how.soda_ash':
    'Dissolve it in a bucket of pool water first; pour it in widely with the pump on. Some cloud passes.',
  'plan.how.calcium':
    'Cold water into the bucket first, then the flakes in portions; pour it in widely with the pump on.',
  'plan.how.stabilizer':
    'Hang it in a sock in front of a return. No backwash for five to seven days; the cell and the pump may run.',
  'plan.how.salt':
    'Cell off. Spread it round the edge with the pump on and brush until none lies on the floor; not through the skimmer.',
  'plan.how.tablets': 'In a floating or built-in feeder of its own, never in the skimmer.',
  'plan.how.drain': 'Cell, heater and pump off before the level passes the skimmer; on again once it is back.',
  'plan.how.half': 'This is half of what it may take; the test that follows says how much it did.',
  'plan.how.dusk': 'At dusk, with the pump on.',
  'plan.how.closed': 'Keep the pool closed until the chlorine reads enough.',
  'plan.how.closed_treatment':
    'Only if the new test reads the same: once, pool closed, doors and fans open indoors, part of the water renewed.',
  'plan.how.by_label': 'Amount and way as its label says.',
  'plan.how.cell_again': 'The cell goes on again after the hour.',
  'plan.how.cell_on': 'Only with flow through the cell, and the water warm enough for it.',
  'plan.how.sample':
    'Take the bottle elbow deep, full and closed, out of the sun, within two hours; note the pool’s own temperature.',

  'plan.caution.label': 'The product’s label and the local code come first.',
  'plan.caution.acid': 'Acid into water, never water into acid. Gloves and goggles; stand upwind.',
  'plan.caution.acid_and_chlorine':
    'Acid and chlorine never meet: another place, another scoop, an hour apart, never one container. They give a poisonous gas.',
  'plan.caution.chlorines_apart':
    'Calcium hypochlorite, dichlor and trichlor never share a scoop, a feeder or a skimmer: they burn or explode.',
  'plan.caution.calcium_heats': 'Calcium chloride heats strongly as it dissolves.',
  'plan.caution.borate': 'Some countries limit borate in pool water and its sale; keep animals from drinking it.',
  'plan.caution.undissolved': 'Nothing may lie undissolved on this shell: it bleaches, burns or stains.',
  'plan.caution.out_of_water': 'Nobody in the water while dosing, or when a stopped pump starts again.',
  'plan.caution.large_chlorine':
    'Heater, cover and water features off while chlorine is high; indoors open doors and fans.',
  'plan.caution.finish_maker': 'The finish maker’s own sheet comes first.',
  'plan.caution.shell_lifts':
    'Ground water can lift or crack a shell and a liner can shrink: check the water table and the relief valve, never empty the pool.',
  'plan.caution.runs_dry': 'Equipment that runs dry breaks; power off at its switch.',
  'plan.caution.discharge':
    'Where the water may go is local law: at most {most} mg/L of chlorine in many places, and salt water often barred from storm drain, lawn and septic tank.',
  'plan.caution.dechlorinate':
    'This water still holds chlorine: take it out or let it fall to {most} mg/L before it leaves.',

  'plan.gate.no_flow': 'Nothing goes in until the pump moves the water.',
  'plan.gate.dirty_filter': 'Nothing goes in until the filter is clean.',
  'plan.gate.low_water': 'Nothing goes in until the water stands at the skimmer again.',
  'plan.gate.other_sanitizer':
    'This pool is kept with {sanitizer}; the steps for chlorine, stabilizer and cell do not hold for it and are left out.',
  'plan.gate.bleached_test':
    'Free chlorine reads {free} mg/L and there is cause for doubt: a bleached test reads next to nothing in a pool that may hold thirty. No chlorine, no acid.',
  'plan.gate.high_chlorine':
    'Free chlorine is {free} mg/L. Over {most} mg/L the pH and alkalinity tests err: no acid and nothing for alkalinity until it has fallen.',
  'plan.gate.fresh_plaster': 'The plaster is younger than {days} days: no salt, no cell, no tablets.',

  'plan.retest.censored':
    'Test {readings} again so that it gives a number: dilute the sample where it was over the test’s top.',
  'plan.retest.free_over_total':
    'Test {readings} again, with clean cells and fresh reagents: free chlorine is part of the total and cannot be over it.',
  'plan.retest.no_such_water':
    'Test {readings} again: so much stabilizer at this pH would by itself read as more alkalinity than was found.',
  'plan.retest.at_the_pool': 'Test {readings} at the pool: the bottle is {hours} hours old.',
  'plan.retest.diluted':
    'Test {readings} again: one part of the sample with {parts} parts of chlorine-free water, or a titration by FAS-DPD.',
  'plan.retest.after_fall': 'Test {readings} again before anything else.',
  'plan.retest.discharge':
    'Before any water leaves, test {readings} where it leaves: at most {most} mg/L of chlorine, and pH {low} to {high} where the law says no other.',
  'plan.retest.after_filling': 'Test {readings} after the pump has mixed the water.',
  'plan.retest.salt_apart':
    'The salt readings are {apart} mg/L apart: no salt. Test again with a fresh sample, by two methods; look for cold water, scale, air and low flow.',
  'plan.retest.salt_alarm':
    'The cell’s word alone is no reading: no salt. Test the water; cold, scale, worn plates, low flow, air and wiring read as low salt too.',
  'plan.retest.salt_second': 'Read the salt by a second method.',
  'plan.retest.stabilizer_second': 'Test the stabilizer again; it reads true only after a week.',
  'plan.retest.calcium_second': 'Test the calcium again.',
  'plan.retest.borate_second': 'Test the borate again.',
  'plan.retest.combined':
    'Test {readings} again: monopersulfate reads as combined chlorine. Open doors and fans, renew part of the water.',
  'plan.retest.combined_after':
    'Test {readings} again. If combined chlorine did not fall, renew water; do not repeat the dose.',
  'plan.retest.chlorine_falls': 'Test the free chlorine each day until it has fallen to its target.',
  'plan.retest.test_error': 'Test {readings} again first: the error of the test alone could turn what this plan says.',
  'plan.retest.each_day':
    'Until the cell makes chlorine, test the free chlorine each day and put back by hand what is missing.',
  'plan.retest.last': 'Test {readings} again.',

  'plan.verdict.at_target': 'Nothing to add: {reading} is within the test’s error of the target, {target}.',
  'plan.verdict.hardly_low':
    'Nothing to add: it is under the target, {target}, by hardly more than the test’s error; air, and a cell that runs, bring it up.',
  'plan.verdict.in_range': 'Nothing to add: {reading} is in the range for this pool.',
  'plan.verdict.low': 'Under the target, {target}.',
  'plan.verdict.runs_short': 'Enough now; new water and the waits take it under the target, {target}.',
  'plan.verdict.high': 'Over {target}.',
  'plan.verdict.over': 'Over the most, {most}: water is renewed.',
  'plan.verdict.no_target_low': '{reading} is under the range for this pool. No target is given, so nothing is dosed.',
  'plan.verdict.no_target_high': '{reading} is over the range for this pool. No target is given, so nothing is done.',
  'plan.verdict.missing': 'Left out: {names} not given.',
  'plan.verdict.refused': 'Left out: the worksheet has no amount for it.',
  'plan.verdict.failed_gate': 'The reading is not used; it is tested again first.',
  'plan.verdict.rests_on': 'Left out: it rests on {names}, which have to be tested again.',
  'plan.verdict.kept_out': 'Left out by the rule “{rule}”.',
  'plan.verdict.test_error': '{reading} is so near the end of the range that the test’s error could turn it.',
  'plan.verdict.falls': 'Over the target, {target}: it falls by itself.',
  'plan.verdict.chlorine_lost': 'What the waits leave of it is not known without the daily demand.',
  'plan.verdict.salt_high':
    'No salt to buy: there is more than the target, {target}. Only dilution takes it down, where a most is given.',
  'plan.verdict.calcium_high':
    'No calcium to buy: there is more than the target, {target}. Only dilution takes it down.',
  'plan.verdict.stabilizer_high':
    'No stabilizer to buy: there is more than the target, {target}. Only dilution takes it down.',
  'plan.verdict.no_calcium_wall': 'No calcium to buy: this wall has none to lose.',
  'plan.verdict.calcium_from_plaster': 'No calcium to buy yet: plaster that cures gives calcium off by itself.',
  'plan.verdict.no_stabilizer_spa': 'No stabilizer to buy: none belongs in a spa.',
  'plan.verdict.still_dissolving': 'The last stabilizer still dissolves; test again in {days|one day|# days}.',
  'plan.verdict.over_ratio': 'Stabilizer stands at {ratio} to 1 of the wanted chlorine; the aim is {aim} to 1 or less.',
  'plan.verdict.phosphate': 'Nothing to buy against phosphate: by itself it calls for no step.',

  'plan.cell.salt_unknown': 'the salt has to be tested again',
  'plan.cell.not_tested': 'readings have to be tested again',
  'plan.cell.salt_low': 'salt is under the cell’s window',
  'plan.cell.salt_high': 'salt is over the cell’s window',
  'plan.cell.flow': 'the flow is under what the cell needs',
  'plan.cell.cold': 'the water is too cold',
  'plan.cell.ph': 'pH is too high',
  'plan.cell.lsi': 'the index is too high: scale',

  'plan.swim.yes': 'People may swim, where the label and the local code say so too.',
  'plan.swim.no': 'Nobody swims yet.',
  'plan.swim.stale': 'Not before a new test.',
  'plan.swim.why_foretold':
    'Nobody has tested this water: it is what was foretold of another. Test it before anyone swims and before anything is added.',
  'plan.swim.why_stale':
    'This water was tested {days} days ago: test free chlorine and pH again before anyone swims and before anything is added.',
  'plan.swim.case': 'The pool is closed: {rule}.',
  'plan.swim.chlorine_unknown': 'Free chlorine has to be tested.',
  'plan.swim.chlorine_low': 'Free chlorine, {free} mg/L, is under the least, {least}.',
  'plan.swim.chlorine_high': 'Free chlorine, {free} mg/L, is over the most, {most}.',
  'plan.swim.ratio': 'Stabilizer is more than {closing} times the free chlorine; a code closes a pool there.',
  'plan.swim.ph_unknown': 'pH has to be tested.',
  'plan.swim.ph': 'pH {ph} is outside what swimmers may be in.',
  'plan.swim.after':
    'After step {step} and a new test that reads as foretold, where the label and the local code say so too.',
  'plan.swim.floor': 'The floor cannot be seen.',
  'plan.swim.turbid': 'The water is not clear: {turbidity} NTU.',
  'plan.swim.combined': 'Combined chlorine is {combined} mg/L.',

  'plan.product.sequestrant': 'sequestrant',
  'plan.product.water': 'water',

  'problem.plan_rules': '{path}: this is not a sound set of plan rules.',
  'problem.plan_too_shallow':
    '{path}: no water can be let out without leaving too little in the shallow end of a liner.',
  'problem.plan_product_barred': '{path}: a case that holds keeps these products out: {products}.',
  'problem.plan_kept_out': '{path}: a rule keeps this step out: {rule}.',
  'problem.plan_index_first':
    '{path}: the index would go over {lsi}; lower pH or alkalinity first. {reached} of the wanted {wanted} can be reached.',
  'problem.plan_ph_first': '{path}: it would take the pH under {least}; the pH has to come up first.',
  'problem.plan_no_stabilizer_spa': '{path}: no stabilizer belongs in a spa.',
  'problem.plan_still_dissolving': '{path}: the last stabilizer still dissolves.',
  'problem.plan_cell_stays_off': '{path}: the cell stays off.',
  'problem.plan_falls': '{path}: free chlorine, {free}, has to fall to {wanted} first; the demand is not known.',
  'problem.plan_least_first':
    '{path}: the target, {target}, is too little for the code or for this much stabilizer; the plan holds {end}.',
  'problem.plan_risen_over':
    '{path}: the steps bring it to {end}, over its most; test again at the end, and renew water then.',
  'problem.plan_not_met': '{path}: the target, {target}, is not met at the end.',
  'problem.plan_limit_under_target': '{path}: the most, {most}, lies under what the plan doses up to, {least}.',
} as const
