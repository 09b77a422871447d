export const quantitiesSaturation = {
  'worksheet.saturation.label': 'Saturación',
  'worksheet.saturation.help':
    'Si esta agua disolvería carbonato de calcio de lo que la rodea o lo depositaría. Cerca de cero está en reposo; se tienen en cuenta la sal del agua y el estabilizador.',
  'worksheet.saturation.example':
    'Una piscina inventada a 25 °C da pH 7,5, alcalinidad 80, calcio 250, ácido cianúrico 50 y sal 3200: su índice queda bajo cero, y la sal y el estabilizador son el motivo.',
  'group.saturation.readings': 'De la muestra',
  'group.saturation.water': 'El agua',
  'group.saturation.index': 'Índices',
  'group.saturation.elsewhere': 'A otro pH, al aire, en frío, en la célula',

  'quantity.cyanuric_acid_used.label': 'Ácido cianúrico usado',
  'quantity.cyanuric_acid_used.help':
    'La medición; ninguno donde no se midió, solo en esta hoja.',
  'quantity.carbonate_alkalinity.label': 'Alcalinidad de carbonato',
  'quantity.carbonate_alkalinity.help':
    'La parte de la alcalinidad total que pone el carbonato, sin estabilizador ni borato.',
  'quantity.ionic_strength.label': 'Fuerza iónica',
  'quantity.ionic_strength.help':
    'Con qué fuerza se apantallan entre sí los iones de la sal y del resto.',
  'quantity.ph_saturation.label': 'pH de saturación',
  'quantity.ph_saturation.help':
    'El pH al que esta agua estaría en reposo según el índice de Langelier.',
  'quantity.lsi.label': 'Índice de Langelier',
  'quantity.lsi.help':
    'pH menos pH de saturación: bajo cero el agua puede disolver carbonato de calcio; sobre cero, depositarlo.',
  'verdict.lsi.below': 'El agua tiene hambre de calcio y lo toma de este revestimiento.',
  'verdict.lsi.within':
    'Dentro del intervalo para este revestimiento: el agua no le quita calcio ni le deposita cal.',
  'verdict.lsi.above': 'El agua puede depositar cal, primero en la célula y el calentador.',
  'quantity.table_index.label': 'Índice por factores impresos',
  'quantity.table_index.help':
    'Como lo calcula un operador con la tabla impresa; solo conoce la sal como sólidos disueltos.',
  'verdict.table_index.below': 'Según la tabla impresa, el agua tiene hambre de calcio.',
  'verdict.table_index.within':
    'Según la tabla impresa, el agua está en el intervalo de este revestimiento.',
  'verdict.table_index.above': 'Según la tabla impresa, el agua puede depositar cal.',
  'quantity.ryznar.label': 'Índice de Ryznar',
  'quantity.ryznar.help': 'Dos veces el pH de saturación menos el pH: cuanto más bajo, más cal.',
  'quantity.calcite_si.label': 'Índice de calcita, todos los iones',
  'quantity.calcite_si.help':
    'La misma pregunta respondida con cada par de iones; el tercer decimal no significa nada.',
  'quantity.ccpp.label': 'Carbonato que se depositaría',
  'quantity.ccpp.help':
    'Carbonato de calcio que sale del agua hasta que está en reposo; en negativo, lo que disolvería.',
  'quantity.target_lsi.label': 'Índice deseado',
  'quantity.target_lsi.help': 'El índice de Langelier para el que la fila siguiente halla el pH.',
  'quantity.ph_for_target_lsi.label': 'pH para él',
  'quantity.ph_for_target_lsi.help':
    'El pH, solo con ácido o base, al que el índice es el deseado.',
  'quantity.air_co2.label': 'Dióxido de carbono en el aire',
  'quantity.air_co2.help':
    'Sobre el agua; unos 420 ppm al aire libre, más en un recinto con gente.',
  'quantity.ph_against_air.label': 'pH frente al aire',
  'quantity.ph_against_air.help':
    'A dónde va el pH por sí solo cuando el agua está al aire el tiempo suficiente.',
  'quantity.temperature_low.label': 'Temperatura más baja',
  'quantity.temperature_low.help':
    'Lo más fría que estará el agua, con el calentador parado o en invierno.',
  'quantity.lsi_cold.label': 'Índice de Langelier, en frío',
  'quantity.lsi_cold.help': 'A la temperatura más baja, si el pH se mantiene.',
  'quantity.lsi_at_cell.label': 'Índice de Langelier en la célula',
  'quantity.lsi_at_cell.help':
    'En las placas de la célula de sal, donde el pH es una unidad más alto, más o menos.',
  'quantity.air_co2_used.label': 'Dióxido de carbono usado',
  'quantity.air_co2_used.help': 'La medición; 420 ppm donde la piscina no está bajo techo.',
} as const
