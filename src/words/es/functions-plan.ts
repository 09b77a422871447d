export const functionsPlan = {
  'function.WATER_AFTER_STEP.says':
    'El agua tras un paso de un plan: un producto por la concentración de su etiqueta y luego cloro gastado. Una medición no tomada hace fallar solo los resultados que la necesitan.',
  'function.WATER_AFTER_STEP.ph': 'pH del agua antes del paso.',
  'function.WATER_AFTER_STEP.temperature': 'Temperatura de la piscina.',
  'function.WATER_AFTER_STEP.total_alkalinity': 'Alcalinidad por valoración hasta pH 4,5.',
  'function.WATER_AFTER_STEP.calcium_hardness': 'Solo calcio, sin magnesio.',
  'function.WATER_AFTER_STEP.salt': 'Sal como la lee la tira o el medidor, incluida la del cloruro de calcio.',
  'function.WATER_AFTER_STEP.chloride': 'Cloruro donde se midió. No tomado: por la sal.',
  'function.WATER_AFTER_STEP.cyanuric_acid': 'Ácido cianúrico.',
  'function.WATER_AFTER_STEP.borate': 'Borato como boro.',
  'function.WATER_AFTER_STEP.magnesium': 'Magnesio. No tomado cuenta como ninguno.',
  'function.WATER_AFTER_STEP.sulfate': 'Sulfato. No tomado cuenta como ninguno.',
  'function.WATER_AFTER_STEP.free_chlorine':
    'Cloro libre. Por encima de 10 mg/L la medición de alcalinidad no se usa y el pH no se prevé.',
  'function.WATER_AFTER_STEP.alkalinity_bottle': 'Qué fue del cloro en el frasco de la alcalinidad.',
  'function.WATER_AFTER_STEP.volume': 'Volumen del agua; hace falta con un producto.',
  'function.WATER_AFTER_STEP.step_product':
    'El producto, por aquello de que está hecho. Sin dato: no se añade ninguno.',
  'function.WATER_AFTER_STEP.step_strength': 'Concentración de su etiqueta. Sin base no hay dosis.',
  'function.WATER_AFTER_STEP.step_strength_basis':
    'Qué cuenta la concentración: masa, cloro disponible, g/L o grados Baumé.',
  'function.WATER_AFTER_STEP.step_mass': 'Cuánto se añade, en masa.',
  'function.WATER_AFTER_STEP.step_volume': 'Cuánto se añade de un líquido, donde no se da en masa.',
  'function.WATER_AFTER_STEP.step_chlorine_used': 'Cloro gastado después; deja cloruro y ácido.',
} as const
