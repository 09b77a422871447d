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
} as const
