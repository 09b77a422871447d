/** Words of the functions that a step plan looks ahead with. */
export const functionsPlan = {
  'function.WATER_AFTER_STEP.says':
    'The water after one step of a plan: one product by the strength on its label, then chlorine used up. A reading that was not taken makes only those results fail that need it.',
  'function.WATER_AFTER_STEP.ph': 'pH of the water before the step.',
  'function.WATER_AFTER_STEP.temperature': 'Temperature of the pool.',
  'function.WATER_AFTER_STEP.total_alkalinity': 'Alkalinity by titration to pH 4.5.',
  'function.WATER_AFTER_STEP.calcium_hardness': 'Calcium alone, without magnesium.',
  'function.WATER_AFTER_STEP.salt': 'Salt as the strip or meter reads it, calcium chloride’s included.',
  'function.WATER_AFTER_STEP.chloride': 'Chloride where it was measured. Not taken: from salt.',
  'function.WATER_AFTER_STEP.cyanuric_acid': 'Cyanuric acid.',
  'function.WATER_AFTER_STEP.borate': 'Borate as boron.',
  'function.WATER_AFTER_STEP.magnesium': 'Magnesium. Not taken counts as none.',
  'function.WATER_AFTER_STEP.sulfate': 'Sulfate. Not taken counts as none.',
  'function.WATER_AFTER_STEP.free_chlorine':
    'Free chlorine. Over 10 mg/L the alkalinity reading is not used, and pH is not foretold.',
  'function.WATER_AFTER_STEP.alkalinity_bottle': 'What became of the chlorine in the alkalinity bottle.',
  'function.WATER_AFTER_STEP.volume': 'Volume of the water; needed with a product.',
  'function.WATER_AFTER_STEP.step_product': 'The product, by what it is made of. Not given: none goes in.',
  'function.WATER_AFTER_STEP.step_strength': 'Strength on its label. No basis, no dose.',
  'function.WATER_AFTER_STEP.step_strength_basis':
    'What the strength counts: mass, available chlorine, g/L or degrees Baumé.',
  'function.WATER_AFTER_STEP.step_mass': 'How much of it goes in, by mass.',
  'function.WATER_AFTER_STEP.step_volume': 'How much of a liquid goes in, where it is not given by mass.',
  'function.WATER_AFTER_STEP.step_chlorine_used': 'Chlorine used up after it; it leaves chloride and acid.',
} as const
