/** Cases of the water that are not routine: `case.<case>.<sentence>`. */
export const casesWater = {
  'case.green_water.label': 'Green water',
  'case.green_water.help':
    'Algae have the better of the chlorine. Dirt comes out first, then chlorine is held until the night takes next to none of it.',
  'case.green_water.because': 'The water looks green.',
  'case.green_water.net': 'Net out what lies and floats, and empty the baskets.',
  'case.green_water.filter':
    'Clean the filter; leave the pump on day and night, and clean it again whenever the flow falls.',
  'case.green_water.brush': 'Brush the walls, the steps and behind the ladder. Pump on for a day.',
  'case.green_water.hold':
    'At dusk test the free chlorine and bring it back to the level above; again two or three times a day until the list below is met. The cell is no help here: what it makes in a day is shown.',
  'case.green_water.night':
    'When the water is clear, read the free chlorine at dusk and again before sunrise, the cell off between.',
  'case.green_water.clear': 'The water is as clear as the code wants it.',
  'case.green_water.combined': 'Combined chlorine is within the code’s limit.',
  'case.green_water.overnight': 'A night takes no more chlorine than twice what the test can tell.',
  'case.green_water.not_stabilised': 'No dichlor and no trichlor: their stabilizer stays.',
  'case.green_water.not_cell': 'Do not wait for the cell to clear it.',
  'case.green_water.not_swim': 'Nobody swims until the floor can be seen and the list is met.',
  'case.stabilizer_high.label': 'Stabilizer built up by tablets',
  'case.stabilizer_high.help': 'Tablets and dichlor leave their stabilizer. Nothing takes it out but new water.',
  'case.stabilizer_high.because': 'Stabilizer is over the most that this plan answers with chlorine.',
  'case.stabilizer_high.dilute_test':
    'A test that stands at its top tells nothing: dilute the sample and test again before any water is let out.',
  'case.stabilizer_high.no_tablets': 'Take the tablets out and put no dichlor in.',
  'case.stabilizer_high.renew': 'Renew this much of the water, in rounds.',
  'case.stabilizer_high.down': 'Stabilizer is at most what the plan answers with chlorine.',
  'case.stabilizer_high.ratio': 'It stands at 20 : 1 of the free chlorine or below.',
  'case.stabilizer_high.not_chlorine': 'Do not answer with more than 10 mg/L of chlorine.',
  'case.ph_rises.label': 'pH rises every week',
  'case.ph_rises.help':
    'Carbon dioxide leaves water of high alkalinity until the pH stands against the air. Less alkalinity, less air and less cell slow it; chasing a low pH feeds it.',
  'case.ph_rises.because': 'The pH rises by 0.2 or more a week.',
  'case.ph_rises.air': 'This is where the air takes the pH, and this the acid that it costs a week.',
  'case.ph_rises.less_air': 'Turn returns down, fountains and spillovers off, and cover the pool when nobody is in it.',
  'case.ph_rises.less_cell': 'Lower the cell’s setting: with the right stabilizer it has fewer hours to run.',
  'case.ph_rises.borate': 'Borate slows what is left of it, where the law allows it.',
  'case.ph_rises.slow': 'The pH rises by less than 0.2 a week.',
  'case.ph_rises.not_chase': 'Never chase a pH of 7.2: each drop of acid lets it rise faster.',
  'case.alkaline_fill.label': 'Alkaline fill water',
  'case.alkaline_fill.help':
    'What the make-up water brings in each week is the real load; the pool is corrected for that, a little at a time.',
  'case.alkaline_fill.because': 'The fill water is more alkaline than the range for this pool.',
  'case.alkaline_fill.load': 'This is what make-up brings in a week. Backwash and splash come on top of it.',
  'case.alkaline_fill.spread': 'Give the acid for it over the week, each dose by a test, and let air in between.',
  'case.alkaline_fill.cover': 'A cover keeps most of the make-up out.',
  'case.alkaline_fill.holds': 'Alkalinity stays in range from one week to the next.',
  'case.alkaline_fill.not_at_once': 'Do not take a month’s load out in one dose.',
  'case.combined_indoors.label': 'Combined chlorine indoors',
  'case.combined_indoors.help': 'Air and new water come before chlorine. Ten times the reading is never dosed.',
  'case.combined_indoors.because': 'Combined chlorine is over the limit in a pool indoors.',
  'case.combined_indoors.test': 'Test free and total chlorine again: monopersulfate reads as combined.',
  'case.combined_indoors.air': 'Open doors and fans, and bring in outside air.',
  'case.combined_indoors.renew': 'Renew water: 30 litres for each bather of the day is what a guideline asks.',
  'case.combined_indoors.dose': 'If it is still there, one closed treatment by stoichiometry; the dose is shown.',
  'case.combined_indoors.dilute': 'If it did not fall, renew more water. Do not dose again.',
  'case.combined_indoors.low': 'Combined chlorine is within the limit.',
  'case.combined_indoors.not_ten': 'Never ten times the combined chlorine.',
  'case.metal_stain.label': 'A stain of metal',
  'case.metal_stain.help':
    'The source comes first. Then chlorine falls, ascorbic acid lifts the stain, and a sequestrant holds the metal before chlorine returns.',
  'case.metal_stain.because': 'Stains were seen on the shell, or the water is brown.',
  'case.metal_stain.source':
    'Find where the metal comes from before anything is lifted: fill water, a heater’s copper, an algaecide.',
  'case.metal_stain.test': 'Test the water and the fill water for iron and copper.',
  'case.metal_stain.spot':
    'Hold a vitamin C tablet on the stain for half a minute: a stain of iron pales, one of leaves does not.',
  'case.metal_stain.fall': 'Let the chlorine fall, cell off. What is left takes this much of the neutralizer first.',
  'case.metal_stain.lift': 'Ascorbic acid by its label along the stained walls; it lowers the pH.',
  'case.metal_stain.hold':
    'A sequestrant by its label, and the filter cleaned, before any chlorine returns; then chlorine in small steps.',
  'case.metal_stain.iron_low': 'Iron is under what stains.',
  'case.metal_stain.not_chlorine': 'No large dose of chlorine: it lays the metal down again.',
  'case.faecal_accident.label': 'A faecal accident in a public pool',
  'case.faecal_accident.help':
    'The code and the health department come first. Times come from published tables only; none is worked out from hypochlorous acid where there is stabilizer.',
  'case.faecal_accident.because': 'Stool or diarrhoea got into the water.',
  'case.faecal_accident.dilute_first':
    'Stabilizer over 15 mg/L, or not known: renew water first. No published time holds above it.',
  'case.faecal_accident.conditions': 'The tables hold at pH 7.5 or less and 25 °C or more.',
  'case.faecal_accident.close': 'Everybody out. Close every pool on the same filter.',
  'case.faecal_accident.call':
    'The local code and the health department say what is done; follow them where they differ from this.',
  'case.faecal_accident.remove':
    'Lift out what can be lifted with a net or scoop, never with the cleaner; disinfect the tool.',
  'case.faecal_accident.condition':
    'Bring the pH to 7.5 or less and the water to 25 °C or more, and chlorine without stabilizer to the table’s level at every point.',
  'case.faecal_accident.hold': 'Hold it for this long from when all points read it. Filter on, water moving.',
  'case.faecal_accident.after':
    'Backwash to waste, let the chlorine fall to what the code allows, test, and open only as the code says.',
  'case.faecal_accident.table': 'The published table has a time for this water.',
  'case.faecal_accident.not_hocl': 'No time of your own worked out from hypochlorous acid.',
  'case.faecal_accident.not_between': 'No time between two rows of the table.',
  'case.borate.label': 'Borate',
  'case.borate.help':
    'Borate is counted as boron, whatever it is bought as. Borax raises the pH and goes with acid; boric acid does not.',
  'case.borate.because': 'A target for borate is given.',
  'case.borate.law': 'Look up whether the law allows borate in pools where you are.',
  'case.borate.as_boron': 'Read the test’s label: 50 mg/L as boron is 286 mg/L as boric acid.',
  'case.borate.there': 'Borate is within the test’s error of its target.',
  'case.borate.not_twice': 'Borate stays: it leaves with water only, so no second dose without a test.',
  'case.old_bottle.label': 'An old or a warm bottle',
  'case.old_bottle.help':
    'Chlorine leaves a bottle within hours, and a bottle takes the temperature of the car: the pool’s own counts.',
  'case.old_bottle.because': 'The bottle is over two hours old, or another temperature than the pool.',
  'case.old_bottle.pool_temperature': 'Enter the pool’s own temperature, not the bottle’s.',
  'case.old_bottle.at_the_pool': 'Test chlorine and pH at the pool.',
  'case.old_bottle.fresh': 'The sample is at most two hours old.',
  'case.old_bottle.not_chlorine': 'No dose of chlorine by an old bottle.',
} as const
