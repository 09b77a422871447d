const READINGS = {
  ph: 'pH de la muestra.',
  temperature: 'Temperatura de la piscina, no del frasco.',
  total_alkalinity: 'Alcalinidad por valoración hasta pH 4,5.',
  calcium_hardness: 'Solo calcio, sin magnesio.',
  salt: 'Sal como la lee la tira o el medidor, incluida la del cloruro de calcio.',
  chloride: 'Cloruro donde se midió. No tomado: por la sal.',
  cyanuric_acid: 'Ácido cianúrico. Su sal cuenta en la medición de alcalinidad.',
  borate: 'Borato como boro. Su sal cuenta en la medición de alcalinidad.',
  magnesium: 'Magnesio. No tomado cuenta como ninguno.',
  sulfate: 'Sulfato. No tomado cuenta como ninguno.',
  free_chlorine: 'Cloro libre en el frasco. Por encima de 10 mg/L la medición de alcalinidad no se usa.',
  alkalinity_bottle:
    'Qué fue del cloro en el frasco de la alcalinidad: no se contó (normal), se contó, o se quitó con tiosulfato.',
} as const

function readings<Name extends string>(name: Name) {
  const entries = Object.entries(READINGS).map(([reading, words]) => [`function.${name}.${reading}`, words])
  return Object.fromEntries(entries) as {
    readonly [Reading in keyof typeof READINGS as `function.${Name}.${Reading}`]: string
  }
}

export const functionsWater = {
  'function.WATER.says':
    'El agua entera a partir de sus mediciones: carbonato total, cada forma disuelta, los índices de saturación y los sólidos disueltos. El tercer decimal de un índice no significa nada: de un conjunto publicado de constantes a otro difiere en 0,03, y en agua fría en 0,07.',
  ...readings('WATER'),

  'function.WATER_EQUILIBRIA.says':
    'A lo que llegaría el agua: con calcita, con el aire, a un índice deseado, en frío y en las placas de la célula.',
  ...readings('WATER_EQUILIBRIA'),
  'function.WATER_EQUILIBRIA.target_lsi': 'El índice deseado.',
  'function.WATER_EQUILIBRIA.temperature_low': 'La temperatura más baja que verá el agua.',
  'function.WATER_EQUILIBRIA.air_co2':
    'Dióxido de carbono en el aire sobre la piscina: unos 420 al aire libre, más bajo techo.',

  'function.WATER_AFTER.says':
    'El agua justo después de una lista de adiciones, sin más cambio de CO2 que el que dice la lista. Las cantidades son de sustancia pura, mmol por litro de agua de la piscina (mol por m³).',
  ...readings('WATER_AFTER'),
  'function.WATER_AFTER.add_hydrochloric_acid': 'Ácido clorhídrico.',
  'function.WATER_AFTER.add_sulfuric_acid': 'Ácido sulfúrico.',
  'function.WATER_AFTER.add_sodium_bisulfate': 'Bisulfato de sodio.',
  'function.WATER_AFTER.add_sodium_carbonate': 'Carbonato de sodio.',
  'function.WATER_AFTER.add_sodium_bicarbonate': 'Bicarbonato de sodio.',
  'function.WATER_AFTER.add_sodium_hydroxide': 'Sosa cáustica.',
  'function.WATER_AFTER.add_borax_decahydrate': 'Bórax con diez aguas.',
  'function.WATER_AFTER.add_borax_pentahydrate': 'Bórax con cinco aguas.',
  'function.WATER_AFTER.add_boric_acid': 'Ácido bórico.',
  'function.WATER_AFTER.add_calcium_chloride': 'Cloruro de calcio.',
  'function.WATER_AFTER.add_calcium_chloride_dihydrate': 'Cloruro de calcio con dos aguas.',
  'function.WATER_AFTER.add_cyanuric_acid': 'Ácido cianúrico.',
  'function.WATER_AFTER.add_sodium_hypochlorite': 'Hipoclorito de sodio, con la sal que lo acompaña.',
  'function.WATER_AFTER.add_calcium_hypochlorite': 'Hipoclorito de calcio.',
  'function.WATER_AFTER.add_dichlor': 'Dicloro.',
  'function.WATER_AFTER.add_trichlor': 'Tricloro.',
  'function.WATER_AFTER.add_sodium_thiosulfate': 'Tiosulfato de sodio; quita cloro.',
  'function.WATER_AFTER.add_hydrogen_peroxide': 'Peróxido de hidrógeno; quita cloro.',
  'function.WATER_AFTER.add_ascorbic_acid': 'Ácido ascórbico; quita cloro.',
  'function.WATER_AFTER.add_salt': 'Sal.',
  'function.WATER_AFTER.add_carbon_dioxide': 'Dióxido de carbono absorbido; negativo cuando se pierde.',
  'function.WATER_AFTER.chlorine_made': 'Cloro que una célula produjo del cloruro de la propia agua.',
  'function.WATER_AFTER.chlorine_used': 'Cloro gastado. Deja cloruro y ácido.',
  'function.WATER_AFTER.evaporated_share': 'Parte del agua que se fue como vapor.',

  'function.WATER_AFTER_DILUTION.says':
    'El agua después de reponer una parte con agua de llenado. Las dos se mezclan según lo que conservan; la mezcla mantiene la temperatura de la piscina.',
  ...readings('WATER_AFTER_DILUTION'),
  'function.WATER_AFTER_DILUTION.drain_fraction': 'Parte repuesta, todas las rondas juntas.',
  'function.WATER_AFTER_DILUTION.fill_ph': 'pH del agua de llenado.',
  'function.WATER_AFTER_DILUTION.fill_temperature': 'Temperatura del agua de llenado cuando se midió.',
  'function.WATER_AFTER_DILUTION.fill_total_alkalinity': 'Alcalinidad del agua de llenado.',
  'function.WATER_AFTER_DILUTION.fill_calcium_hardness': 'Calcio del agua de llenado.',
  'function.WATER_AFTER_DILUTION.fill_salt': 'Sal del agua de llenado, por su cloruro.',
  'function.WATER_AFTER_DILUTION.fill_cyanuric_acid': 'Ácido cianúrico del agua de llenado.',

  'function.BALANCE_DOSE.says':
    'Lo que lleva el pH y la alcalinidad a sus objetivos, y el agua justo después. El bicarbonato y el carbonato de sodio se dan como sustancia pura. Donde tiene que salir CO2, dice que hace falta airear y dosifica solo la alcalinidad.',
  ...readings('BALANCE_DOSE'),
  'function.BALANCE_DOSE.volume': 'Volumen del agua.',
  'function.BALANCE_DOSE.target_ph': 'pH deseado. No tomado: el pH resulta.',
  'function.BALANCE_DOSE.target_total_alkalinity':
    'Alcalinidad deseada, como la daría la valoración. No tomada: la alcalinidad resulta.',
  'function.BALANCE_DOSE.target_borate': 'Borato deseado como boro.',
  'function.BALANCE_DOSE.ph_rise_per_week': 'Cuánto sube el pH en una semana si se deja solo.',
  'function.BALANCE_DOSE.air_co2': 'Dióxido de carbono en el aire sobre la piscina.',
  'function.BALANCE_DOSE.acid_product': 'Ácido, por aquello de que está hecho.',
  'function.BALANCE_DOSE.acid_strength': 'Concentración de su etiqueta. Sin base no hay dosis.',
  'function.BALANCE_DOSE.acid_strength_basis':
    'Qué cuenta la concentración: masa, cloro disponible, g/L o grados Baumé.',
  'function.BALANCE_DOSE.base_product': 'Base, por aquello de que está hecha.',
  'function.BALANCE_DOSE.base_strength': 'Concentración de su etiqueta. Sin base no hay dosis.',
  'function.BALANCE_DOSE.base_strength_basis':
    'Qué cuenta la concentración: masa, cloro disponible, g/L o grados Baumé.',
  'function.BALANCE_DOSE.borate_product': 'Borato, por aquello de que está hecho.',
  'function.BALANCE_DOSE.borate_strength': 'Concentración de su etiqueta. Sin base no hay dosis.',
  'function.BALANCE_DOSE.borate_strength_basis':
    'Qué cuenta la concentración: masa, cloro disponible, g/L o grados Baumé.',

  'function.CALCIUM_DOSE.says': 'Cloruro de calcio que lleva la dureza cálcica a su objetivo; nada donde ya hay tanta.',
  'function.CALCIUM_DOSE.calcium_hardness': 'Solo calcio, sin magnesio.',
  'function.CALCIUM_DOSE.target_calcium_hardness': 'Dureza cálcica deseada.',
  'function.CALCIUM_DOSE.volume': 'Volumen del agua.',
  'function.CALCIUM_DOSE.calcium_product':
    'Cloruro de calcio por su fórmula. Una etiqueta del 77 % o del 94 % de CaCl2 es cloruro de calcio con esa concentración, sea cual sea el agua que contiene.',
  'function.CALCIUM_DOSE.calcium_strength': 'Concentración de su etiqueta. Sin base no hay dosis.',
  'function.CALCIUM_DOSE.calcium_strength_basis': 'Qué cuenta la concentración.',

  'function.PH_SATURATION.says':
    'El pH al que este calcio y esta alcalinidad de carbonato están justo saturados de calcita, según Standard Methods 2330 B.',
  'function.PH_SATURATION.ph': 'pH del agua; separa el bicarbonato del carbonato.',
  'function.PH_SATURATION.temperature': 'Temperatura del agua.',
  'function.PH_SATURATION.carbonate_alkalinity': 'Alcalinidad de carbonato, no toda la de la valoración.',
  'function.PH_SATURATION.calcium_hardness': 'Solo calcio, sin magnesio.',
  'function.PH_SATURATION.ionic_strength': 'Fuerza iónica por los iones, no por los sólidos disueltos.',

  'function.LANGELIER_INDEX.says':
    'pH menos el pH de saturación: por encima de 0 el agua puede depositar calcita; por debajo, disolverla. El tercer decimal no significa nada.',
  'function.LANGELIER_INDEX.ph': 'pH del agua.',
  'function.LANGELIER_INDEX.temperature': 'Temperatura del agua.',
  'function.LANGELIER_INDEX.carbonate_alkalinity': 'Alcalinidad de carbonato, no toda la de la valoración.',
  'function.LANGELIER_INDEX.calcium_hardness': 'Solo calcio, sin magnesio.',
  'function.LANGELIER_INDEX.ionic_strength': 'Fuerza iónica por los iones, no por los sólidos disueltos.',

  'function.CARBONATE_ALKALINITY.says':
    'La parte de una alcalinidad valorada que es bicarbonato y carbonato: menos lo que ceden el cianurato, el borato y el hidróxido hasta pH 4,5. A una fuerza iónica conocida, sin pares de iones.',
  'function.CARBONATE_ALKALINITY.ph': 'pH de la muestra.',
  'function.CARBONATE_ALKALINITY.temperature': 'Temperatura de la piscina.',
  'function.CARBONATE_ALKALINITY.total_alkalinity': 'Alcalinidad por valoración hasta pH 4,5.',
  'function.CARBONATE_ALKALINITY.cyanuric_acid': 'Ácido cianúrico.',
  'function.CARBONATE_ALKALINITY.borate': 'Borato como boro.',
  'function.CARBONATE_ALKALINITY.ionic_strength': 'Fuerza iónica por los iones.',

  'function.RYZNAR_INDEX.says':
    'Dos veces el pH de saturación menos el pH: de 6 a 7, más o menos, está equilibrado; más bajo deposita cal.',
  'function.RYZNAR_INDEX.ph_saturation': 'pH de saturación.',
  'function.RYZNAR_INDEX.ph': 'pH del agua.',

  'function.SALT_FROM_TDS.says':
    'Sal como lo que queda de los sólidos disueltos cuando se quitan los otros iones; la alcalinidad cuenta como bicarbonato de sodio.',
  'function.SALT_FROM_TDS.tds': 'Sólidos disueltos totales.',
  'function.SALT_FROM_TDS.total_alkalinity': 'Alcalinidad por valoración.',
  'function.SALT_FROM_TDS.calcium_hardness': 'Solo calcio, sin magnesio.',
  'function.SALT_FROM_TDS.cyanuric_acid': 'Ácido cianúrico. No tomado cuenta como ninguno.',
  'function.SALT_FROM_TDS.borate': 'Borato como boro. No tomado cuenta como ninguno.',
  'function.SALT_FROM_TDS.magnesium': 'Magnesio. No tomado cuenta como ninguno.',
  'function.SALT_FROM_TDS.sulfate': 'Sulfato. No tomado cuenta como ninguno.',

  'function.PK_CARBONIC_1.says': 'Primera disociación del ácido carbónico (CO2 disuelto y H2CO3 juntos), sin sal.',
  'function.PK_CARBONIC_1.temperature': 'Temperatura del agua.',
  'function.PK_CARBONIC_2.says': 'Segunda disociación del ácido carbónico, sin sal.',
  'function.PK_CARBONIC_2.temperature': 'Temperatura del agua.',
  'function.PK_CALCITE.says': 'Producto de solubilidad de la calcita, sin sal.',
  'function.PK_CALCITE.temperature': 'Temperatura del agua.',
  'function.PK_WATER.says': 'Producto iónico del agua, sin sal.',
  'function.PK_WATER.temperature': 'Temperatura del agua.',
} as const
