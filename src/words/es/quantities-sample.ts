export const quantitiesSample = {
  'worksheet.sample.label': 'Muestra',
  'worksheet.sample.help': 'Lo que se midió en el agua y lo que se deduce solo de las mediciones.',
  'worksheet.sample.example':
    'Una muestra inventada da cloro libre 3,0 y total 3,4, así que 0,4 es combinado; la conductividad de 6052 µS/cm son 3200 mg/L de sal, y los 3000 de la tira concuerdan con ella.',
  'group.sample.balance': 'Equilibrio',
  'group.sample.disinfection': 'Desinfección',
  'group.sample.salt': 'Sal y sólidos disueltos',
  'group.sample.ions': 'Otros iones',
  'group.sample.traces': 'Metales, nutrientes, transparencia',
  'group.sample.bottle': 'El frasco',

  'quantity.ph.label': 'pH',
  'quantity.ph.help': 'Cuán ácida o alcalina es el agua; influye en el bienestar, el cloro y la cal.',
  'verdict.ph.below': 'El agua es ácida para una piscina: escuece y ataca el metal y el enlucido.',
  'verdict.ph.within': 'Agradable, y el cloro actúa como debe.',
  'verdict.ph.above':
    'El agua es alcalina para una piscina: el cloro es más lento y la cal aparece antes.',
  'quantity.temperature.label': 'Temperatura',
  'quantity.temperature.help': 'Del agua de la piscina, no del frasco en el mostrador.',
  'verdict.temperature.within': 'No está demasiado caliente para bañarse.',
  'verdict.temperature.above': 'Más caliente de lo que las normas permiten para bañarse.',
  'quantity.total_alkalinity.label': 'Alcalinidad total',
  'quantity.total_alkalinity.help':
    'Cuánto ácido admite el agua antes de que su pH ceda, por valoración hasta pH 4,5.',
  'verdict.total_alkalinity.below': 'Poco sostiene el pH: salta con cada adición.',
  'verdict.total_alkalinity.within': 'Bastante para sostener el pH, y no tanta que no deje de subir.',
  'verdict.total_alkalinity.above': 'El pH no deja de subir y pide ácido una y otra vez.',
  'quantity.calcium_hardness.label': 'Dureza cálcica',
  'quantity.calcium_hardness.help':
    'Solo calcio; la mayoría de las tiras muestran la dureza total, que cuenta también el magnesio.',
  'verdict.calcium_hardness.below':
    'Poco calcio: el agua puede tomarlo del enlucido, las juntas y el calentador, y hace espuma.',
  'verdict.calcium_hardness.within':
    'Bastante calcio para este revestimiento, y no tanto que se deposite.',
  'verdict.calcium_hardness.above':
    'Mucho calcio para este revestimiento: se deposita como cal donde el pH o la temperatura son altos.',
  'quantity.total_hardness.label': 'Dureza total',
  'quantity.total_hardness.help':
    'Calcio y magnesio juntos; por sí sola nunca ocupa el lugar del calcio.',

  'quantity.free_chlorine.label': 'Cloro libre',
  'quantity.free_chlorine.help':
    'Cloro que todavía puede actuar, la mayor parte retenido por el estabilizador si lo hay.',
  'verdict.free_chlorine.below': 'Demasiado poco cloro para que esta agua sea segura.',
  'verdict.free_chlorine.within':
    'Dentro de lo que piden las normas; que baste o no depende del estabilizador.',
  'verdict.free_chlorine.above':
    'Más cloro del que las normas permiten para bañarse, y los análisis de alcalinidad y pH yerran.',
  'quantity.total_chlorine.label': 'Cloro total',
  'quantity.total_chlorine.help': 'Cloro libre y combinado juntos.',
  'quantity.combined_chlorine.label': 'Cloro combinado',
  'quantity.combined_chlorine.help':
    'Cloro unido a lo que traen los bañistas; huele y escuece.',
  'verdict.combined_chlorine.within': 'Poco está unido a lo que traen los bañistas.',
  'verdict.combined_chlorine.above': 'Mucho está unido a lo que traen los bañistas: huele y escuece.',
  'quantity.cyanuric_acid.label': 'Ácido cianúrico',
  'quantity.cyanuric_acid.help': 'Estabilizador: protege el cloro del sol y lo retiene.',
  'verdict.cyanuric_acid.below': 'El sol gasta el cloro más deprisa de lo necesario.',
  'verdict.cyanuric_acid.within': 'Bastante contra el sol, y no tanto que el cloro no dé abasto.',
  'verdict.cyanuric_acid.above':
    'Retiene tanto cloro que el resto puede ser demasiado poco; solo el agua nueva lo baja.',
  'quantity.bromine.label': 'Bromo',
  'quantity.bromine.help': 'Bromo total, para las piscinas que se mantienen con él.',
  'verdict.bromine.within': 'No supera lo que la OMS da como máximo.',
  'verdict.bromine.above': 'Supera lo que la OMS da como máximo.',
  'quantity.orp.label': 'Potencial redox',
  'quantity.orp.help':
    'Lo que dice un electrodo de la fuerza con que oxida el agua; el estabilizador lo baja.',
  'verdict.orp.below': 'El agua oxida poco para una norma que se guía por este electrodo.',
  'verdict.orp.within': 'Dentro de lo que pide una norma que se guía por este electrodo.',
  'verdict.orp.above': 'El agua oxida más de lo que pide esa norma.',
  'quantity.ammonia.label': 'Amoníaco',
  'quantity.ammonia.help': 'Como nitrógeno; une muchas veces su masa de cloro.',

  'quantity.salt.label': 'Sal',
  'quantity.salt.help': 'Como cloruro de sodio, por tira, valoración o medidor.',
  'verdict.salt.below':
    'Menos sal de la que admiten la mayoría de las células; el intervalo del fabricante va primero.',
  'verdict.salt.within':
    'Tanta sal como admiten la mayoría de las células; el intervalo del fabricante va primero.',
  'verdict.salt.above':
    'Más sal de la que admiten la mayoría de las células; el intervalo del fabricante va primero.',
  'quantity.cell_salt_reading.label': 'Sal, lectura de la célula',
  'quantity.cell_salt_reading.help':
    'Lo que dice la pantalla de la propia célula; el agua fría, la cal y la edad la hacen marcar de menos.',
  'quantity.chloride.label': 'Cloruro',
  'quantity.chloride.help': 'Solo el ion; la sal es 1,65 veces esa cantidad.',
  'quantity.conductivity.label': 'Conductividad',
  'quantity.conductivity.help': 'A 25 °C, o como un medidor la corrige a 25 °C.',
  'quantity.tds.label': 'Sólidos disueltos',
  'quantity.tds.help': 'Todo lo que está disuelto, sal incluida, como se midió.',
  'verdict.tds.within':
    'No hay más disuelto de lo que permite esa norma; una piscina de sal tiene más por naturaleza.',
  'verdict.tds.above':
    'Hay más disuelto de lo que permite esa norma; una piscina de sal tiene más por naturaleza.',
  'quantity.salt_from_conductivity.label': 'Sal por la conductividad',
  'quantity.salt_from_conductivity.help':
    'El cloruro de sodio que conduce lo mismo; aquí otros iones cuentan como sal.',
  'quantity.salt_from_chloride.label': 'Sal por el cloruro',
  'quantity.salt_from_chloride.help': 'El cloruro de sodio que contiene ese cloruro.',
  'quantity.salt_disagreement.label': 'Distancia entre mediciones de sal',
  'quantity.salt_disagreement.help':
    'La mayor menos la menor de las mediciones de sal; con una dudosa no se añade sal.',
  'verdict.salt_disagreement.within': 'Las formas de medir la sal concuerdan.',
  'verdict.salt_disagreement.above':
    'Las formas de medir la sal no concuerdan: mida otra vez antes de añadir sal.',
  'quantity.salt_used.label': 'Sal usada',
  'quantity.salt_used.help':
    'La sal con la que se calcula todo lo demás, de la mejor medición que hay.',
  'quantity.tds_used.label': 'Sólidos disueltos usados',
  'quantity.tds_used.help':
    'La medición o la suma de los iones; solo los necesita el índice por factores impresos.',

  'quantity.borate.label': 'Borato',
  'quantity.borate.help': 'Como boro, no como ácido bórico ni bórax.',
  'verdict.borate.within': 'No más de lo habitual.',
  'verdict.borate.above': 'Más de lo habitual.',
  'quantity.borate_used.label': 'Borato usado',
  'quantity.borate_used.help': 'La medición; ninguno donde no se midió.',
  'quantity.magnesium.label': 'Magnesio',
  'quantity.magnesium.help': 'Como ion; es el resto de la dureza total.',
  'quantity.sulfate.label': 'Sulfato',
  'quantity.sulfate.help': 'Del bisulfato y el alumbre; ataca las juntas y el hormigón.',
  'verdict.sulfate.within': 'No tanto que ataque las juntas.',
  'verdict.sulfate.above': 'Tanto que ataca las juntas y el hormigón.',

  'quantity.phosphate.label': 'Fosfato',
  'quantity.phosphate.help': 'Alimento de las algas; por sí solo no es motivo para hacer nada.',
  'quantity.copper.label': 'Cobre',
  'quantity.copper.help':
    'De calentadores atacados por agua ácida y de algicidas; mancha de azul verdoso.',
  'verdict.copper.within': 'Demasiado poco para manchar.',
  'verdict.copper.above': 'Bastante para manchar cuando sube el cloro.',
  'quantity.iron.label': 'Hierro',
  'quantity.iron.help': 'De pozos y óxido; mancha de marrón.',
  'verdict.iron.within': 'Demasiado poco para manchar.',
  'verdict.iron.above': 'Bastante para manchar cuando sube el cloro.',
  'quantity.manganese.label': 'Manganeso',
  'quantity.manganese.help': 'De pozos; mancha de púrpura a negro y se lee como cloro.',
  'quantity.turbidity.label': 'Turbidez',
  'quantity.turbidity.help': 'Cuán turbia está el agua.',
  'verdict.turbidity.within': 'Clara.',
  'verdict.turbidity.above': 'Turbia: nadie se baña donde no se ve el fondo.',

  'quantity.sample_age.label': 'Edad de la muestra',
  'quantity.sample_age.help': 'Horas desde la piscina hasta el análisis.',
  'verdict.sample_age.within': 'Bastante reciente para el cloro y el pH.',
  'verdict.sample_age.above':
    'Por el camino se ha perdido cloro: mídalo otra vez en la piscina.',
  'quantity.bottle_temperature.label': 'Temperatura del frasco',
  'quantity.bottle_temperature.help':
    'En el mostrador; el equilibrio se guía por la temperatura de la propia piscina.',
  'quantity.chlorine_sample_dilution.label': 'Muestra de cloro diluida',
  'quantity.chlorine_sample_dilution.help':
    'Cuántas veces se diluyó la muestra para el análisis de cloro; el cloro anotado es el de la piscina.',
  'quantity.alkalinity_bottle.label': 'Frasco de la alcalinidad',
  'quantity.alkalinity_bottle.help':
    'Si había cloro en el frasco cuando se valoró la alcalinidad, y si contó.',
  'choice.alkalinity_bottle.plain': 'el cloro no cuenta',
  'choice.alkalinity_bottle.chlorine_counted': 'el cloro cuenta',
  'choice.alkalinity_bottle.thiosulfate': 'se añadió tiosulfato',
} as const
