export const quantitiesPool = {
  'worksheet.pool.label': 'Piscina',
  'worksheet.pool.help':
    'De qué está hecha la piscina, cuánta agua contiene y cada cuánto mueve la bomba esa agua.',
  'worksheet.pool.example':
    'Una piscina inventada, de 8 m por 4 m y con suelo uniforme de 1,2 a 1,8 m de agua: 48 m³, con un 10 % de margen a cada lado. Una bomba medida a 8 m³/h la mueve en 6 h.',
  'group.pool.kind': 'Qué es',
  'group.pool.shape': 'Forma y profundidad',
  'group.pool.volume': 'Volumen',
  'group.pool.circulation': 'Circulación',
  'group.pool.evaporation': 'Evaporación',

  'quantity.water_body.label': 'Tipo de vaso',
  'quantity.water_body.help':
    'Lo que la gente hace en él; los spas y las piscinas de chapoteo tienen límites propios.',
  'choice.water_body.pool': 'piscina',
  'choice.water_body.spa': 'spa o bañera de hidromasaje',
  'choice.water_body.wading': 'piscina de chapoteo',
  'choice.water_body.plunge': 'piscina de inmersión',
  'quantity.shell.label': 'Revestimiento',
  'quantity.shell.help': 'La superficie que toca el agua; decide cuánto calcio necesita el agua.',
  'choice.shell.vinyl': 'lámina de vinilo',
  'choice.shell.fibreglass': 'fibra de vidrio',
  'choice.shell.painted': 'pintura',
  'choice.shell.plaster': 'enlucido de mortero',
  'choice.shell.tile': 'azulejo y juntas',
  'quantity.shell_age.label': 'Edad del revestimiento',
  'quantity.shell_age.help':
    'Días desde que la superficie se llenó por primera vez; el enlucido reciente necesita otra agua durante 28 días.',
  'quantity.setting.label': 'Lugar',
  'quantity.setting.help':
    'Al aire libre el sol gasta el cloro; bajo techo el aire contiene más dióxido de carbono.',
  'choice.setting.indoor': 'bajo techo',
  'choice.setting.outdoor': 'al aire libre',
  'quantity.use.label': 'Uso',
  'quantity.use.help': 'Las piscinas públicas tienen una norma local; las privadas, por lo general, no.',
  'choice.use.private': 'privado',
  'choice.use.public': 'público',
  'quantity.sanitizer.label': 'Desinfectante',
  'quantity.sanitizer.help':
    'Lo que mantiene el agua libre de gérmenes; el cloro de una célula de sal es cloro.',
  'choice.sanitizer.chlorine': 'cloro',
  'choice.sanitizer.bromine': 'bromo',
  'choice.sanitizer.biguanide': 'biguanida',

  'quantity.target_set.label': 'Intervalos según',
  'quantity.target_set.help':
    'El reglamento, la norma o la práctica cuyos intervalos se muestran; donde no dice nada, o no se elige ninguno, cada fila conserva los suyos. La norma local va primero.',
  'choice.target_set.salt_cell_private': 'práctica: piscina privada con célula de sal',
  'choice.target_set.us_mahc': 'Estados Unidos, código sanitario modelo: piscinas públicas',
  'choice.target_set.us_apsp_11': 'Estados Unidos, norma nacional ANSI/APSP/ICC-11',
  'choice.target_set.us_new_york': 'Estado de Nueva York: piscinas públicas',
  'choice.target_set.who_2006': 'Guías de la OMS, 2006: piscinas públicas',
  'choice.target_set.de_din_19643': 'Alemania, DIN 19643: piscinas públicas',
  'choice.target_set.fr_2021': 'Francia, orden de 2021: piscinas públicas',
  'choice.target_set.uk_council': 'Reino Unido, guía de un municipio: piscinas públicas',
  'choice.target_set.au_new_south_wales': 'Nueva Gales del Sur: piscinas públicas',
  'choice.target_set.au_western_homes': 'Australia Occidental: viviendas',

  'quantity.shape.label': 'Forma',
  'quantity.shape.help':
    'El óvalo es una elipse; el estadio tiene lados rectos y extremos redondos; la forma libre necesita su superficie.',
  'choice.shape.rectangle': 'rectángulo',
  'choice.shape.round': 'redonda',
  'choice.shape.oval': 'óvalo (elipse)',
  'choice.shape.stadium': 'lados rectos, extremos redondos',
  'choice.shape.freeform': 'forma libre',
  'quantity.length.label': 'Longitud',
  'quantity.length.help': 'La mayor distancia a la altura del agua, extremos redondos incluidos.',
  'quantity.width.label': 'Anchura',
  'quantity.width.help': 'La mayor anchura a la altura del agua, en ángulo recto con la longitud.',
  'quantity.diameter.label': 'Diámetro',
  'quantity.diameter.help': 'De lado a lado de una piscina redonda, a la altura del agua.',
  'quantity.surface_area.label': 'Superficie de una forma libre',
  'quantity.surface_area.help': 'El área de la superficie del agua donde ninguna forma simple sirve.',
  'quantity.depth_shallow.label': 'Profundidad, parte baja',
  'quantity.depth_shallow.help': 'De la superficie del agua al suelo, no la altura de la pared.',
  'quantity.depth_deep.label': 'Profundidad, parte honda',
  'quantity.depth_deep.help': 'De la superficie del agua al suelo; si no se indica, el suelo es plano.',
  'quantity.hopper_length.label': 'Foso, longitud',
  'quantity.hopper_length.help': 'De un foso abierto en el suelo, a media altura de sus lados.',
  'quantity.hopper_width.label': 'Foso, anchura',
  'quantity.hopper_width.help': 'De un foso abierto en el suelo, a media altura de sus lados.',
  'quantity.hopper_depth.label': 'Foso, profundidad',
  'quantity.hopper_depth.help': 'De la superficie del agua al fondo del foso.',

  'quantity.measured_volume.label': 'Volumen por contador',
  'quantity.measured_volume.help':
    'Leído en un contador de agua al llenar la piscina; va antes que el volumen por la forma.',
  'quantity.salt_mass_added.label': 'Sal añadida',
  'quantity.salt_mass_added.help':
    'Una masa conocida de sal disuelta, para hallar el volumen por lo que subió la sal.',
  'quantity.salt_before.label': 'Sal de antes',
  'quantity.salt_before.help':
    'Una medición anterior de la sal: antes de añadir esa sal o, si no se añadió, antes de perder agua.',
  'quantity.volume.label': 'Volumen',
  'quantity.volume.help': 'Cuánta agua contiene la piscina; todas las dosis se calculan con él.',
  'quantity.volume_low.label': 'Volumen, al menos',
  'quantity.volume_low.help':
    'El extremo bajo de lo que puede ser el volumen; lo que no se puede volver a sacar se dosifica para él.',
  'quantity.volume_high.label': 'Volumen, como mucho',
  'quantity.volume_high.help': 'El extremo alto de lo que puede ser el volumen.',
  'quantity.volume_from_salt_rise.label': 'Volumen por la subida de la sal',
  'quantity.volume_from_salt_rise.help':
    'El volumen en el que la sal añadida produce la subida que se midió.',
  'quantity.water_depth_mean.label': 'Profundidad media',
  'quantity.water_depth_mean.help': 'La profundidad que, por la superficie, da el volumen.',
  'quantity.water_surface.label': 'Superficie',
  'quantity.water_surface.help': 'El área de la superficie del agua, por la forma y sus medidas.',
  'quantity.volume_by_shape.label': 'Volumen por la forma',
  'quantity.volume_by_shape.help': 'Superficie por profundidad media.',

  'quantity.pump_flow.label': 'Caudal de la bomba',
  'quantity.pump_flow.help': 'Lo que muestra un caudalímetro, no lo que dice la placa de la bomba.',
  'quantity.pump_hours.label': 'Bomba en marcha',
  'quantity.pump_hours.help': 'Horas al día.',
  'quantity.turnover_time.label': 'Recirculación',
  'quantity.turnover_time.help':
    'Cuánto tarda la bomba en mover tanta agua como contiene la piscina.',
  'verdict.turnover_time.within':
    'La bomba mueve el agua de la piscina en el tiempo que da la norma.',
  'verdict.turnover_time.above':
    'La bomba tarda en mover el agua de la piscina más de lo que da la norma.',
  'quantity.turnovers_per_day.label': 'Recirculaciones al día',
  'quantity.turnovers_per_day.help':
    'Cuántas veces al día mueve la bomba tanta agua como contiene la piscina.',

  'quantity.air_temperature.label': 'Temperatura del aire',
  'quantity.air_temperature.help': 'Del aire sobre el agua.',
  'quantity.relative_humidity.label': 'Humedad relativa',
  'quantity.relative_humidity.help': 'Del aire sobre el agua, como parte de 0 a 1.',
  'quantity.wind_speed.label': 'Viento en el agua',
  'quantity.wind_speed.help':
    'Justo sobre la superficie; detrás de una valla es mucho menor que el pronóstico.',
  'quantity.evaporation.label': 'Evaporación',
  'quantity.evaporation.help':
    'El agua que una piscina abierta y en uso cede al aire en un día; la sal se queda.',
} as const
