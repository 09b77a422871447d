export const noticesWorksheets = {
  'notice.closes.cya_to_fc_ratio':
    'Por encima de 45 : 1 el código sanitario modelo de EE. UU. (2023) cierra una piscina pública. Diluya; más de 10 mg/L de cloro no es respuesta.',
  'notice.over_ten.free_chlorine_for_target_hocl':
    'Eso supera 10 mg/L, más de lo que ninguna norma permite para bañarse: el camino es menos estabilizador.',
  'notice.over_ten.breakpoint_free_chlorine': 'Eso supera 10 mg/L: la piscina está cerrada hasta que haya bajado.',
  'notice.above_target.cyanuric_acid': 'Hay más ácido cianúrico del deseado; solo lo saca el agua nueva (dilución).',
  'notice.above_target.salt': 'Hay más sal de la que admite la célula; solo la saca el agua nueva (dilución).',
  'notice.above_target.calcium_hardness': 'Hay más calcio del deseado; solo lo saca el agua nueva (dilución).',
  'notice.above_target.free_chlorine': 'Hay más cloro libre del deseado: déjelo bajar.',
  'notice.above_target.borate': 'Hay más borato del deseado; solo lo saca el agua nueva (dilución).',
  'notice.no_stabilizer.water_body': 'Un spa se mantiene sin estabilizador.',
  'notice.no_sun.setting': 'Bajo techo no hay sol del que proteger el cloro; el estabilizador solo lo retiene.',
  'notice.young.shell': 'Enlucido de menos de 28 días: ni sal ni célula; la hoja de quien hizo el acabado va primero.',
  'notice.wide.water_loss':
    'Las dos mediciones de sal están más cerca entre sí que el error de sus análisis: la pérdida es una conjetura.',
  'notice.wide.cell_output_measured':
    'La subida no es mayor que el error del análisis: mida durante una noche más larga.',
  'notice.liner.drain_depth':
    'Eso deja menos de 30 cm en la parte baja de una piscina de vinilo: saque menos de una vez.',
  'notice.metals.iron_after_dilution': 'Bastante hierro para manchar: fíjelo antes de que suba el cloro.',
  'notice.metals.iron':
    'Hay bastante hierro para manchar cuando suba el cloro: primero fíjelo, luego cloro en pasos pequeños.',
  'notice.metals.copper':
    'Hay bastante cobre para manchar cuando suba el cloro: primero fíjelo, luego cloro en pasos pequeños.',
  'notice.in_days.calcium_hardness': 'Más de 50 mg/L de calcio: repártalo en varios días.',
  'notice.in_days.total_alkalinity': 'Más de 50 mg/L de alcalinidad: repártala en varios días.',
  'notice.ph_first.target_free_chlorine': 'El pH pasa de 7,8, o el cloro va a pasar de 10 mg/L: baje primero el pH.',
  'notice.label.chlorine_strength':
    'La concentración de la etiqueta se toma tal cual; el hipoclorito guardado ha perdido algo. Indique su edad o valórelo.',
  'notice.in_parts.acid_doses': 'No de una vez: en las partes de abajo, con un análisis entre ellas.',
  'notice.clouds.soda_ash_mass':
    'Tanto de una vez lleva el pH por encima de 7,8 o el índice por encima de +0,3 y enturbia el agua: por partes.',
  'notice.aerate.aeration_needed':
    'Los productos cumplen la alcalinidad; el aire tiene que subir el pH a lo deseado, en días.',
  'notice.disagree.cell_output':
    'La producción medida y la de la placa difieren en más de un 20 %: mire las placas, la sal y la temperatura.',
  'notice.over_a_day.generator_hours': 'Un día tiene 24 horas: con este ajuste la célula no da abasto.',
  'notice.below_demand.chlorine_made':
    'La célula produce menos de lo que gasta la piscina: más horas, un ajuste mayor o cloro a mano.',
  'notice.assumed.minimum_cell_flow':
    'No se indicó el caudal mínimo de la célula; se usan 700 gal/h de EE. UU. (2,65 m³/h), como es común en una célula pequeña de piscina elevada.',
  'notice.low.pump_flow': 'El caudal está fuera de lo que admite la célula.',
  'notice.cold.temperature': 'El agua está más fría de lo que admite la célula.',
  'notice.low.salt':
    'La sal da por debajo del intervalo de la célula. Primero una segunda medición, nueva; el agua fría, la cal, las placas gastadas y el poco caudal también se leen como poca sal.',
  'notice.high.salt':
    'La sal da por encima del intervalo de la célula. Primero una segunda medición, nueva; luego dilución.',
  'notice.unknown.salt': 'No se conoce la sal, o el intervalo de la célula para ella; aquí no se ha mirado.',
  'notice.high.ph': 'El pH pasa de 7,8: la cal se deposita en las placas.',
  'notice.scale.cell': 'El índice de la piscina pasa de +0,3, y en las placas es una unidad mayor, más o menos: cal.',
  'notice.symptom.low_flow':
    'Lave a contracorriente o limpie el filtro, vacíe las cestas, abra las válvulas, suba el nivel; luego el detector de caudal.',
  'notice.symptom.no_flow': 'Bomba, válvulas, nivel; la célula debe seguir parada hasta que el agua se mueva.',
  'notice.symptom.low_salt':
    'Todavía nada de sal: mídala con otro análisis. El agua fría, la cal, las placas gastadas, el poco caudal, el aire y la edad también se leen como poca sal.',
  'notice.symptom.high_salt':
    'Mídala con otro análisis; si concuerda, diluya. El agua caliente marca de más en algunas células.',
  'notice.symptom.high_current':
    'Mucha sal o agua caliente suben la corriente: mida la sal con otro análisis antes que nada.',
  'notice.symptom.cold_water': 'La célula descansa en frío por diseño; mientras tanto el cloro se añade a mano.',
  'notice.symptom.air':
    'Una fuga en el lado de aspiración o un nivel bajo: el aire detiene el detector de caudal y las placas.',
  'notice.symptom.reversed_flow':
    'Gire la célula para que su flecha siga el agua; el detector de caudal va antes de las placas.',
  'notice.symptom.scale': 'Mire el índice en la célula y luego limpie las placas como se dice abajo.',
  'notice.symptom.little_chlorine':
    'Se gasta más de lo que se produce, o las placas están gastadas: primero las horas, luego una noche con la célula en marcha.',
} as const
