export const planWords = {
  'plan.step.dose': 'Añada {amount} de {product}.',
  'plan.step.dose_packs':
    'Añada {amount} de {product}: {whole|un envase entero|# envases enteros} de {pack} y {rest} medidos.',
  'plan.step.dose_at_most': 'Añada después el resto de {product} según la nueva medición, como mucho {amount}.',
  'plan.step.daily_chlorine':
    '{days|Reponga a mano lo que se llevó el día: |Cada uno de # días reponga a mano lo que se llevó el día: }{amount} de {product}.',
  'plan.step.sequestrant': 'Añada un secuestrante según su propia etiqueta, por {readings}.',
  'plan.step.dilute': 'Saque {amount}, el {percent} % del agua, y vuelva a llenar (ronda {round}).',
  'plan.step.dilute_depth':
    'Baje el nivel {centimetres} ({amount}, el {percent} % del agua) y vuelva a llenar (ronda {round}).',
  'plan.step.aerate':
    'Deje entrar aire en el agua {hours} horas: retornos hacia arriba, fuentes y chorros en marcha, sin cubierta.',
  'plan.step.carbonate_settles':
    'Espere {hours} horas, para que el bicarbonato o el carbonato de sodio y el calcio no se encuentren.',
  'plan.step.let_fall': 'No añada cloro en {hours} horas y déjelo bajar.',
  'plan.step.stabilizer_acid':
    'Deje que el estabilizador se disuelva {hours} horas con la bomba en marcha y los retornos hacia arriba: es un ácido, y el pH vuelve según sale el dióxido de carbono.',
  'plan.step.stabilizer_dissolves':
    'Deje que el estabilizador se disuelva {hours} horas; entretanto no lave el filtro.',
  'plan.step.tomorrow': 'Basta por hoy. Siga mañana, dentro de {hours} horas.',
  'plan.step.cell_on': 'Ponga la célula en marcha.',
  'plan.step.cell_on_hours': 'Ponga la célula en marcha {hours} horas al día.',
  'plan.case.text': '{text}',
  'plan.case.asks': 'Todavía no se sabe: {readings}. Hasta entonces esto sigue en pie.',

  'plan.how.acid':
    'Bomba en marcha, célula parada. Viértalo despacio y cerca del agua a lo largo de la parte honda, nunca en el skimmer.',
  'plan.how.pour': 'Viértalo despacio a lo largo del borde, delante de un retorno, con la bomba en marcha.',
  'plan.how.discharge':
    'Deje antes que baje su cloro, con la célula parada, o quítelo con un neutralizador en la manguera; pregunte adónde puede ir el agua salada.',
  'plan.how.dissolve':
    'Disuélvalo primero en un cubo de agua de la piscina y viértalo a lo largo del borde con la bomba en marcha.',
  'plan.how.soda_ash':
    'Disuélvalo primero en un cubo de agua de la piscina; viértalo repartido con la bomba en marcha. Algo de turbidez se pasa.',
  'plan.how.calcium':
    'Primero agua fría en el cubo, luego las escamas por porciones; viértalo repartido con la bomba en marcha.',
  'plan.how.stabilizer':
    'Cuélguelo en una malla delante de un retorno. No lave el filtro de cinco a siete días; la célula y la bomba pueden funcionar.',
  'plan.how.salt':
    'Célula parada. Repártala alrededor del borde con la bomba en marcha y cepille hasta que no quede nada en el fondo; no por el skimmer.',
  'plan.how.tablets': 'En un dosificador propio, flotante o fijo, nunca en el skimmer.',
  'plan.how.drain':
    'Célula, calentador y bomba parados antes de que el nivel pase el skimmer; otra vez en marcha cuando haya vuelto.',
  'plan.how.half': 'Esto es la mitad de lo que puede hacer falta; el análisis que sigue dice cuánto hizo.',
  'plan.how.dusk': 'Al anochecer, con la bomba en marcha.',
  'plan.how.closed': 'Mantenga la piscina cerrada hasta que el cloro dé bastante.',
  'plan.how.closed_treatment':
    'Solo si el nuevo análisis da lo mismo: una vez, con la piscina cerrada, bajo techo con puertas abiertas y ventiladores en marcha, y parte del agua renovada.',
  'plan.how.by_label': 'Cantidad y forma según su etiqueta.',
  'plan.how.cell_again': 'La célula vuelve a ponerse en marcha pasada la hora.',
  'plan.how.cell_on': 'Solo con caudal por la célula y el agua bastante templada para ella.',
  'plan.how.sample':
    'Tome el frasco a la profundidad del codo, lleno y cerrado, sin sol, antes de dos horas; anote la temperatura de la propia piscina.',

  'plan.caution.label': 'La etiqueta del producto y la norma local van primero.',
  'plan.caution.acid':
    'El ácido sobre el agua, nunca el agua sobre el ácido. Guantes y gafas; colóquese de espaldas al viento.',
  'plan.caution.acid_and_chlorine':
    'El ácido y el cloro nunca se encuentran: otro lugar, otra pala, una hora de por medio, nunca un mismo recipiente. Dan un gas venenoso.',
  'plan.caution.chlorines_apart':
    'El hipoclorito de calcio, el dicloro y el tricloro nunca comparten pala, dosificador ni skimmer: arden o estallan.',
  'plan.caution.calcium_heats': 'El cloruro de calcio se calienta mucho al disolverse.',
  'plan.caution.borate':
    'Algunos países limitan el borato en el agua de piscina y su venta; que los animales no la beban.',
  'plan.caution.undissolved': 'Nada puede quedar sin disolver sobre este revestimiento: blanquea, quema o mancha.',
  'plan.caution.out_of_water': 'Nadie en el agua mientras se dosifica, ni cuando una bomba parada arranca otra vez.',
  'plan.caution.large_chlorine':
    'Calentador, cubierta y juegos de agua parados mientras el cloro sea alto; bajo techo, puertas abiertas y ventiladores.',
  'plan.caution.finish_maker': 'La hoja de quien hizo el acabado va primero.',
  'plan.caution.shell_lifts':
    'El agua del terreno puede levantar o agrietar un vaso y una lámina puede encoger: compruebe la capa freática y la válvula de alivio, no vacíe nunca la piscina.',
  'plan.caution.runs_dry': 'El equipo que marcha en seco se rompe; corte la corriente en su interruptor.',
  'plan.caution.discharge':
    'Adónde puede ir el agua es ley local: como mucho {most} mg/L de cloro en muchos lugares, y el agua salada a menudo prohibida en pluviales, césped y fosa séptica.',
  'plan.caution.dechlorinate':
    'Esta agua tiene cloro todavía: quítelo o déjelo bajar a {most} mg/L antes de que salga.',

  'plan.gate.no_flow': 'No se añade nada hasta que la bomba mueva el agua.',
  'plan.gate.dirty_filter': 'No se añade nada hasta que el filtro esté limpio.',
  'plan.gate.low_water': 'No se añade nada hasta que el agua llegue otra vez al skimmer.',
  'plan.gate.other_sanitizer':
    'Esta piscina se mantiene con {sanitizer}; los pasos de cloro, estabilizador y célula no valen para ella y quedan fuera.',
  'plan.gate.bleached_test':
    'El cloro libre da {free} mg/L y hay motivo para dudar: un análisis blanqueado da casi nada en una piscina que puede tener treinta. Ni cloro ni ácido.',
  'plan.gate.high_chlorine':
    'El cloro libre es {free} mg/L. Por encima de {most} mg/L yerran los análisis de pH y alcalinidad: ni ácido ni nada para la alcalinidad hasta que haya bajado.',
  'plan.gate.fresh_plaster': 'El enlucido tiene menos de {days} días: ni sal, ni célula, ni pastillas.',

  'plan.retest.censored':
    'Mida otra vez {readings} de modo que dé un número: diluya la muestra donde pasó del máximo del análisis.',
  'plan.retest.free_over_total':
    'Mida otra vez {readings}, con tubos limpios y reactivos nuevos: el cloro libre es parte del total y no puede superarlo.',
  'plan.retest.no_such_water':
    'Mida otra vez {readings}: tanto estabilizador a este pH daría por sí solo más alcalinidad de la hallada.',
  'plan.retest.at_the_pool': 'Mida {readings} en la piscina: el frasco tiene {hours} horas.',
  'plan.retest.diluted':
    'Mida otra vez {readings}: una parte de la muestra con {parts} partes de agua sin cloro, o una valoración por FAS-DPD.',
  'plan.retest.after_fall': 'Mida otra vez {readings} antes que nada.',
  'plan.retest.discharge':
    'Antes de que salga agua, mida {readings} donde sale: como mucho {most} mg/L de cloro, y pH de {low} a {high} donde la ley no diga otro.',
  'plan.retest.after_filling': 'Mida {readings} cuando la bomba haya mezclado el agua.',
  'plan.retest.salt_apart':
    'Las mediciones de sal difieren en {apart} mg/L: nada de sal. Mida otra vez con una muestra nueva, por dos métodos; busque agua fría, cal, aire y poco caudal.',
  'plan.retest.salt_alarm':
    'La palabra de la célula sola no es una medición: nada de sal. Mida el agua; el frío, la cal, las placas gastadas, el poco caudal, el aire y el cableado también se leen como poca sal.',
  'plan.retest.salt_second': 'Mida la sal por un segundo método.',
  'plan.retest.stabilizer_second': 'Mida otra vez el estabilizador; solo se mide bien al cabo de una semana.',
  'plan.retest.calcium_second': 'Mida otra vez el calcio.',
  'plan.retest.borate_second': 'Mida otra vez el borato.',
  'plan.retest.combined':
    'Mida otra vez {readings}: el monopersulfato se lee como cloro combinado. Abra puertas, ponga ventiladores, renueve parte del agua.',
  'plan.retest.combined_after':
    'Mida otra vez {readings}. Si el cloro combinado no bajó, renueve agua; no repita la dosis.',
  'plan.retest.chlorine_falls': 'Mida el cloro libre cada día hasta que haya bajado a su objetivo.',
  'plan.retest.test_error':
    'Mida primero otra vez {readings}: el error del análisis solo podría volver del revés lo que dice este plan.',
  'plan.retest.each_day':
    'Hasta que la célula produzca cloro, mida el cloro libre cada día y reponga a mano lo que falte.',
  'plan.retest.last': 'Mida otra vez {readings}.',

  'plan.verdict.at_target':
    'Nada que añadir: {reading} está dentro del error del análisis respecto del objetivo, {target}.',
  'plan.verdict.hardly_low':
    'Nada que añadir: está por debajo del objetivo, {target}, apenas más que el error del análisis; el aire, y una célula que funcione, lo suben.',
  'plan.verdict.in_range': 'Nada que añadir: {reading} está en el intervalo de esta piscina.',
  'plan.verdict.low': 'Por debajo del objetivo, {target}.',
  'plan.verdict.high': 'Por encima de {target}.',
  'plan.verdict.over': 'Por encima del máximo, {most}: se renueva agua.',
  'plan.verdict.no_target_low':
    '{reading} está por debajo del intervalo de esta piscina. No hay objetivo, así que no se dosifica nada.',
  'plan.verdict.no_target_high':
    '{reading} está por encima del intervalo de esta piscina. No hay objetivo, así que no se hace nada.',
  'plan.verdict.missing': 'Queda fuera: sin {names}.',
  'plan.verdict.refused': 'Queda fuera: la hoja no tiene cantidad para ello.',
  'plan.verdict.failed_gate': 'La medición no se usa; primero se mide otra vez.',
  'plan.verdict.rests_on': 'Queda fuera: se apoya en {names}, que hay que medir otra vez.',
  'plan.verdict.kept_out': 'Queda fuera por la regla «{rule}».',
  'plan.verdict.test_error':
    '{reading} está tan cerca del extremo del intervalo que el error del análisis podría cambiarlo.',
  'plan.verdict.falls': 'Por encima del objetivo, {target}: baja por sí solo.',
  'plan.verdict.chlorine_lost': 'Sin la demanda diaria no se sabe lo que dejan de él las esperas.',
  'plan.verdict.salt_high':
    'No hay que comprar sal: hay más que el objetivo, {target}. Solo la baja la dilución, donde se da un máximo.',
  'plan.verdict.calcium_high':
    'No hay que comprar calcio: hay más que el objetivo, {target}. Solo lo baja la dilución.',
  'plan.verdict.stabilizer_high':
    'No hay que comprar estabilizador: hay más que el objetivo, {target}. Solo lo baja la dilución.',
  'plan.verdict.no_calcium_wall': 'No hay que comprar calcio: esta pared no tiene nada que perder.',
  'plan.verdict.calcium_from_plaster':
    'Todavía no hay que comprar calcio: el enlucido que fragua lo suelta por sí solo.',
  'plan.verdict.no_stabilizer_spa': 'No hay que comprar estabilizador: en un spa no va ninguno.',
  'plan.verdict.still_dissolving':
    'El último estabilizador se disuelve todavía; mida otra vez dentro de {days|un día|# días}.',
  'plan.verdict.over_ratio': 'El estabilizador está en {ratio} a 1 del cloro deseado; se busca {aim} a 1 o menos.',
  'plan.verdict.phosphate': 'No hay que comprar nada contra el fosfato: por sí solo no pide ningún paso.',

  'plan.cell.salt_unknown': 'hay que medir otra vez la sal',
  'plan.cell.not_tested': 'hay que medir otra vez',
  'plan.cell.salt_low': 'la sal está por debajo del intervalo de la célula',
  'plan.cell.salt_high': 'la sal está por encima del intervalo de la célula',
  'plan.cell.flow': 'el caudal es menor del que necesita la célula',
  'plan.cell.cold': 'el agua está demasiado fría',
  'plan.cell.ph': 'el pH es demasiado alto',
  'plan.cell.lsi': 'el índice es demasiado alto: cal',

  'plan.swim.yes': 'Se puede bañar la gente, donde la etiqueta y la norma local lo digan también.',
  'plan.swim.no': 'Todavía no se baña nadie.',
  'plan.swim.stale': 'No antes de un nuevo análisis.',
  'plan.swim.why_foretold':
    'Nadie ha analizado esta agua: es lo que se prevé de otra. Analícela antes de que alguien se bañe y antes de añadir nada.',
  'plan.swim.why_stale':
    'Esta agua se analizó hace {days} días: mida de nuevo el cloro libre y el pH antes de que alguien se bañe y antes de añadir nada.',
  'plan.swim.case': 'La piscina está cerrada: {rule}.',
  'plan.swim.chlorine_unknown': 'Hay que medir el cloro libre.',
  'plan.swim.chlorine_low': 'El cloro libre, {free} mg/L, está por debajo del mínimo, {least}.',
  'plan.swim.chlorine_high': 'El cloro libre, {free} mg/L, está por encima del máximo, {most}.',
  'plan.swim.ratio': 'El estabilizador es más de {closing} veces el cloro libre; ahí un código cierra la piscina.',
  'plan.swim.ph_unknown': 'Hay que medir el pH.',
  'plan.swim.ph': 'El pH {ph} está fuera de lo que pueden tener los bañistas.',
  'plan.swim.after':
    'Tras el paso {step} y un análisis nuevo que dé lo previsto, donde la etiqueta y la norma local lo digan también.',
  'plan.swim.floor': 'No se ve el fondo.',
  'plan.swim.turbid': 'El agua no está clara: {turbidity} NTU.',
  'plan.swim.combined': 'El cloro combinado es {combined} mg/L.',

  'plan.product.sequestrant': 'secuestrante',
  'plan.product.water': 'agua',

  'problem.plan_rules': '{path}: esto no es un conjunto válido de reglas del plan.',
  'problem.plan_too_shallow': '{path}: no se puede sacar agua sin dejar demasiado poca en la parte baja de una lámina.',
  'problem.plan_product_barred': '{path}: un caso que se da deja fuera estos productos: {products}.',
  'problem.rule_not_known': '{path}: las reglas no tienen ese valor.',
  'problem.rule_outside': '{path}: {found} no está entre {least} y {most}; más allá, la regla no protegería a nadie.',
  'problem.plan_kept_out': '{path}: una regla deja fuera este paso: {rule}.',
  'problem.plan_index_first':
    '{path}: el índice pasaría de {lsi}; baje primero el pH o la alcalinidad. Se puede alcanzar {reached} de los {wanted} deseados.',
  'problem.plan_ph_first': '{path}: bajaría el pH por debajo de {least}; antes tiene que subir el pH.',
  'problem.plan_no_stabilizer_spa': '{path}: en un spa no va ningún estabilizador.',
  'problem.plan_still_dissolving': '{path}: el último estabilizador se disuelve todavía.',
  'problem.plan_cell_stays_off': '{path}: la célula sigue parada.',
  'problem.plan_falls': '{path}: el cloro libre, {free}, tiene que bajar primero a {wanted}; no se conoce la demanda.',
  'problem.plan_least_first':
    '{path}: el objetivo, {target}, es demasiado poco para la norma o para tanto estabilizador; el plan mantiene {end}.',
  'problem.plan_risen_over':
    '{path}: los pasos lo llevan a {end}, por encima de su máximo; mida otra vez al final y renueve agua entonces.',
  'problem.plan_not_met': '{path}: el objetivo, {target}, no se cumple al final.',
  'problem.plan_limit_under_target':
    '{path}: el máximo, {most}, está por debajo de aquello hasta lo que dosifica el plan, {least}.',
  'plan.step.dose_whole_packs': 'Añada {amount} de {product}: {whole|un envase entero|# envases enteros} de {pack}.',
  'plan.verdict.runs_short': 'Ahora basta; el agua nueva y las esperas lo llevan por debajo del objetivo, {target}.',
} as const
