const READINGS = {
  ph: 'pH of the sample.',
  temperature: 'Temperature of the pool, not of the bottle.',
  total_alkalinity: 'Alkalinity by titration to pH 4.5.',
  calcium_hardness: 'Calcium alone, without magnesium.',
  salt: 'Salt as the strip or meter reads it, calcium chloride’s included.',
  chloride: 'Chloride where it was measured. Not taken: from salt.',
  cyanuric_acid: 'Cyanuric acid. Its salt counts in the alkalinity reading.',
  borate: 'Borate as boron. Its salt counts in the alkalinity reading.',
  magnesium: 'Magnesium. Not taken counts as none.',
  sulfate: 'Sulfate. Not taken counts as none.',
  free_chlorine: 'Free chlorine in the bottle. Over 10 mg/L the alkalinity reading is not used.',
  alkalinity_bottle:
    'What became of the chlorine in the alkalinity bottle: not counted (plain), counted, or taken away with thiosulfate.',
} as const

function readings<Name extends string>(name: Name) {
  const entries = Object.entries(READINGS).map(([reading, words]) => [`function.${name}.${reading}`, words])
  return Object.fromEntries(entries) as {
    readonly [Reading in keyof typeof READINGS as `function.${Name}.${Reading}`]: string
  }
}

/** Words of the functions of the whole water. */
export const functionsWater = {
  'function.WATER.says':
    'The whole water from its readings: total carbonate, every dissolved form, the saturation indexes and dissolved solids. The third decimal of an index means nothing: from one published set of constants to another it differs by 0.03, in cold water by 0.07.',
  ...readings('WATER'),

  'function.WATER_EQUILIBRIA.says':
    'What the water would come to: with calcite, with air, at a wanted index, in the cold, and at the plates of the cell.',
  ...readings('WATER_EQUILIBRIA'),
  'function.WATER_EQUILIBRIA.target_lsi': 'The wanted index.',
  'function.WATER_EQUILIBRIA.temperature_low': 'The lowest temperature that the water will see.',
  'function.WATER_EQUILIBRIA.air_co2': 'Carbon dioxide in the air over the pool: about 420 outdoors, more indoors.',

  'function.WATER_AFTER.says':
    'The water right after a list of additions, no CO2 exchanged but what the list says. Amounts are of pure substance, mmol per litre of pool water (mol per m³).',
  ...readings('WATER_AFTER'),
  'function.WATER_AFTER.add_hydrochloric_acid': 'Hydrochloric acid.',
  'function.WATER_AFTER.add_sulfuric_acid': 'Sulfuric acid.',
  'function.WATER_AFTER.add_sodium_bisulfate': 'Sodium bisulfate.',
  'function.WATER_AFTER.add_sodium_carbonate': 'Soda ash.',
  'function.WATER_AFTER.add_sodium_bicarbonate': 'Sodium bicarbonate.',
  'function.WATER_AFTER.add_sodium_hydroxide': 'Caustic soda.',
  'function.WATER_AFTER.add_borax_decahydrate': 'Borax with ten waters.',
  'function.WATER_AFTER.add_borax_pentahydrate': 'Borax with five waters.',
  'function.WATER_AFTER.add_boric_acid': 'Boric acid.',
  'function.WATER_AFTER.add_calcium_chloride': 'Calcium chloride.',
  'function.WATER_AFTER.add_calcium_chloride_dihydrate': 'Calcium chloride with two waters.',
  'function.WATER_AFTER.add_cyanuric_acid': 'Cyanuric acid.',
  'function.WATER_AFTER.add_sodium_hypochlorite': 'Sodium hypochlorite, with the salt that comes with it.',
  'function.WATER_AFTER.add_calcium_hypochlorite': 'Calcium hypochlorite.',
  'function.WATER_AFTER.add_dichlor': 'Dichlor.',
  'function.WATER_AFTER.add_trichlor': 'Trichlor.',
  'function.WATER_AFTER.add_sodium_thiosulfate': 'Sodium thiosulfate; it takes chlorine.',
  'function.WATER_AFTER.add_hydrogen_peroxide': 'Hydrogen peroxide; it takes chlorine.',
  'function.WATER_AFTER.add_ascorbic_acid': 'Ascorbic acid; it takes chlorine.',
  'function.WATER_AFTER.add_salt': 'Salt.',
  'function.WATER_AFTER.add_carbon_dioxide': 'Carbon dioxide taken up; negative when it is lost.',
  'function.WATER_AFTER.chlorine_made': 'Chlorine made by a cell out of the water’s own chloride.',
  'function.WATER_AFTER.chlorine_used': 'Chlorine used up. It leaves chloride and acid.',
  'function.WATER_AFTER.evaporated_share': 'Share of the water that left as vapour.',

  'function.WATER_AFTER_DILUTION.says':
    'The water after a share of it was replaced by fill water. Both mix by what they conserve; the mixture keeps the pool’s temperature.',
  ...readings('WATER_AFTER_DILUTION'),
  'function.WATER_AFTER_DILUTION.drain_fraction': 'Share replaced, all rounds together.',
  'function.WATER_AFTER_DILUTION.fill_ph': 'pH of the fill water.',
  'function.WATER_AFTER_DILUTION.fill_temperature': 'Temperature of the fill water when it was measured.',
  'function.WATER_AFTER_DILUTION.fill_total_alkalinity': 'Alkalinity of the fill water.',
  'function.WATER_AFTER_DILUTION.fill_calcium_hardness': 'Calcium of the fill water.',
  'function.WATER_AFTER_DILUTION.fill_salt': 'Salt of the fill water, by its chloride.',
  'function.WATER_AFTER_DILUTION.fill_cyanuric_acid': 'Cyanuric acid of the fill water.',

  'function.BALANCE_DOSE.says':
    'What takes pH and alkalinity to their targets, and the water right after it. Bicarbonate and soda ash are given as pure substance. Where CO2 has to leave, it says that aeration is needed and doses alkalinity only.',
  ...readings('BALANCE_DOSE'),
  'function.BALANCE_DOSE.volume': 'Volume of the water.',
  'function.BALANCE_DOSE.target_ph': 'Wanted pH. Not taken: pH follows.',
  'function.BALANCE_DOSE.target_total_alkalinity':
    'Wanted alkalinity, as the titration would read it. Not taken: alkalinity follows.',
  'function.BALANCE_DOSE.target_borate': 'Wanted borate as boron.',
  'function.BALANCE_DOSE.ph_rise_per_week': 'How much pH climbs in a week when it is left alone.',
  'function.BALANCE_DOSE.air_co2': 'Carbon dioxide in the air over the pool.',
  'function.BALANCE_DOSE.acid_product': 'Acid, by what it is made of.',
  'function.BALANCE_DOSE.acid_strength': 'Strength on its label. No basis, no dose.',
  'function.BALANCE_DOSE.acid_strength_basis':
    'What the strength counts: mass, available chlorine, g/L or degrees Baumé.',
  'function.BALANCE_DOSE.base_product': 'Base, by what it is made of.',
  'function.BALANCE_DOSE.base_strength': 'Strength on its label. No basis, no dose.',
  'function.BALANCE_DOSE.base_strength_basis':
    'What the strength counts: mass, available chlorine, g/L or degrees Baumé.',
  'function.BALANCE_DOSE.borate_product': 'Borate, by what it is made of.',
  'function.BALANCE_DOSE.borate_strength': 'Strength on its label. No basis, no dose.',
  'function.BALANCE_DOSE.borate_strength_basis':
    'What the strength counts: mass, available chlorine, g/L or degrees Baumé.',

  'function.CALCIUM_DOSE.says':
    'Calcium chloride that takes calcium hardness to its target; nothing where there is as much already.',
  'function.CALCIUM_DOSE.calcium_hardness': 'Calcium alone, without magnesium.',
  'function.CALCIUM_DOSE.target_calcium_hardness': 'Wanted calcium hardness.',
  'function.CALCIUM_DOSE.volume': 'Volume of the water.',
  'function.CALCIUM_DOSE.calcium_product':
    'Calcium chloride by its formula. A label of 77 % or 94 % CaCl2 is calcium chloride at that strength, whatever water it holds.',
  'function.CALCIUM_DOSE.calcium_strength': 'Strength on its label. No basis, no dose.',
  'function.CALCIUM_DOSE.calcium_strength_basis': 'What the strength counts.',

  'function.PH_SATURATION.says':
    'The pH at which this calcium and carbonate alkalinity are just saturated with calcite, by Standard Methods 2330 B.',
  'function.PH_SATURATION.ph': 'pH of the water; it splits bicarbonate from carbonate.',
  'function.PH_SATURATION.temperature': 'Temperature of the water.',
  'function.PH_SATURATION.carbonate_alkalinity': 'Carbonate alkalinity, not the whole of the titration.',
  'function.PH_SATURATION.calcium_hardness': 'Calcium alone, without magnesium.',
  'function.PH_SATURATION.ionic_strength': 'Ionic strength from the ions, not from dissolved solids.',

  'function.LANGELIER_INDEX.says':
    'pH less the saturation pH: over 0 the water can lay down calcite, under 0 it can dissolve it. The third decimal means nothing.',
  'function.LANGELIER_INDEX.ph': 'pH of the water.',
  'function.LANGELIER_INDEX.temperature': 'Temperature of the water.',
  'function.LANGELIER_INDEX.carbonate_alkalinity': 'Carbonate alkalinity, not the whole of the titration.',
  'function.LANGELIER_INDEX.calcium_hardness': 'Calcium alone, without magnesium.',
  'function.LANGELIER_INDEX.ionic_strength': 'Ionic strength from the ions, not from dissolved solids.',

  'function.CARBONATE_ALKALINITY.says':
    'The part of a titrated alkalinity that is bicarbonate and carbonate: less what cyanurate, borate and hydroxide give up on the way to pH 4.5. At a known ionic strength, without ion pairs.',
  'function.CARBONATE_ALKALINITY.ph': 'pH of the sample.',
  'function.CARBONATE_ALKALINITY.temperature': 'Temperature of the pool.',
  'function.CARBONATE_ALKALINITY.total_alkalinity': 'Alkalinity by titration to pH 4.5.',
  'function.CARBONATE_ALKALINITY.cyanuric_acid': 'Cyanuric acid.',
  'function.CARBONATE_ALKALINITY.borate': 'Borate as boron.',
  'function.CARBONATE_ALKALINITY.ionic_strength': 'Ionic strength from the ions.',

  'function.RYZNAR_INDEX.says': 'Twice the saturation pH less the pH: about 6 to 7 is balanced, lower lays down scale.',
  'function.RYZNAR_INDEX.ph_saturation': 'Saturation pH.',
  'function.RYZNAR_INDEX.ph': 'pH of the water.',

  'function.SALT_FROM_TDS.says':
    'Salt as what is left of dissolved solids when the other ions are taken off; alkalinity counts as sodium bicarbonate.',
  'function.SALT_FROM_TDS.tds': 'Total dissolved solids.',
  'function.SALT_FROM_TDS.total_alkalinity': 'Alkalinity by titration.',
  'function.SALT_FROM_TDS.calcium_hardness': 'Calcium alone, without magnesium.',
  'function.SALT_FROM_TDS.cyanuric_acid': 'Cyanuric acid. Not taken counts as none.',
  'function.SALT_FROM_TDS.borate': 'Borate as boron. Not taken counts as none.',
  'function.SALT_FROM_TDS.magnesium': 'Magnesium. Not taken counts as none.',
  'function.SALT_FROM_TDS.sulfate': 'Sulfate. Not taken counts as none.',

  'function.PK_CARBONIC_1.says': 'First dissociation of carbonic acid (dissolved CO2 and H2CO3 together), no salt.',
  'function.PK_CARBONIC_1.temperature': 'Temperature of the water.',
  'function.PK_CARBONIC_2.says': 'Second dissociation of carbonic acid, no salt.',
  'function.PK_CARBONIC_2.temperature': 'Temperature of the water.',
  'function.PK_CALCITE.says': 'Solubility product of calcite, no salt.',
  'function.PK_CALCITE.temperature': 'Temperature of the water.',
  'function.PK_WATER.says': 'Ion product of water, no salt.',
  'function.PK_WATER.temperature': 'Temperature of the water.',
} as const
