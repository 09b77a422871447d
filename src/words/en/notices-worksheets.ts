/** `notice.<code>.<name>`: what the checks of the worksheets from stabilizer to generator say. */
export const noticesWorksheets = {
  'notice.closes.cya_to_fc_ratio':
    'Over 45 : 1 the US model health code (2023) closes a public pool. Dilute; more than 10 mg/L of chlorine is no answer.',
  'notice.over_ten.free_chlorine_for_target_hocl':
    'That is over 10 mg/L, more than any code lets people bathe in: less stabilizer is the way.',
  'notice.over_ten.breakpoint_free_chlorine': 'That is over 10 mg/L: the pool is closed until it has fallen.',
  'notice.above_target.cyanuric_acid':
    'There is more cyanuric acid than wanted; nothing takes it out but fresh water (dilution).',
  'notice.above_target.salt':
    'There is more salt than the cell takes; nothing takes it out but fresh water (dilution).',
  'notice.above_target.calcium_hardness':
    'There is more calcium than wanted; nothing takes it out but fresh water (dilution).',
  'notice.above_target.free_chlorine': 'There is more free chlorine than wanted: let it fall.',
  'notice.above_target.borate': 'There is more borate than wanted; nothing takes it out but fresh water (dilution).',
  'notice.no_stabilizer.water_body': 'A spa is kept without stabilizer.',
  'notice.no_sun.setting': 'Indoors there is no sun to keep from the chlorine; stabilizer only holds it back.',
  'notice.young.shell': 'Plaster younger than 28 days: no salt and no cell; the finish maker’s sheet comes first.',
  'notice.wide.water_loss': 'The two salt readings lie closer together than their tests’ errors: the loss is a guess.',
  'notice.wide.cell_output_measured': 'The rise is no larger than the test’s error: measure over a longer night.',
  'notice.liner.drain_depth': 'That leaves less than 30 cm at the shallow end of a vinyl pool: drain less at once.',
  'notice.metals.iron_after_dilution': 'Enough iron to stain: bind it before chlorine goes up.',
  'notice.metals.iron':
    'There is enough iron to stain when chlorine goes up: bind it first, then chlorine in small steps.',
  'notice.metals.copper':
    'There is enough copper to stain when chlorine goes up: bind it first, then chlorine in small steps.',
  'notice.in_days.calcium_hardness': 'Over 50 mg/L of calcium: spread it over days.',
  'notice.in_days.total_alkalinity': 'Over 50 mg/L of alkalinity: spread it over days.',
  'notice.ph_first.target_free_chlorine': 'pH is over 7.8, or chlorine goes over 10 mg/L: bring the pH down first.',
  'notice.label.chlorine_strength':
    'The label’s strength is taken as it stands; stored hypochlorite has lost some. Enter its age, or titrate it.',
  'notice.in_parts.acid_doses': 'Not at once: in the parts below, with a test in between.',
  'notice.clouds.soda_ash_mass':
    'This much at once takes the pH over 7.8 or the index over +0.3 and clouds the water: in parts.',
  'notice.aerate.aeration_needed':
    'The products meet the alkalinity; air has to bring the pH up to what is wanted, over days.',
  'notice.disagree.cell_output':
    'The measured output and the plate’s are over 20 % apart: look at the plates, the salt and the temperature.',
  'notice.over_a_day.generator_hours': 'A day has 24 hours: the cell cannot keep up at this setting.',
  'notice.below_demand.chlorine_made':
    'The cell makes less than the pool uses up: longer hours, a higher setting, or chlorine by hand.',
  'notice.assumed.minimum_cell_flow':
    'The cell’s least flow was not entered; 700 US gal/h (2.65 m³/h) stands in, as is common for a small cell above ground.',
  'notice.low.pump_flow': 'The flow lies outside what the cell takes.',
  'notice.cold.temperature': 'The water is colder than the cell takes.',
  'notice.low.salt':
    'The salt reads under the cell’s window. A second, fresh reading first; cold water, scale, worn plates and low flow also read as low salt.',
  'notice.high.salt': 'The salt reads over the cell’s window. A second, fresh reading first; then dilution.',
  'notice.unknown.salt': 'Salt, or the cell’s window for it, is not known; it was not looked at here.',
  'notice.high.ph': 'The pH is over 7.8: scale settles on the plates.',
  'notice.scale.cell': 'The index of the pool is over +0.3, and about one higher at the plates: scale.',
  'notice.symptom.low_flow':
    'Backwash or clean the filter, empty the baskets, open the valves, raise the level; then the flow switch.',
  'notice.symptom.no_flow': 'Pump, valves, level; the cell must stay off until water moves.',
  'notice.symptom.low_salt':
    'Not salt yet: read it by another test. Cold water, scale, worn plates, low flow, air and age also read as low salt.',
  'notice.symptom.high_salt':
    'Read it by another test; where that agrees, dilute. Warm water reads high on some cells.',
  'notice.symptom.high_current':
    'Much salt or warm water raises the current: read the salt by another test before anything else.',
  'notice.symptom.cold_water': 'The cell rests in the cold by design; chlorine goes in by hand meanwhile.',
  'notice.symptom.air': 'A leak on the suction side or a low level: air stops the flow switch and the plates.',
  'notice.symptom.reversed_flow':
    'Turn the cell so that its arrow follows the water; the flow switch sits before the plates.',
  'notice.symptom.scale': 'Look at the index at the cell, then clean the plates as below.',
  'notice.symptom.little_chlorine':
    'More is used up than made, or the plates are worn: hours first, then a night with the cell on.',
} as const
