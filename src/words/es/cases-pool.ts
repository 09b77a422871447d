export const casesPool = {
  'case.first_fill.label': 'Primer llenado, o agua de pozo',
  'case.first_fill.help':
    'En el agua nueva se miden metales antes de que el cloro llegue a ella, y el volumen cuenta el agua, no la pared.',
  'case.first_fill.because': 'La piscina se llenó por primera vez.',
  'case.first_fill.metals_first': 'Nada de cloro hasta que se midan hierro y cobre.',
  'case.first_fill.depth':
    'Mida la profundidad del agua, no la altura de la pared, y deje que la hoja de la piscina calcule el volumen.',
  'case.first_fill.mix': 'Deje que la bomba mezcle un día el agua nueva.',
  'case.first_fill.metals': 'Mida hierro, cobre y manganeso.',
  'case.first_fill.seasons':
    'Mire el índice a la temperatura de hoy y a la más fría de la temporada: busque que ninguno quede fuera de su intervalo.',
  'case.first_fill.held': 'El hierro está por debajo de lo que mancha.',
  'case.first_fill.not_large': 'Ninguna dosis grande de cloro en un agua que puede tener metal.',
  'case.cell_says_low.label': 'La célula dice poca sal, otro análisis dice bastante',
  'case.cell_says_low.help':
    'Muchas cosas se leen como poca sal. No se añade sal antes de una segunda medición, nueva; la sal no se puede volver a sacar.',
  'case.cell_says_low.because': 'La célula marca por debajo de su intervalo, y el agua se midió dentro de él.',
  'case.cell_says_low.fresh': 'Tome una muestra nueva y mida la sal por un segundo método.',
  'case.cell_says_low.look':
    'Busque agua fría, cal en las placas, poco caudal, aire en la tubería, caudal invertido y cables sueltos.',
  'case.cell_says_low.keep':
    'Si los dos análisis concuerdan y la célula no, conserve la diferencia como corrección de esta célula en la nota del cuaderno.',
  'case.cell_says_low.agree': 'Los análisis concuerdan dentro de lo que pediría otro.',
  'case.cell_says_low.not_salt': 'Nada de sal solo por la palabra de la célula.',
  'case.over_salted.label': 'Demasiada sal',
  'case.over_salted.help':
    'Solo el agua nueva baja la sal: al máximo del intervalo de la célula menos el error del análisis.',
  'case.over_salted.because': 'La sal supera el intervalo de la célula en más que el error del análisis.',
  'case.over_salted.cell': 'Célula parada. Se muestra el agua que hay que renovar.',
  'case.over_salted.inside': 'La sal está dentro del intervalo de la célula.',
  'case.over_salted.not_all': 'No vacíe la piscina.',
  'case.under_salted.label': 'Demasiado poca sal',
  'case.under_salted.help':
    'La sal sube al centro del intervalo de la célula, en dos partes con una segunda medición entre ellas.',
  'case.under_salted.because': 'La sal está por debajo del intervalo de la célula en más que el error del análisis.',
  'case.under_salted.leak':
    'Pregunte adónde fue la sal: solo se va con el agua. Dos mediciones de sal con unos días entre ellas dicen una fuga.',
  'case.under_salted.inside': 'La sal está dentro del intervalo de la célula.',
  'case.spa.label': 'Un spa',
  'case.spa.help': 'Poca agua, caliente y llena de gente: dosis pequeñas, sin estabilizador y agua nueva a menudo.',
  'case.spa.because': 'El vaso es un spa.',
  'case.spa.too_hot': 'Por encima de 40 °C no entra nadie.',
  'case.spa.measure': 'Las dosis van en gramos y mililitros: péselas y mídalas, nunca a ojo con el tapón.',
  'case.spa.model': 'El ácido hipocloroso no se calcula por encima de 35 °C: guíese por el cloro libre y la norma.',
  'case.spa.renew': 'Renueve el agua a menudo; mida antes de cada uso.',
  'case.spa.warm': 'El agua está a 40 °C o menos.',
  'case.spa.not_stabilizer': 'Nada de estabilizador, ni de cloro que lo traiga.',
  'case.plaster_start_up.label': 'Enlucido en sus primeros 28 días',
  'case.plaster_start_up.help':
    'La sal y las pastillas pican el enlucido reciente. La hoja de quien hizo el acabado va primero.',
  'case.plaster_start_up.because': 'El enlucido tiene menos días de los que fragua.',
  'case.plaster_start_up.early_stabilizer':
    'Nada de estabilizador antes del día 4, y entonces disuelto, nunca en granos sobre el fondo.',
  'case.plaster_start_up.sheet': 'Lea la hoja de quien hizo el acabado: donde difiera, vale ella.',
  'case.plaster_start_up.brush': 'Cepille todo el vaso cada día y mida el pH cada día.',
  'case.plaster_start_up.heater':
    'Calentador parado, ningún limpiafondos con ruedas, ningún dosificador flotante, nadie dentro con nada cortante.',
  'case.plaster_start_up.cured': 'El enlucido ha tenido sus días.',
  'case.plaster_start_up.not_salt': 'Hasta entonces, ni sal, ni célula, ni pastillas.',
  'case.leak.label': 'Una fuga que pierde sal',
  'case.leak.help':
    'La evaporación no se lleva sal, así que la caída de la sal dice cuánta agua se fue. Dos mediciones lo dicen solo a grandes rasgos.',
  'case.leak.because': 'La sal cayó más que el error de los dos análisis.',
  'case.leak.loss': 'Esta agua se fue con su sal, y el error del análisis por sí solo la deja entre estas.',
  'case.leak.subtract': 'Reste lo que se llevaron el lavado del filtro y las salpicaduras; lo que queda es la fuga.',
  'case.leak.bucket':
    'Ponga un día un cubo con agua de la piscina en un escalón, con los niveles marcados dentro y fuera, con la bomba en marcha y luego parada. Si la piscina baja más que el cubo, pierde.',
  'case.leak.not_salt_first': 'No siga añadiendo sal: halle adónde va el agua.',
  'case.cell_scale.label': 'Cal en la célula',
  'case.cell_scale.help':
    'En las placas el pH es una unidad mayor que en la piscina, más o menos: una piscina en equilibrio puede depositar cal allí.',
  'case.cell_scale.because': 'Se vio cal en la célula.',
  'case.cell_scale.index': 'Este es el índice en la piscina, y en las placas.',
  'case.cell_scale.open':
    'Corte bomba y célula en el interruptor, desenchufe, cierre las válvulas, abra el purgador hasta que no haya presión y entonces retire la célula.',
  'case.cell_scale.rinse': 'Enjuáguela con agua: lo que queda de cloro hace gas con el ácido.',
  'case.cell_scale.soak':
    'Deje solo las placas en vinagre de cocina del 5 % de dos a tres horas, al aire libre, el conector seco, sin herramienta de metal.',
  'case.cell_scale.refit': 'Enjuague, monte otra vez, bomba en marcha, busque fugas y luego la corriente.',
  'case.cell_scale.causes':
    'Mire si la célula invierte su corriente como debe; la cal que deja el vinagre puede ser de fosfato.',
  'case.cell_scale.no_scale': 'El índice de la piscina es como mucho aquel con el que puede funcionar la célula.',
  'case.cell_scale.not_stronger': 'Ningún ácido más fuerte, y nada que raspe.',
  'case.closing.label': 'Cierre para el invierno',
  'case.closing.help':
    'El agua fría disuelve la cal: se mira el índice a la temperatura del invierno, y la célula se libra de la helada.',
  'case.closing.because': 'La piscina se va a cerrar.',
  'case.closing.cold': 'Este es el índice ahora, y en el agua más fría si el pH se mantiene.',
  'case.closing.clean': 'Red, cepillo y filtro limpio; mantenga el cloro en su objetivo hasta que se cierre el agua.',
  'case.closing.cell': 'Corte la célula en el interruptor; retírela o vacíela, y guárdela de la helada.',
  'case.closing.lines':
    'Vacíe bomba, filtro y calentador; sople las tuberías y tápelas. Deje la mayor parte del agua en la piscina.',
  'case.closing.cold_index': 'El índice en el agua más fría no está por debajo de su intervalo.',
  'case.closing.not_salt': 'La sal a 3200 mg/L no evita que el agua se hiele, así que no añada para eso.',
  'case.closing.not_empty': 'No vacíe la piscina.',
  'case.opening.label': 'Apertura tras el invierno',
  'case.opening.help':
    'El agua del invierno está en capas: una muestra de ella no dice nada hasta que se mezcla un día.',
  'case.opening.because': 'La piscina se abrió y no se ha mezclado todavía un día.',
  'case.opening.fill': 'Quite la cubierta, pase la red, llene hasta el skimmer, monte la célula y déjela parada.',
  'case.opening.pump': 'Busque fugas y aire, y luego bomba en marcha.',
  'case.opening.mix': 'Déjela mezclar un día.',
  'case.opening.sample':
    'Solo entonces tome la muestra, mídalo todo y diga en la piscina que no hay nada fuera de lo común: el plan se hace de eso.',
  'case.opening.not_dose': 'Ninguna dosis por una muestra de agua sin mezclar.',
  'case.rain_overflow.label': 'Lluvia fuerte',
  'case.rain_overflow.help':
    'La lluvia se lleva lo que hace rebosar, si se mezcla. La parte solo dice cuánto puede haberse ido; el análisis dice lo que se fue.',
  'case.rain_overflow.because': 'La lluvia hizo rebosar la piscina.',
  'case.rain_overflow.share': 'Si se mezcló, la lluvia se llevó esta parte de todo lo que hay en el agua.',
  'case.rain_overflow.level': 'Baje el nivel al centro del skimmer; pase la red, vacíe las cestas.',
  'case.rain_overflow.mix': 'Bomba en marcha un día.',
  'case.rain_overflow.test': 'Mídalo todo otra vez y diga luego en la piscina que no hay nada fuera de lo común.',
  'case.rain_overflow.not_from_rain': 'No dosifique por la lluvia caída.',
  'case.volume_unknown.label': 'El volumen no se conoce bien',
  'case.volume_unknown.help':
    'Lo que no se puede volver a sacar se dosifica para la menor agua que puede tener la piscina, y el resto según una nueva medición.',
  'case.volume_unknown.because': 'El volumen puede errar en más de un 10 %.',
  'case.volume_unknown.span': 'La piscina contiene entre estos.',
  'case.volume_unknown.measure':
    'Mídalo cuando pueda: lo dice mejor un contador de agua al llenar; a grandes rasgos, una cantidad conocida de sal y lo que subió.',
  'case.volume_unknown.known': 'El volumen se conoce dentro de un 10 %.',
  'case.volume_unknown.not_whole': 'No ponga de una vez toda la dosis de sal, estabilizador, calcio o borato.',
} as const
