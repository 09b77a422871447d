/** Cases of the pool and its equipment that are not routine: `case.<case>.<sentence>`. */
export const casesPool = {
  'case.first_fill.label': 'First fill, or water from a well',
  'case.first_fill.help':
    'New water is tested for metals before chlorine meets it, and the volume counts the water, not the wall.',
  'case.first_fill.because': 'The pool was filled for the first time.',
  'case.first_fill.metals_first': 'No chlorine until iron and copper were tested.',
  'case.first_fill.depth':
    'Measure the depth of the water, not the height of the wall, and let the pool’s page work out the volume.',
  'case.first_fill.mix': 'Let the pump mix the new water for a day.',
  'case.first_fill.metals': 'Test for iron, copper and manganese.',
  'case.first_fill.seasons':
    'Look at the index at today’s temperature and at the coldest of the season: aim so that neither is out of range.',
  'case.first_fill.held': 'Iron is under what stains.',
  'case.first_fill.not_large': 'No large dose of chlorine into water that may hold metal.',
  'case.cell_says_low.label': 'The cell says low salt, another test says enough',
  'case.cell_says_low.help':
    'Many things read as low salt. No salt goes in before a second, fresh reading; salt cannot be taken out again.',
  'case.cell_says_low.because': 'The cell reads under its window, and the water was tested inside it.',
  'case.cell_says_low.fresh': 'Take a fresh sample and read the salt by a second method.',
  'case.cell_says_low.look':
    'Look for cold water, scale on the plates, low flow, air in the pipe, reversed flow and loose wiring.',
  'case.cell_says_low.keep':
    'If both tests agree and the cell does not, keep the difference as this cell’s correction in the notebook’s note.',
  'case.cell_says_low.agree': 'The tests agree within what calls for another one.',
  'case.cell_says_low.not_salt': 'No salt on the word of the cell alone.',
  'case.over_salted.label': 'Too much salt',
  'case.over_salted.help':
    'Only new water takes salt down: to the top of the cell’s window less the error of the test.',
  'case.over_salted.because': 'Salt is over the cell’s window by more than the test’s error.',
  'case.over_salted.cell': 'Cell off. The water to renew is shown.',
  'case.over_salted.inside': 'Salt is inside the cell’s window.',
  'case.over_salted.not_all': 'Do not empty the pool.',
  'case.under_salted.label': 'Too little salt',
  'case.under_salted.help':
    'Salt goes up to the middle of the cell’s window, in two parts with a second reading between.',
  'case.under_salted.because': 'Salt is under the cell’s window by more than the test’s error.',
  'case.under_salted.leak':
    'Ask where the salt went: it leaves with water only. Two salt readings some days apart tell a leak.',
  'case.under_salted.inside': 'Salt is inside the cell’s window.',
  'case.spa.label': 'A spa',
  'case.spa.help': 'Little water, hot and full of people: small doses, no stabilizer, and new water often.',
  'case.spa.because': 'The water body is a spa.',
  'case.spa.too_hot': 'Over 40 °C nobody goes in.',
  'case.spa.measure': 'Doses are in grams and millilitres: weigh and measure them, never guess by the cap.',
  'case.spa.model': 'Hypochlorous acid is not worked out over 35 °C: go by free chlorine and the code.',
  'case.spa.renew': 'Renew the water often; test before each use.',
  'case.spa.warm': 'The water is 40 °C or less.',
  'case.spa.not_stabilizer': 'No stabilizer, and no chlorine that carries it.',
  'case.plaster_start_up.label': 'Plaster in its first 28 days',
  'case.plaster_start_up.help':
    'Fresh plaster is pitted by salt and by tablets. The finish maker’s own sheet comes first.',
  'case.plaster_start_up.because': 'The plaster is younger than the days that it cures.',
  'case.plaster_start_up.early_stabilizer':
    'No stabilizer before day 4, and then dissolved, never in grains on the floor.',
  'case.plaster_start_up.sheet': 'Read the finish maker’s sheet: where it differs, it holds.',
  'case.plaster_start_up.brush': 'Brush the whole shell each day, and test the pH each day.',
  'case.plaster_start_up.heater':
    'Heater off, no cleaner on wheels, no floating feeder, nobody in with anything sharp.',
  'case.plaster_start_up.cured': 'The plaster has had its days.',
  'case.plaster_start_up.not_salt': 'No salt, no cell, no tablets before then.',
  'case.leak.label': 'A leak that loses salt',
  'case.leak.help':
    'Evaporation takes no salt, so a fall in salt tells how much water left. Two readings tell it only roughly.',
  'case.leak.because': 'Salt fell by more than the error of both tests.',
  'case.leak.loss': 'This much water left with its salt, and the test’s error alone leaves it between these.',
  'case.leak.subtract': 'Take off what backwash and splash took; what remains is the leak.',
  'case.leak.bucket':
    'Stand a bucket of pool water on a step for a day, levels marked inside and out, pump on and then off. If the pool falls more than the bucket, it leaks.',
  'case.leak.not_salt_first': 'Do not keep adding salt: find where the water goes.',
  'case.cell_scale.label': 'Scale in the cell',
  'case.cell_scale.help':
    'At the plates the pH is about one higher than in the pool: a pool in balance can lay down scale there.',
  'case.cell_scale.because': 'Scale was seen in the cell.',
  'case.cell_scale.index': 'This is the index in the pool, and at the plates.',
  'case.cell_scale.open':
    'Pump and cell off at the breaker, unplug, close the valves, open the air relief until the pressure is gone, then take the cell out.',
  'case.cell_scale.rinse': 'Rinse it with water: what is left of chlorine makes gas with acid.',
  'case.cell_scale.soak':
    'Soak the plates only in 5 % kitchen vinegar for two to three hours, outdoors, connector dry, no metal tool.',
  'case.cell_scale.refit': 'Rinse, refit, pump on, look for leaks, then power.',
  'case.cell_scale.causes':
    'Look whether the cell reverses its current as it should; scale that vinegar leaves may be of phosphate.',
  'case.cell_scale.no_scale': 'The pool’s index is at most what the cell may run at.',
  'case.cell_scale.not_stronger': 'No stronger acid, and nothing that scrapes.',
  'case.closing.label': 'Closing for the winter',
  'case.closing.help':
    'Cold water dissolves lime: the index is looked at for the winter’s temperature, and the cell comes out of the frost.',
  'case.closing.because': 'The pool is to be closed.',
  'case.closing.cold': 'This is the index now, and in the coldest water if the pH stays.',
  'case.closing.clean': 'Net, brush and clean the filter; hold the chlorine at its target until the water is closed.',
  'case.closing.cell': 'Cell off at the breaker; take it out, or drain it, and keep it from frost.',
  'case.closing.lines':
    'Drain pump, filter and heater; blow the lines out and plug them. Leave most of the water in the pool.',
  'case.closing.cold_index': 'The index in the coldest water is not under its range.',
  'case.closing.not_salt': 'Salt at 3200 mg/L does not keep water from freezing, so add none for it.',
  'case.closing.not_empty': 'Do not empty the pool.',
  'case.opening.label': 'Opening after the winter',
  'case.opening.help': 'Winter water lies in layers: a sample of it tells nothing until it was mixed for a day.',
  'case.opening.because': 'The pool was opened and not yet mixed for a day.',
  'case.opening.fill': 'Cover off, net out, fill up to the skimmer, refit the cell and leave it off.',
  'case.opening.pump': 'Look for leaks and air, then pump on.',
  'case.opening.mix': 'Let it mix for a day.',
  'case.opening.sample':
    'Only then take the sample, test everything, and say at the pool that nothing is out of the ordinary: the plan is then made of that.',
  'case.opening.not_dose': 'No dose by a sample of unmixed water.',
  'case.rain_overflow.label': 'Heavy rain',
  'case.rain_overflow.help':
    'Rain takes out what it makes overflow, if it mixes. The share only tells how much may have gone; the test tells what did.',
  'case.rain_overflow.because': 'Rain made the pool overflow.',
  'case.rain_overflow.share': 'If it mixed, the rain took out this share of everything in the water.',
  'case.rain_overflow.level': 'Let the level down to the skimmer’s middle; net out, empty the baskets.',
  'case.rain_overflow.mix': 'Pump on for a day.',
  'case.rain_overflow.test': 'Test everything again, then say at the pool that nothing is out of the ordinary.',
  'case.rain_overflow.not_from_rain': 'Do not dose from the rainfall.',
  'case.volume_unknown.label': 'The volume is not well known',
  'case.volume_unknown.help':
    'What cannot be taken out again is dosed for the least water that the pool may hold, and the rest by a new reading.',
  'case.volume_unknown.because': 'The volume may be off by more than 10 %.',
  'case.volume_unknown.span': 'The pool holds between these.',
  'case.volume_unknown.measure':
    'Measure it when you can: a water meter while filling tells it best, a known salt addition and the rise that it made roughly.',
  'case.volume_unknown.known': 'The volume is known within 10 %.',
  'case.volume_unknown.not_whole': 'Do not give the whole dose of salt, stabilizer, calcium or borate at once.',
} as const
