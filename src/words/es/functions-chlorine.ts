export const functionsChlorine = {
  'function.CHLORINE.says':
    'Cómo se reparte el cloro libre entre HOCl, OCl⁻ y estabilizador, según un modelo publicado a fuerza iónica cero. El modelo de 2019 no da veredicto fuera de 5 a 35 °C; el de 1974 es siempre a 25 °C.',
  'function.CHLORINE.ph': 'pH. Los modelos se acercan más de 6,5 a 8,5.',
  'function.CHLORINE.temperature': 'Temperatura del agua de la piscina.',
  'function.CHLORINE.free_chlorine': 'Cloro libre como lo lee el análisis, con el que está unido al estabilizador.',
  'function.CHLORINE.cyanuric_acid': 'Ácido cianúrico (estabilizador).',
  'function.CHLORINE.hocl_model': 'El modelo publicado que se usa.',

  'function.FREE_CHLORINE_FOR_HOCL.says':
    'Cloro libre con el que el HOCl es el deseado, según el mismo modelo que da el HOCl.',
  'function.FREE_CHLORINE_FOR_HOCL.target_hocl': 'HOCl deseado.',
  'function.FREE_CHLORINE_FOR_HOCL.ph': 'pH. Los modelos se acercan más de 6,5 a 8,5.',
  'function.FREE_CHLORINE_FOR_HOCL.temperature': 'Temperatura del agua de la piscina.',
  'function.FREE_CHLORINE_FOR_HOCL.cyanuric_acid': 'Ácido cianúrico (estabilizador).',
  'function.FREE_CHLORINE_FOR_HOCL.hocl_model': 'El modelo publicado que se usa.',
  'function.FREE_CHLORINE_FOR_HOCL.target_hocl_model':
    'El modelo con el que se dedujo el HOCl deseado. Si es otro que el que se usa, se rechaza: difieren en un tercio y más. Sin dato: el que se usa.',

  'function.CYA_TO_FC_RATIO.says': 'Partes de ácido cianúrico por una de cloro libre.',
  'function.CYA_TO_FC_RATIO.cyanuric_acid': 'Ácido cianúrico (estabilizador).',
  'function.CYA_TO_FC_RATIO.free_chlorine': 'Cloro libre; sin nada de él no hay relación.',

  'function.FC_TO_CYA_SHARE.says': 'El cloro libre como parte del ácido cianúrico.',
  'function.FC_TO_CYA_SHARE.free_chlorine': 'Cloro libre.',
  'function.FC_TO_CYA_SHARE.cyanuric_acid': 'Ácido cianúrico (estabilizador); sin nada de él no hay parte.',

  'function.CYANURIC_ACID_MASS.says':
    'Estabilizador que añadir para una concentración deseada de ácido cianúrico; 0 donde hay bastante.',
  'function.CYANURIC_ACID_MASS.volume': 'Volumen del agua.',
  'function.CYANURIC_ACID_MASS.cyanuric_acid': 'Ácido cianúrico en el agua ahora.',
  'function.CYANURIC_ACID_MASS.target_cyanuric_acid': 'Ácido cianúrico deseado.',
  'function.CYANURIC_ACID_MASS.stabilizer_purity': 'Parte del producto que es ácido cianúrico. Sin dato: todo.',

  'function.BREAKPOINT_DOSE.says':
    'Cloro que gastan el cloro combinado y el amoníaco hasta el punto de ruptura, por estequiometría. Otras cosas del agua gastan más.',
  'function.BREAKPOINT_DOSE.combined_chlorine': 'Cloro combinado: total menos libre.',
  'function.BREAKPOINT_DOSE.ammonia': 'Amoníaco, como nitrógeno.',

  'function.BATHER_DEMAND.says': 'Cloro que gastan los bañistas, repartido en la piscina.',
  'function.BATHER_DEMAND.bathers': 'Cuántos bañistas.',
  'function.BATHER_DEMAND.volume': 'Volumen del agua.',
  'function.BATHER_DEMAND.chlorine_per_bather':
    'Cloro que gasta uno: 4,12 g se hallaron en una piscina poco usada; 5,5 g es la mediana de un estudio de campo.',

  'function.CHLORINE_LEFT_IN_SUN.says':
    'Cloro libre que queda tras unas horas de sol de mediodía de verano en la superficie, sin que nada más lo gaste. La rapidez con que se va el cloro retenido por el estabilizador es práctica común, no una velocidad publicada; con estabilizador, esto es una estimación. El agua más honda pierde menos.',
  'function.CHLORINE_LEFT_IN_SUN.ph': 'pH: el OCl⁻ se va seis veces más deprisa que el HOCl.',
  'function.CHLORINE_LEFT_IN_SUN.temperature': 'Temperatura del agua de la piscina.',
  'function.CHLORINE_LEFT_IN_SUN.free_chlorine': 'Cloro libre al comienzo.',
  'function.CHLORINE_LEFT_IN_SUN.cyanuric_acid': 'Ácido cianúrico (estabilizador).',
  'function.CHLORINE_LEFT_IN_SUN.hours': 'Horas de ese sol.',
  'function.CHLORINE_LEFT_IN_SUN.hocl_model': 'El modelo publicado que se usa.',

  'function.CONTACT_TIME.says':
    'Horas durante las que hay que mantener el cloro libre contra un organismo, leídas en tablas publicadas para piscinas públicas. La autoridad sanitaria y la norma van primero. Ningún tiempo se calcula del HOCl.',
  'function.CONTACT_TIME.organism': 'El organismo: Cryptosporidium tras una diarrea, Giardia tras unas heces formadas.',
  'function.CONTACT_TIME.free_chlorine': 'Cloro libre que se mantiene en toda la piscina.',
  'function.CONTACT_TIME.cyanuric_acid':
    'Ácido cianúrico. Por encima de 15 mg/L no hay tiempo publicado: diluya antes.',
  'function.CONTACT_TIME.ph': 'pH; las tablas valen a 7,5 o menos.',
  'function.CONTACT_TIME.temperature': 'Temperatura del agua de la piscina; las tablas valen a 25 °C o más.',

  'function.CHLORINE_PRODUCT_DOSE.says':
    'Cuánto de un producto de cloro lleva el cloro libre a lo deseado, y qué deja en el agua cuando su cloro se ha gastado.',
  'function.CHLORINE_PRODUCT_DOSE.volume': 'Volumen del agua.',
  'function.CHLORINE_PRODUCT_DOSE.free_chlorine': 'Cloro libre ahora.',
  'function.CHLORINE_PRODUCT_DOSE.target_free_chlorine': 'Cloro libre deseado.',
  'function.CHLORINE_PRODUCT_DOSE.chlorine_product': 'El producto.',
  'function.CHLORINE_PRODUCT_DOSE.chlorine_strength': 'Concentración de su etiqueta, o la valorada.',
  'function.CHLORINE_PRODUCT_DOSE.chlorine_strength_basis':
    'Qué cuenta la concentración: tanto por ciento en masa, cloro disponible, tanto por ciento comercial o g/L. Sin ella no hay dosis.',

  'function.HYPOCHLORITE_LEFT.says':
    'Parte de su concentración que le queda a una solución de hipoclorito guardada, a oscuras y a unos 25 °C; más caliente va de tres a cuatro veces más deprisa por cada 10 °C. Un producto seco conserva la suya. No es un hecho sobre un bidón: una valoración sí.',
  'function.HYPOCHLORITE_LEFT.chlorine_product': 'El producto.',
  'function.HYPOCHLORITE_LEFT.chlorine_strength': 'Su concentración cuando se hizo, según su etiqueta.',
  'function.HYPOCHLORITE_LEFT.chlorine_strength_basis': 'Qué cuenta la concentración de la etiqueta.',
  'function.HYPOCHLORITE_LEFT.product_age':
    'Días desde que se hizo; pasado un año solo lo dice una valoración. Sin dato: como recién hecho.',

  'function.CYANURIC_ACID_WITH_CHLORINE.says': 'Ácido cianúrico que acompaña al cloro de un producto estabilizado.',
  'function.CYANURIC_ACID_WITH_CHLORINE.chlorine_product': 'El producto.',
  'function.CYANURIC_ACID_WITH_CHLORINE.chlorine_added': 'Cloro que trae.',

  'function.NEUTRALIZER_MASS.says':
    'Cuánto de un producto baja el cloro libre a lo deseado. Ponga la mitad, mida y repita: la reacción puede necesitar menos.',
  'function.NEUTRALIZER_MASS.volume': 'Volumen del agua.',
  'function.NEUTRALIZER_MASS.free_chlorine': 'Cloro libre ahora.',
  'function.NEUTRALIZER_MASS.target_free_chlorine': 'Cloro libre deseado.',
  'function.NEUTRALIZER_MASS.neutralizer': 'El producto.',
  'function.NEUTRALIZER_MASS.neutralizer_strength': 'Concentración de su etiqueta.',
  'function.NEUTRALIZER_MASS.neutralizer_strength_basis': 'Qué cuenta la concentración. Sin ella no hay dosis.',

  'function.CELL_OUTPUT_FROM_CURRENT.says': 'Cloro que produce una célula en una hora, por su corriente.',
  'function.CELL_OUTPUT_FROM_CURRENT.cell_current': 'Corriente a través de la célula.',
  'function.CELL_OUTPUT_FROM_CURRENT.cell_pairs':
    'Espacios entre placas que atraviesa la misma corriente uno tras otro.',
  'function.CELL_OUTPUT_FROM_CURRENT.current_efficiency':
    'Parte de la corriente que produce cloro que se queda: por lo común de 0,6 a 0,95; menos con poca sal, agua fría o placas gastadas.',

  'function.CELL_OUTPUT_MEASURED.says':
    'La producción de una célula al ajuste máximo, por el cloro libre al anochecer y al amanecer con la célula en marcha toda la noche. Lo que gastó el agua no está incluido, así que la célula produce al menos esto.',
  'function.CELL_OUTPUT_MEASURED.volume': 'Volumen del agua.',
  'function.CELL_OUTPUT_MEASURED.free_chlorine_dusk': 'Cloro libre tras la puesta del sol.',
  'function.CELL_OUTPUT_MEASURED.free_chlorine_dawn': 'Cloro libre antes de salir el sol.',
  'function.CELL_OUTPUT_MEASURED.dark_hours': 'Horas entre las dos mediciones.',
  'function.CELL_OUTPUT_MEASURED.cell_setting': 'Ajuste de la célula esa noche.',

  'function.CELL_HOURS.says': 'Horas al día que tiene que funcionar la célula. Más de 24 significa que no da abasto.',
  'function.CELL_HOURS.chlorine_demand': 'Cloro libre que gasta la piscina al día.',
  'function.CELL_HOURS.volume': 'Volumen del agua.',
  'function.CELL_HOURS.cell_output': 'Producción de la célula al ajuste máximo.',
  'function.CELL_HOURS.cell_setting': 'Ajuste de la célula.',

  'function.CHLORINE_MADE.says': 'Cloro que la célula añade a la piscina al día.',
  'function.CHLORINE_MADE.cell_output': 'Producción de la célula al ajuste máximo.',
  'function.CHLORINE_MADE.cell_setting': 'Ajuste de la célula.',
  'function.CHLORINE_MADE.pump_hours': 'Horas al día que funcionan bomba y célula.',
  'function.CHLORINE_MADE.volume': 'Volumen del agua.',

  'function.CELL_ALKALINITY.says':
    'Lo que producir y gastar cloro hace a la alcalinidad: lo uno deshace lo otro. El pH de una piscina de sal sube porque el dióxido de carbono sale del agua.',
  'function.CELL_ALKALINITY.chlorine_made': 'Cloro que produjo la célula.',
  'function.CELL_ALKALINITY.chlorine_used': 'Cloro que se gastó.',

  'function.FLOW_MARGIN.says': 'Cuánto queda el caudal dentro de lo que admite la célula; bajo cero, queda fuera.',
  'function.FLOW_MARGIN.pump_flow': 'Caudal medido.',
  'function.FLOW_MARGIN.minimum_cell_flow': 'Caudal mínimo que admite la célula.',
  'function.FLOW_MARGIN.maximum_cell_flow': 'Caudal máximo que admite la célula. Sin dato: solo cuenta el mínimo.',

  'function.CELL_MAY_RUN.says':
    'Si el caudal y la temperatura dejan funcionar la célula. La sal, el pH y el índice son comprobaciones aparte.',
  'function.CELL_MAY_RUN.pump_flow': 'Caudal medido.',
  'function.CELL_MAY_RUN.minimum_cell_flow': 'Caudal mínimo que admite la célula.',
  'function.CELL_MAY_RUN.maximum_cell_flow': 'Caudal máximo que admite la célula. Sin dato: solo cuenta el mínimo.',
  'function.CELL_MAY_RUN.temperature': 'Temperatura del agua de la piscina.',
  'function.CELL_MAY_RUN.cell_cold_limit': 'Temperatura por debajo de la cual la célula no debe funcionar.',

  'function.DILUTION.says':
    'El único vaciado y llenado que pone al alcance todos los límites dados, y cuál de ellos lo pide.',
  'function.DILUTION.salt': 'Sal en el agua ahora.',
  'function.DILUTION.fill_salt': 'Sal en el agua de llenado.',
  'function.DILUTION.most_salt': 'Sal como mucho. Sin dato: la sal no pone límite.',
  'function.DILUTION.cyanuric_acid': 'Ácido cianúrico en el agua ahora.',
  'function.DILUTION.fill_cyanuric_acid': 'Ácido cianúrico en el agua de llenado.',
  'function.DILUTION.most_cyanuric_acid': 'Ácido cianúrico como mucho. Sin dato: no pone límite.',
  'function.DILUTION.calcium_hardness': 'Dureza cálcica ahora.',
  'function.DILUTION.fill_calcium_hardness': 'Dureza cálcica del agua de llenado.',
  'function.DILUTION.most_calcium_hardness': 'Dureza cálcica como mucho. Sin dato: no pone límite.',
  'function.DILUTION.total_alkalinity': 'Alcalinidad total ahora.',
  'function.DILUTION.fill_total_alkalinity': 'Alcalinidad total del agua de llenado.',
  'function.DILUTION.most_total_alkalinity': 'Alcalinidad total como mucho. Sin dato: no pone límite.',
  'function.DILUTION.tds': 'Sólidos disueltos ahora.',
  'function.DILUTION.fill_tds': 'Sólidos disueltos del agua de llenado.',
  'function.DILUTION.most_tds': 'Sólidos disueltos como mucho. Sin dato: no ponen límite.',

  'function.DILUTION_FRACTION.says':
    'Parte del agua que hay que sacar y reponer para que una magnitud baje a su límite.',
  'function.DILUTION_FRACTION.now': 'Lo que da ahora.',
  'function.DILUTION_FRACTION.most': 'Lo que puede dar como mucho.',
  'function.DILUTION_FRACTION.fill': 'Lo que da el agua de llenado.',

  'function.DILUTION_ROUNDS.says': 'Vaciados y llenados que renuevan tanto como lo haría uno grande.',
  'function.DILUTION_ROUNDS.drain_fraction': 'Parte del agua que tomaría un solo vaciado.',
  'function.DILUTION_ROUNDS.largest_single_drain': 'Parte que se puede sacar de una vez.',

  'function.ROUND_FRACTION.says': 'Parte que se saca en cada una de varias rondas iguales.',
  'function.ROUND_FRACTION.drain_fraction': 'Parte del agua que tomaría un solo vaciado.',
  'function.ROUND_FRACTION.drain_rounds': 'Número de rondas.',

  'function.CONCENTRATION_AFTER_DILUTION.says': 'Lo que da una magnitud después de reponer parte del agua.',
  'function.CONCENTRATION_AFTER_DILUTION.now': 'Lo que da ahora.',
  'function.CONCENTRATION_AFTER_DILUTION.fill': 'Lo que da el agua de llenado.',
  'function.CONCENTRATION_AFTER_DILUTION.drain_fraction': 'Parte del agua que se repone.',

  'function.CONTINUOUS_EXCHANGE.says':
    'Agua que hay que hacer entrar mientras rebosa lo mismo, para el efecto de un vaciado y llenado.',
  'function.CONTINUOUS_EXCHANGE.drain_fraction': 'Parte del agua que tomaría un solo vaciado.',
  'function.CONTINUOUS_EXCHANGE.volume': 'Volumen del agua.',

  'function.DRAIN_DEPTH.says': 'Cuánto baja el nivel por la pared en una ronda.',
  'function.DRAIN_DEPTH.round_fraction': 'Parte del agua que se saca en una ronda.',
  'function.DRAIN_DEPTH.water_depth_mean': 'Profundidad media del agua.',
  'function.DRAIN_DEPTH.depth_shallow':
    'Profundidad del agua en la parte baja; por debajo de su suelo esto no se calcula.',

  'function.EVAPORATION.says':
    'Agua que se evapora al día de una piscina en uso. El agua en calma midió el 74 % de ello; una piscina llena de gente, el 126 %.',
  'function.EVAPORATION.surface_area': 'Área de la superficie del agua.',
  'function.EVAPORATION.temperature': 'Temperatura del agua de la piscina.',
  'function.EVAPORATION.air_temperature': 'Temperatura del aire sobre ella.',
  'function.EVAPORATION.relative_humidity': 'Humedad relativa del aire, de 0 a 1.',
  'function.EVAPORATION.wind_speed': 'Viento sobre la superficie.',
  'function.MAKE_UP_RISE.says':
    'Cuánto sube el agua que repone la evaporación aquello que trae: la evaporación no se lleva nada de ello.',
  'function.MAKE_UP_RISE.volume': 'Volumen de la piscina.',
  'function.MAKE_UP_RISE.evaporation': 'Agua que se lleva el aire en un día.',
  'function.MAKE_UP_RISE.days': 'Durante cuántos días.',
  'function.MAKE_UP_RISE.fill_total_alkalinity': 'Lo que trae el agua de llenado.',
} as const
