export const casesWater = {
  'case.green_water.label': 'Agua verde',
  'case.green_water.help':
    'Las algas le pueden al cloro. Primero sale la suciedad; luego se mantiene el cloro hasta que la noche no se lleva casi nada.',
  'case.green_water.because': 'El agua se ve verde.',
  'case.green_water.net': 'Recoja con la red lo que yace y lo que flota, y vacíe las cestas.',
  'case.green_water.filter':
    'Limpie el filtro; deje la bomba en marcha día y noche y límpielo otra vez siempre que baje el caudal.',
  'case.green_water.brush': 'Cepille las paredes, los escalones y detrás de la escalera. Bomba en marcha un día.',
  'case.green_water.hold':
    'Al anochecer mida el cloro libre y devuélvalo al nivel de arriba; otra vez dos o tres veces al día hasta que se cumpla la lista de abajo. La célula no ayuda aquí: se muestra lo que produce en un día.',
  'case.green_water.night':
    'Cuando el agua esté clara, mida el cloro libre al anochecer y otra vez antes de salir el sol, con la célula parada entretanto.',
  'case.green_water.clear': 'El agua está tan clara como la quiere la norma.',
  'case.green_water.combined': 'El cloro combinado está dentro del límite de la norma.',
  'case.green_water.overnight': 'Una noche no se lleva más cloro que dos veces lo que distingue el análisis.',
  'case.green_water.not_stabilised': 'Ni dicloro ni tricloro: su estabilizador se queda.',
  'case.green_water.not_cell': 'No espere a que la célula la aclare.',
  'case.green_water.not_swim': 'Nadie se baña hasta que se vea el fondo y se cumpla la lista.',
  'case.stabilizer_high.label': 'Estabilizador acumulado por pastillas',
  'case.stabilizer_high.help': 'Las pastillas y el dicloro dejan su estabilizador. Solo lo saca el agua nueva.',
  'case.stabilizer_high.because': 'El estabilizador supera lo máximo a lo que este plan responde con cloro.',
  'case.stabilizer_high.dilute_test':
    'Un análisis que está en su máximo no dice nada: diluya la muestra y mida otra vez antes de sacar agua.',
  'case.stabilizer_high.no_tablets': 'Saque las pastillas y no añada dicloro.',
  'case.stabilizer_high.renew': 'Renueve esta cantidad de agua, por rondas.',
  'case.stabilizer_high.down': 'El estabilizador es como mucho aquel al que el plan responde con cloro.',
  'case.stabilizer_high.ratio': 'Está a 20 : 1 del cloro libre o menos.',
  'case.stabilizer_high.not_chlorine': 'No responda con más de 10 mg/L de cloro.',
  'case.ph_rises.label': 'El pH sube cada semana',
  'case.ph_rises.help':
    'El dióxido de carbono sale del agua de mucha alcalinidad hasta que el pH queda frente al aire. Menos alcalinidad, menos aire y menos célula lo frenan; perseguir un pH bajo lo alimenta.',
  'case.ph_rises.because': 'El pH sube 0,2 o más a la semana.',
  'case.ph_rises.air': 'Hasta aquí lleva el aire el pH, y este es el ácido que cuesta a la semana.',
  'case.ph_rises.less_air':
    'Retornos hacia abajo, fuentes y cascadas paradas, y la piscina cubierta cuando no hay nadie en ella.',
  'case.ph_rises.less_cell':
    'Baje el ajuste de la célula: con el estabilizador adecuado tiene que funcionar menos horas.',
  'case.ph_rises.borate': 'El borato frena lo que queda, donde la ley lo permite.',
  'case.ph_rises.slow': 'El pH sube menos de 0,2 a la semana.',
  'case.ph_rises.not_chase': 'No persiga nunca un pH de 7,2: cada gota de ácido lo deja subir más deprisa.',
  'case.alkaline_fill.label': 'Agua de llenado alcalina',
  'case.alkaline_fill.help':
    'La carga real es lo que trae cada semana el agua de reposición; la piscina se corrige para eso, poco a poco.',
  'case.alkaline_fill.because': 'El agua de llenado es más alcalina que el intervalo de esta piscina.',
  'case.alkaline_fill.load':
    'Esto es lo que trae la reposición en una semana. El lavado del filtro y las salpicaduras van aparte.',
  'case.alkaline_fill.spread':
    'Reparta su ácido en la semana, cada dosis según un análisis, y deje entrar aire entre ellas.',
  'case.alkaline_fill.cover': 'Una cubierta evita la mayor parte de la reposición.',
  'case.alkaline_fill.holds': 'La alcalinidad se mantiene en su intervalo de una semana a la otra.',
  'case.alkaline_fill.not_at_once': 'No quite la carga de un mes en una sola dosis.',
  'case.combined_indoors.label': 'Cloro combinado bajo techo',
  'case.combined_indoors.help':
    'El aire y el agua nueva van antes que el cloro. Nunca se dosifica diez veces la medición.',
  'case.combined_indoors.because': 'El cloro combinado supera el límite en una piscina bajo techo.',
  'case.combined_indoors.test': 'Mida otra vez el cloro libre y el total: el monopersulfato se lee como combinado.',
  'case.combined_indoors.air': 'Abra puertas, ponga ventiladores y haga entrar aire de fuera.',
  'case.combined_indoors.renew': 'Renueve agua: una guía pide 30 litros por cada bañista del día.',
  'case.combined_indoors.dose':
    'Si sigue ahí, un solo tratamiento por estequiometría con la piscina cerrada; se muestra la dosis.',
  'case.combined_indoors.dilute': 'Si no bajó, renueve más agua. No dosifique otra vez.',
  'case.combined_indoors.low': 'El cloro combinado está dentro del límite.',
  'case.combined_indoors.not_ten': 'Nunca diez veces el cloro combinado.',
  'case.metal_stain.label': 'Una mancha de metal',
  'case.metal_stain.help':
    'Primero el origen. Luego baja el cloro, el ácido ascórbico levanta la mancha y un secuestrante retiene el metal antes de que vuelva el cloro.',
  'case.metal_stain.because': 'Se vieron manchas en el revestimiento, o el agua está marrón.',
  'case.metal_stain.source':
    'Halle de dónde viene el metal antes de levantar nada: agua de llenado, el cobre de un calentador, un algicida.',
  'case.metal_stain.test': 'Mida hierro y cobre en el agua y en el agua de llenado.',
  'case.metal_stain.spot':
    'Apoye una pastilla de vitamina C en la mancha medio minuto: una de hierro palidece, una de hojas no.',
  'case.metal_stain.fall':
    'Deje bajar el cloro, con la célula parada. Lo que queda se lleva primero esta parte del neutralizador.',
  'case.metal_stain.lift': 'Ácido ascórbico según su etiqueta a lo largo de las paredes manchadas; baja el pH.',
  'case.metal_stain.hold':
    'Un secuestrante según su etiqueta y el filtro limpio antes de que vuelva el cloro; luego cloro en pasos pequeños.',
  'case.metal_stain.iron_low': 'El hierro está por debajo de lo que mancha.',
  'case.metal_stain.not_chlorine': 'Ninguna dosis grande de cloro: vuelve a depositar el metal.',
  'case.faecal_accident.label': 'Un accidente fecal en una piscina pública',
  'case.faecal_accident.help':
    'La norma y la autoridad sanitaria van primero. Los tiempos vienen solo de tablas publicadas; ninguno se calcula del ácido hipocloroso donde hay estabilizador.',
  'case.faecal_accident.because': 'Llegaron heces o diarrea al agua.',
  'case.faecal_accident.dilute_first':
    'Estabilizador por encima de 15 mg/L, o no conocido: primero renueve agua. Más arriba no vale ningún tiempo publicado.',
  'case.faecal_accident.conditions': 'Las tablas valen a pH 7,5 o menos y a 25 °C o más.',
  'case.faecal_accident.close': 'Todos fuera. Cierre todas las piscinas que comparten el mismo filtro.',
  'case.faecal_accident.call':
    'La norma local y la autoridad sanitaria dicen qué se hace; sígalas donde difieran de esto.',
  'case.faecal_accident.remove':
    'Saque lo que se pueda con una red o una pala, nunca con el limpiafondos; desinfecte la herramienta.',
  'case.faecal_accident.condition':
    'Lleve el pH a 7,5 o menos y el agua a 25 °C o más, y cloro sin estabilizador al nivel de la tabla en todos los puntos.',
  'case.faecal_accident.hold':
    'Manténgalo este tiempo desde que todos los puntos lo den. Filtro en marcha, agua en movimiento.',
  'case.faecal_accident.after':
    'Lave el filtro hacia el desagüe, deje bajar el cloro a lo que permite la norma, mida y abra solo como diga la norma.',
  'case.faecal_accident.table': 'La tabla publicada tiene un tiempo para esta agua.',
  'case.faecal_accident.not_hocl': 'Ningún tiempo propio calculado del ácido hipocloroso.',
  'case.faecal_accident.not_between': 'Ningún tiempo entre dos filas de la tabla.',
  'case.borate.label': 'Borato',
  'case.borate.help':
    'El borato se cuenta como boro, se compre como se compre. El bórax sube el pH y va con ácido; el ácido bórico no.',
  'case.borate.because': 'Se da un objetivo de borato.',
  'case.borate.law': 'Mire si donde está usted la ley permite el borato en las piscinas.',
  'case.borate.as_boron': 'Lea la etiqueta del análisis: 50 mg/L como boro son 286 mg/L como ácido bórico.',
  'case.borate.there': 'El borato está dentro del error del análisis respecto de su objetivo.',
  'case.borate.not_twice': 'El borato se queda: solo se va con el agua, así que ninguna segunda dosis sin un análisis.',
  'case.old_bottle.label': 'Un frasco viejo o caliente',
  'case.old_bottle.help':
    'El cloro se va de un frasco en unas horas, y un frasco toma la temperatura del coche: cuenta la de la propia piscina.',
  'case.old_bottle.because': 'El frasco tiene más de dos horas, u otra temperatura que la piscina.',
  'case.old_bottle.pool_temperature': 'Indique la temperatura de la propia piscina, no la del frasco.',
  'case.old_bottle.at_the_pool': 'Mida cloro y pH en la piscina.',
  'case.old_bottle.fresh': 'La muestra tiene como mucho dos horas.',
  'case.old_bottle.not_chlorine': 'Ninguna dosis de cloro por un frasco viejo.',
} as const
