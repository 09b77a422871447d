/** Words of the functions of chlorine, its cell, dilution and evaporation. */
export const functionsChlorine = {
  'function.CHLORINE.says':
    'How free chlorine shares itself between HOCl, OCl⁻ and stabilizer, by a published model at zero ionic strength. The 2019 model gives no verdict outside 5 to 35 °C; the 1974 model is always at 25 °C.',
  'function.CHLORINE.ph': 'pH. The models are closest from 6.5 to 8.5.',
  'function.CHLORINE.temperature': 'Temperature of the pool’s water.',
  'function.CHLORINE.free_chlorine': 'Free chlorine as the test reads it, with what is bound to stabilizer.',
  'function.CHLORINE.cyanuric_acid': 'Cyanuric acid (stabilizer).',
  'function.CHLORINE.hocl_model': 'The published model to use.',

  'function.FREE_CHLORINE_FOR_HOCL.says':
    'Free chlorine at which HOCl is as wanted, by the same model that gives HOCl.',
  'function.FREE_CHLORINE_FOR_HOCL.target_hocl': 'HOCl that is wanted.',
  'function.FREE_CHLORINE_FOR_HOCL.ph': 'pH. The models are closest from 6.5 to 8.5.',
  'function.FREE_CHLORINE_FOR_HOCL.temperature': 'Temperature of the pool’s water.',
  'function.FREE_CHLORINE_FOR_HOCL.cyanuric_acid': 'Cyanuric acid (stabilizer).',
  'function.FREE_CHLORINE_FOR_HOCL.hocl_model': 'The published model to use.',
  'function.FREE_CHLORINE_FOR_HOCL.target_hocl_model':
    'The model by which the wanted HOCl was derived. Another than the one in use is refused: they differ by a third and more. Not given: the one in use.',

  'function.CYA_TO_FC_RATIO.says': 'Parts of cyanuric acid to one of free chlorine.',
  'function.CYA_TO_FC_RATIO.cyanuric_acid': 'Cyanuric acid (stabilizer).',
  'function.CYA_TO_FC_RATIO.free_chlorine': 'Free chlorine; without any there is no ratio.',

  'function.FC_TO_CYA_SHARE.says': 'Free chlorine as a share of cyanuric acid.',
  'function.FC_TO_CYA_SHARE.free_chlorine': 'Free chlorine.',
  'function.FC_TO_CYA_SHARE.cyanuric_acid': 'Cyanuric acid (stabilizer); without any there is no share.',

  'function.CYANURIC_ACID_MASS.says':
    'Stabilizer to add for a wanted concentration of cyanuric acid; 0 where there is enough.',
  'function.CYANURIC_ACID_MASS.volume': 'Volume of the water.',
  'function.CYANURIC_ACID_MASS.cyanuric_acid': 'Cyanuric acid in the water now.',
  'function.CYANURIC_ACID_MASS.target_cyanuric_acid': 'Cyanuric acid that is wanted.',
  'function.CYANURIC_ACID_MASS.stabilizer_purity': 'Share of the product that is cyanuric acid. Not given: all of it.',

  'function.BREAKPOINT_DOSE.says':
    'Chlorine that combined chlorine and ammonia use up to the breakpoint, by stoichiometry. Other things in the water use up more.',
  'function.BREAKPOINT_DOSE.combined_chlorine': 'Combined chlorine: total less free.',
  'function.BREAKPOINT_DOSE.ammonia': 'Ammonia, as nitrogen.',

  'function.BATHER_DEMAND.says': 'Chlorine that bathers use up, spread over the pool.',
  'function.BATHER_DEMAND.bathers': 'How many bathers.',
  'function.BATHER_DEMAND.volume': 'Volume of the water.',
  'function.BATHER_DEMAND.chlorine_per_bather':
    'Chlorine that one uses up: 4.12 g was found in a lightly used pool, 5.5 g as the median of a field study.',

  'function.CHLORINE_LEFT_IN_SUN.says':
    'Free chlorine left after some hours of clear summer noon sun at the surface, nothing else using it up. How fast chlorine held by stabilizer goes is common practice, not a published rate, so with stabilizer this is an estimate. Deeper water loses less.',
  'function.CHLORINE_LEFT_IN_SUN.ph': 'pH: OCl⁻ goes six times as fast as HOCl.',
  'function.CHLORINE_LEFT_IN_SUN.temperature': 'Temperature of the pool’s water.',
  'function.CHLORINE_LEFT_IN_SUN.free_chlorine': 'Free chlorine at the start.',
  'function.CHLORINE_LEFT_IN_SUN.cyanuric_acid': 'Cyanuric acid (stabilizer).',
  'function.CHLORINE_LEFT_IN_SUN.hours': 'Hours of such sun.',
  'function.CHLORINE_LEFT_IN_SUN.hocl_model': 'The published model to use.',

  'function.CONTACT_TIME.says':
    'Hours for which free chlorine has to be held against an organism, read from published tables for public pools. The health department and the code come first. No time is worked out from HOCl.',
  'function.CONTACT_TIME.organism': 'The organism: Cryptosporidium after diarrhoea, Giardia after a formed stool.',
  'function.CONTACT_TIME.free_chlorine': 'Free chlorine that is held everywhere in the pool.',
  'function.CONTACT_TIME.cyanuric_acid': 'Cyanuric acid. Over 15 mg/L there is no published time: dilute first.',
  'function.CONTACT_TIME.ph': 'pH; the tables hold at 7.5 or less.',
  'function.CONTACT_TIME.temperature': 'Temperature of the pool’s water; the tables hold at 25 °C or more.',

  'function.CHLORINE_PRODUCT_DOSE.says':
    'How much of a chlorine product brings free chlorine to what is wanted, and what it leaves in the water once its chlorine is used up.',
  'function.CHLORINE_PRODUCT_DOSE.volume': 'Volume of the water.',
  'function.CHLORINE_PRODUCT_DOSE.free_chlorine': 'Free chlorine now.',
  'function.CHLORINE_PRODUCT_DOSE.target_free_chlorine': 'Free chlorine that is wanted.',
  'function.CHLORINE_PRODUCT_DOSE.chlorine_product': 'The product.',
  'function.CHLORINE_PRODUCT_DOSE.chlorine_strength': 'Strength on its label, or as titrated.',
  'function.CHLORINE_PRODUCT_DOSE.chlorine_strength_basis':
    'What the strength counts: per cent by mass, available chlorine, trade per cent, or g/L. Without it there is no dose.',

  'function.HYPOCHLORITE_LEFT.says':
    'Share of its strength that a stored hypochlorite solution has left, in the dark at about 25 °C; warmer goes three to four times as fast for each 10 °C. A dry product keeps its own. Not a fact about one canister: a titration is.',
  'function.HYPOCHLORITE_LEFT.chlorine_product': 'The product.',
  'function.HYPOCHLORITE_LEFT.chlorine_strength': 'Its strength when it was made, by its label.',
  'function.HYPOCHLORITE_LEFT.chlorine_strength_basis': 'What the label’s strength counts.',
  'function.HYPOCHLORITE_LEFT.product_age':
    'Days since it was made; after a year only a titration tells. Not given: as fresh.',

  'function.CYANURIC_ACID_WITH_CHLORINE.says':
    'Cyanuric acid that comes along with chlorine from a stabilized product.',
  'function.CYANURIC_ACID_WITH_CHLORINE.chlorine_product': 'The product.',
  'function.CYANURIC_ACID_WITH_CHLORINE.chlorine_added': 'Chlorine that it brings.',

  'function.NEUTRALIZER_MASS.says':
    'How much of a product takes free chlorine down to what is wanted. Give half, test, and repeat: the reaction may need less.',
  'function.NEUTRALIZER_MASS.volume': 'Volume of the water.',
  'function.NEUTRALIZER_MASS.free_chlorine': 'Free chlorine now.',
  'function.NEUTRALIZER_MASS.target_free_chlorine': 'Free chlorine that is wanted.',
  'function.NEUTRALIZER_MASS.neutralizer': 'The product.',
  'function.NEUTRALIZER_MASS.neutralizer_strength': 'Strength on its label.',
  'function.NEUTRALIZER_MASS.neutralizer_strength_basis': 'What the strength counts. Without it there is no dose.',

  'function.CELL_OUTPUT_FROM_CURRENT.says': 'Chlorine that a cell makes an hour, from its current.',
  'function.CELL_OUTPUT_FROM_CURRENT.cell_current': 'Current through the cell.',
  'function.CELL_OUTPUT_FROM_CURRENT.cell_pairs':
    'Gaps between plates that the same current passes one after the other.',
  'function.CELL_OUTPUT_FROM_CURRENT.current_efficiency':
    'Share of the current that makes chlorine that stays: usually 0.6 to 0.95, less with little salt, cold water or worn plates.',

  'function.CELL_OUTPUT_MEASURED.says':
    'A cell’s output at full setting, from free chlorine at dusk and at dawn with the cell on all night. What the water used up is not in it, so the cell makes at least this.',
  'function.CELL_OUTPUT_MEASURED.volume': 'Volume of the water.',
  'function.CELL_OUTPUT_MEASURED.free_chlorine_dusk': 'Free chlorine after sunset.',
  'function.CELL_OUTPUT_MEASURED.free_chlorine_dawn': 'Free chlorine before sunrise.',
  'function.CELL_OUTPUT_MEASURED.dark_hours': 'Hours between the two readings.',
  'function.CELL_OUTPUT_MEASURED.cell_setting': 'Setting of the cell that night.',

  'function.CELL_HOURS.says': 'Hours a day that the cell has to run. More than 24 means that it cannot keep up.',
  'function.CELL_HOURS.chlorine_demand': 'Free chlorine that the pool uses up a day.',
  'function.CELL_HOURS.volume': 'Volume of the water.',
  'function.CELL_HOURS.cell_output': 'Output of the cell at full setting.',
  'function.CELL_HOURS.cell_setting': 'Setting of the cell.',

  'function.CHLORINE_MADE.says': 'Chlorine that the cell adds to the pool a day.',
  'function.CHLORINE_MADE.cell_output': 'Output of the cell at full setting.',
  'function.CHLORINE_MADE.cell_setting': 'Setting of the cell.',
  'function.CHLORINE_MADE.pump_hours': 'Hours a day that pump and cell run.',
  'function.CHLORINE_MADE.volume': 'Volume of the water.',

  'function.CELL_ALKALINITY.says':
    'What making and using up chlorine does to alkalinity: the one undoes the other. A salt pool’s pH climbs because carbon dioxide leaves the water.',
  'function.CELL_ALKALINITY.chlorine_made': 'Chlorine that the cell made.',
  'function.CELL_ALKALINITY.chlorine_used': 'Chlorine that was used up.',

  'function.FLOW_MARGIN.says': 'How far the flow lies inside what the cell takes; under zero it lies outside.',
  'function.FLOW_MARGIN.pump_flow': 'Flow as measured.',
  'function.FLOW_MARGIN.minimum_cell_flow': 'Least flow that the cell takes.',
  'function.FLOW_MARGIN.maximum_cell_flow': 'Most flow that the cell takes. Not given: only the least counts.',

  'function.CELL_MAY_RUN.says':
    'Whether flow and temperature let the cell run. Salt, pH and index are checks of their own.',
  'function.CELL_MAY_RUN.pump_flow': 'Flow as measured.',
  'function.CELL_MAY_RUN.minimum_cell_flow': 'Least flow that the cell takes.',
  'function.CELL_MAY_RUN.maximum_cell_flow': 'Most flow that the cell takes. Not given: only the least counts.',
  'function.CELL_MAY_RUN.temperature': 'Temperature of the pool’s water.',
  'function.CELL_MAY_RUN.cell_cold_limit': 'Temperature under which the cell must not run.',

  'function.DILUTION.says':
    'The single drain and refill that brings every limit that is given within reach, and which of them asks for it.',
  'function.DILUTION.salt': 'Salt in the water now.',
  'function.DILUTION.fill_salt': 'Salt in the fill water.',
  'function.DILUTION.most_salt': 'Salt at most. Not given: salt sets no limit.',
  'function.DILUTION.cyanuric_acid': 'Cyanuric acid in the water now.',
  'function.DILUTION.fill_cyanuric_acid': 'Cyanuric acid in the fill water.',
  'function.DILUTION.most_cyanuric_acid': 'Cyanuric acid at most. Not given: it sets no limit.',
  'function.DILUTION.calcium_hardness': 'Calcium hardness now.',
  'function.DILUTION.fill_calcium_hardness': 'Calcium hardness of the fill water.',
  'function.DILUTION.most_calcium_hardness': 'Calcium hardness at most. Not given: it sets no limit.',
  'function.DILUTION.total_alkalinity': 'Total alkalinity now.',
  'function.DILUTION.fill_total_alkalinity': 'Total alkalinity of the fill water.',
  'function.DILUTION.most_total_alkalinity': 'Total alkalinity at most. Not given: it sets no limit.',
  'function.DILUTION.tds': 'Dissolved solids now.',
  'function.DILUTION.fill_tds': 'Dissolved solids of the fill water.',
  'function.DILUTION.most_tds': 'Dissolved solids at most. Not given: they set no limit.',

  'function.DILUTION_FRACTION.says': 'Share of the water to drain and replace so that one quantity falls to its limit.',
  'function.DILUTION_FRACTION.now': 'What it reads now.',
  'function.DILUTION_FRACTION.most': 'What it may read at most.',
  'function.DILUTION_FRACTION.fill': 'What the fill water reads.',

  'function.DILUTION_ROUNDS.says': 'Drains and refills that replace as much as one large drain would.',
  'function.DILUTION_ROUNDS.drain_fraction': 'Share of the water that a single drain would take.',
  'function.DILUTION_ROUNDS.largest_single_drain': 'Share that may be drained at once.',

  'function.ROUND_FRACTION.says': 'Share to drain in each of several equal rounds.',
  'function.ROUND_FRACTION.drain_fraction': 'Share of the water that a single drain would take.',
  'function.ROUND_FRACTION.drain_rounds': 'Number of rounds.',

  'function.CONCENTRATION_AFTER_DILUTION.says': 'What a quantity reads after part of the water was replaced.',
  'function.CONCENTRATION_AFTER_DILUTION.now': 'What it reads now.',
  'function.CONCENTRATION_AFTER_DILUTION.fill': 'What the fill water reads.',
  'function.CONCENTRATION_AFTER_DILUTION.drain_fraction': 'Share of the water that is replaced.',

  'function.CONTINUOUS_EXCHANGE.says':
    'Water to run in while as much overflows, for the effect of one drain and refill.',
  'function.CONTINUOUS_EXCHANGE.drain_fraction': 'Share of the water that a single drain would take.',
  'function.CONTINUOUS_EXCHANGE.volume': 'Volume of the water.',

  'function.DRAIN_DEPTH.says': 'How far down the wall the level falls in one round.',
  'function.DRAIN_DEPTH.round_fraction': 'Share of the water drained in one round.',
  'function.DRAIN_DEPTH.water_depth_mean': 'Mean depth of the water.',
  'function.DRAIN_DEPTH.depth_shallow': 'Depth of water at the shallow end; below its floor this is not worked out.',

  'function.EVAPORATION.says':
    'Water that evaporates a day from a pool in use. Undisturbed water was measured at 74 % of it, a crowded pool at 126 %.',
  'function.EVAPORATION.surface_area': 'Area of the water’s surface.',
  'function.EVAPORATION.temperature': 'Temperature of the pool’s water.',
  'function.EVAPORATION.air_temperature': 'Temperature of the air over it.',
  'function.EVAPORATION.relative_humidity': 'Relative humidity of the air, 0 to 1.',
  'function.EVAPORATION.wind_speed': 'Wind over the surface.',
  'function.MAKE_UP_RISE.says':
    'How much the water that makes up for evaporation raises what it carries: evaporation takes none of it out.',
  'function.MAKE_UP_RISE.volume': 'Volume of the pool.',
  'function.MAKE_UP_RISE.evaporation': 'Water that the air takes a day.',
  'function.MAKE_UP_RISE.days': 'Over how many days.',
  'function.MAKE_UP_RISE.fill_total_alkalinity': 'What the fill water carries.',
} as const
