export const cautions = {
  'caution.label_first': 'La etiqueta del producto y la norma local van primero.',
  'caution.one_at_a_time': 'Un producto cada vez, bomba en marcha, nadie en el agua; espere antes del siguiente.',
  'caution.protective_gear':
    'Gafas y guantes. Ojos o piel: enjuague con agua corriente 15 minutos, aire fresco, el número de emergencias.',
  'caution.ventilate':
    'Bajo techo, abra las puertas y ponga los ventiladores; al aire libre, colóquese a favor del viento, de espaldas a él.',
  'caution.acid_into_water': 'El ácido sobre el agua, nunca el agua sobre el ácido.',
  'caution.acid_where':
    'Célula parada, bomba en marcha, en la parte honda, no en el skimmer; nada de cloro de ninguna fuente en una hora.',
  'caution.acid_rest_between': 'Espere una recirculación y mida otra vez antes de la parte siguiente.',
  'caution.chlorine_with_acid':
    'Que el ácido y el cloro nunca se encuentren: otro lugar, otra pala y otra hora. Juntos hacen gas de cloro.',
  'caution.chlorine_kinds_apart':
    'El hipoclorito de calcio, el dicloro y el tricloro nunca comparten pala, dosificador ni skimmer: fuego y explosión.',
  'caution.breakpoint_test_first':
    'Mida otra vez antes: algunos oxidantes se leen como cloro combinado. Ventile y renueve agua antes que cloro; un solo tratamiento con la piscina cerrada, nunca diez veces la medición.',
  'caution.stabilizer_slow':
    'En una malla junto a un retorno, sin lavar el filtro de 5 a 7 días, sin segunda dosis ni análisis antes de una semana. No se puede volver a sacar.',
  'caution.salt_cell_off': 'Célula parada mientras se añade la sal y hasta que esté disuelta y mezclada.',
  'caution.salt_spread':
    'Alrededor del borde con la bomba en marcha, no por el skimmer; cepille hasta que no quede nada en el fondo.',
  'caution.salt_circulate': 'Haga circular 24 horas, mida de una segunda forma y luego ponga la célula en marcha.',
  'caution.calcium_hot': 'Se calienta al disolverse: primero agua fría en el cubo, luego las escamas por porciones.',
  'caution.calcium_apart': 'No dentro del mismo día que bicarbonato o carbonato de sodio: el agua se enturbia.',
  'caution.carbonate_apart': 'No dentro del mismo día que calcio: el agua se enturbia.',
  'caution.soda_ash_clouds': 'Disuélvalo primero y añádalo por partes; enturbia donde suben el pH o el índice.',
  'caution.caustic_burns':
    'Quema la piel y los ojos y se calienta mucho en el agua: sobre el agua, en partes pequeñas.',
  'caution.borate_law': 'Algunos países limitan los boratos en las piscinas; que los animales no beban el agua.',
  'caution.shell_lift':
    'El agua del terreno puede levantar o agrietar un vaso vacío: mire su nivel y la válvula de alivio, saque solo una parte y, en la duda, pregunte a un profesional.',
  'caution.liner_shrinks': 'Nunca menos de 30 cm en la parte baja de una piscina de vinilo: la lámina encoge o flota.',
  'caution.runs_dry': 'Célula, calentador y bomba parados antes de que el nivel pase el skimmer.',
  'caution.discharge_rules':
    'El agua salada puede estar prohibida en pluviales, césped y fosa séptica: primero la norma local.',
  'caution.dechlorinate_first': 'Sin cloro y con el pH comprobado antes de que salga.',
  'caution.electrical':
    'El trabajo eléctrico es de un electricista autorizado; la toma tiene un interruptor diferencial. Corte la corriente antes de abrir nada.',
  'caution.no_flow_no_current': 'Sin caudal, sin corriente: en una célula quieta se acumula hidrógeno.',
  'caution.cell_off_first':
    'Corte bomba y célula en el interruptor, desenchufe, cierre las válvulas, abra el purgador hasta que no haya presión y entonces retírela.',
  'caution.cell_rinse_first': 'Enjuáguela antes con agua: lo que queda de cloro hace gas con el ácido.',
  'caution.cell_vinegar':
    'Solo donde se ve cal: solo las placas, al aire libre, en vinagre de cocina del 5 % de dos a tres horas, el conector seco, sin herramienta de metal. Un vinagre más fuerte es otro producto.',
} as const
