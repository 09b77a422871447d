export const functionsPool = {
  'function.POOL_AREA.says':
    'Área de la superficie del agua, por la forma y lo que mide una cinta a la altura del agua.',
  'function.POOL_AREA.shape':
    'Forma. El óvalo es una elipse; el estadio tiene lados rectos y medio círculo en cada extremo.',
  'function.POOL_AREA.length': 'Longitud total, para un rectángulo, un óvalo o un estadio.',
  'function.POOL_AREA.width': 'Anchura total, para un rectángulo, un óvalo o un estadio.',
  'function.POOL_AREA.diameter': 'Diámetro de una piscina redonda.',
  'function.POOL_AREA.surface_area': 'Superficie de una piscina de forma libre.',

  'function.POOL_MEAN_DEPTH.says':
    'Profundidad media del agua: un suelo plano o de pendiente uniforme, y un foso abierto en él donde lo hay. Profundidad del agua, no altura de la pared.',
  'function.POOL_MEAN_DEPTH.depth_shallow': 'Profundidad del agua en la parte baja.',
  'function.POOL_MEAN_DEPTH.depth_deep':
    'Profundidad del agua en la parte honda del suelo principal. No tomada: el suelo es plano.',
  'function.POOL_MEAN_DEPTH.surface_area': 'Superficie de la piscina; solo hace falta con un foso.',
  'function.POOL_MEAN_DEPTH.hopper_length': 'Longitud del foso, a media altura de sus lados.',
  'function.POOL_MEAN_DEPTH.hopper_width': 'Anchura del foso, a media altura de sus lados.',
  'function.POOL_MEAN_DEPTH.hopper_depth': 'Profundidad del agua sobre el fondo plano del foso, desde la superficie.',

  'function.POOL_VOLUME.says': 'Volumen del agua: superficie por la forma, por la profundidad media.',
  'function.POOL_VOLUME.shape':
    'Forma. El óvalo es una elipse; el estadio tiene lados rectos y medio círculo en cada extremo.',
  'function.POOL_VOLUME.water_depth_mean': 'Profundidad media del agua.',
  'function.POOL_VOLUME.length': 'Longitud total, para un rectángulo, un óvalo o un estadio.',
  'function.POOL_VOLUME.width': 'Anchura total, para un rectángulo, un óvalo o un estadio.',
  'function.POOL_VOLUME.diameter': 'Diámetro de una piscina redonda.',
  'function.POOL_VOLUME.surface_area': 'Superficie de una piscina de forma libre.',

  'function.VOLUME_FROM_SALT_RISE.says':
    'Volumen de una piscina en la que una masa conocida de sal subió la medición, una vez disuelta y mezclada.',
  'function.VOLUME_FROM_SALT_RISE.salt_mass_added': 'Sal que se añadió.',
  'function.VOLUME_FROM_SALT_RISE.salt_before': 'Medición de sal antes de añadirla.',
  'function.VOLUME_FROM_SALT_RISE.salt': 'Medición de sal después de mezclarla.',

  'function.VOLUME_LOW.says':
    'Extremo bajo de lo que puede ser el volumen: un 2 % bajo uno por contador, un 10 % bajo uno por la forma, o lo que da la subida de la sal con su error.',
  'function.VOLUME_LOW.measured_volume': 'Volumen por un contador de agua.',
  'function.VOLUME_LOW.shape_volume': 'Volumen por la forma y la profundidad.',
  'function.VOLUME_LOW.salt_mass_added': 'Sal que se añadió.',
  'function.VOLUME_LOW.salt_before': 'Medición de sal antes de añadirla.',
  'function.VOLUME_LOW.salt': 'Medición de sal después de mezclarla.',
  'function.VOLUME_LOW.salt_rise_error':
    'Cuánto puede errar la subida. Sin dato: 300 mg/L, práctica común para dos mediciones.',

  'function.VOLUME_HIGH.says':
    'Extremo alto de lo que puede ser el volumen: un 2 % sobre uno por contador, un 10 % sobre uno por la forma, o lo que da la subida de la sal con su error.',
  'function.VOLUME_HIGH.measured_volume': 'Volumen por un contador de agua.',
  'function.VOLUME_HIGH.shape_volume': 'Volumen por la forma y la profundidad.',
  'function.VOLUME_HIGH.salt_mass_added': 'Sal que se añadió.',
  'function.VOLUME_HIGH.salt_before': 'Medición de sal antes de añadirla.',
  'function.VOLUME_HIGH.salt': 'Medición de sal después de mezclarla.',
  'function.VOLUME_HIGH.salt_rise_error':
    'Cuánto puede errar la subida. Sin dato: 300 mg/L, práctica común para dos mediciones.',

  'function.TURNOVER_TIME.says': 'Horas en las que la bomba mueve una vez el volumen de la piscina.',
  'function.TURNOVER_TIME.volume': 'Volumen del agua.',
  'function.TURNOVER_TIME.pump_flow': 'Caudal medido, no el de la placa de la bomba.',

  'function.TURNOVERS_PER_DAY.says': 'Cuántas veces al día mueve la bomba el volumen de la piscina.',
  'function.TURNOVERS_PER_DAY.volume': 'Volumen del agua.',
  'function.TURNOVERS_PER_DAY.pump_flow': 'Caudal medido, no el de la placa de la bomba.',
  'function.TURNOVERS_PER_DAY.pump_hours': 'Horas al día que funciona la bomba.',

  'function.SHARE_FILTERED.says':
    'Parte del agua de una piscina bien mezclada que ha pasado por el filtro al menos una vez.',
  'function.SHARE_FILTERED.turnovers': 'Volúmenes que ha movido la bomba.',

  'function.SALT_MASS.says': 'Sal que añadir para una concentración deseada; 0 donde hay bastante.',
  'function.SALT_MASS.volume': 'Volumen del agua.',
  'function.SALT_MASS.salt': 'Sal en el agua ahora.',
  'function.SALT_MASS.target_salt': 'Sal deseada.',
  'function.SALT_MASS.salt_purity': 'Parte del producto que es sal. Sin dato: todo.',

  'function.SALT_AFTER_MASS.says': 'Sal en el agua después de mezclar una masa de sal.',
  'function.SALT_AFTER_MASS.volume': 'Volumen del agua.',
  'function.SALT_AFTER_MASS.salt': 'Sal en el agua antes.',
  'function.SALT_AFTER_MASS.salt_mass': 'Sal que se añade.',
  'function.SALT_AFTER_MASS.salt_purity': 'Parte del producto que es sal. Sin dato: todo.',

  'function.SALT_FROM_CHLORIDE.says': 'Sal que contiene este cloruro, tomado todo como cloruro de sodio.',
  'function.SALT_FROM_CHLORIDE.chloride': 'Cloruro en el agua.',

  'function.SALT_FROM_CONDUCTIVITY.says':
    'Sal que da esta conductividad, tomando todos los iones como sodio y cloruro. Otros iones la hacen marcar de más.',
  'function.SALT_FROM_CONDUCTIVITY.conductivity': 'Conductividad a 25 °C.',

  'function.CONDUCTIVITY_OF_SALT.says': 'Conductividad a 25 °C de un agua que no contiene más que esta sal.',
  'function.CONDUCTIVITY_OF_SALT.salt': 'Sal en el agua.',

  'function.CONDUCTIVITY_AT_25.says':
    'Lo que sería a 25 °C una conductividad medida sin compensación, para agua salada.',
  'function.CONDUCTIVITY_AT_25.conductivity': 'Conductividad medida, sin compensación de temperatura.',
  'function.CONDUCTIVITY_AT_25.temperature': 'Temperatura del agua en la celda de medida.',

  'function.POTASSIUM_CHLORIDE_MASS.says': 'Cloruro de potasio que trae tanto cloruro como esta masa de sal.',
  'function.POTASSIUM_CHLORIDE_MASS.salt_mass': 'Masa de cloruro de sodio.',

  'function.WATER_LOSS_FROM_SALT.says':
    'Agua que salió de la piscina con su sal, por fuga, salpicaduras o lavado del filtro, según la caída de la medición de sal. La evaporación no se lleva sal. El agua de llenado se toma sin sal.',
  'function.WATER_LOSS_FROM_SALT.volume': 'Volumen del agua.',
  'function.WATER_LOSS_FROM_SALT.salt_before': 'Medición de sal anterior.',
  'function.WATER_LOSS_FROM_SALT.salt': 'Medición de sal de ahora.',
  'function.WATER_LOSS_FROM_SALT.days_between': 'Días de una medición a la otra.',

  'function.TABLE_INDEX.says':
    'Índice de saturación por los factores impresos del operador, con rectas entre sus filas. No sabe nada de la sal más allá del escalón de 1000 mg/L.',
  'function.TABLE_INDEX.ph': 'pH; solo de 7,0 a 8,0 donde hay ácido cianúrico, como están impresos sus factores.',
  'function.TABLE_INDEX.temperature': 'Temperatura del agua de la piscina.',
  'function.TABLE_INDEX.calcium_hardness': 'Dureza cálcica.',
  'function.TABLE_INDEX.total_alkalinity':
    'Alcalinidad total valorada; se le quita lo que ponen en ella el cianurato y el borato.',
  'function.TABLE_INDEX.cyanuric_acid': 'Ácido cianúrico.',
  'function.TABLE_INDEX.borate': 'Borato, como boro.',
  'function.TABLE_INDEX.tds': 'Sólidos disueltos: por debajo de 1000 mg/L la constante es 12,1; si no, 12,2.',
} as const
