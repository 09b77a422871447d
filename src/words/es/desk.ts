export const desk = {
  'page.desk.intro':
    'Un frasco tras otro. Intro avanza; un guion dice que una medición no se tomó; tras la cifra se puede escribir una unidad.',
  'page.desk.keys':
    'Intro: siguiente · F8: hojas y vuelta · F9: la hoja del cliente · F8 después de imprimirla: el cliente siguiente',
  'page.desk.read_only': 'Este cuaderno está abierto en otra pestaña; aquí solo se puede leer.',
  'page.desk.resumed': 'Aquí se quedó; se estaba escribiendo «{text}». Intro lo acepta, Escape lo descarta.',
  'page.desk.pool': 'Piscina',
  'page.desk.find': 'Nombre de la piscina, o dónde está',
  'page.desk.find_help': 'Escriba; las flechas e Intro eligen. Un nombre que no está hace una piscina nueva.',
  'page.desk.open_now': 'abierta ahora',
  'page.desk.last_changed': 'cambiada {date}',
  'page.desk.new_pool': 'Piscina nueva «{name}»',
  'page.desk.name': 'Nombre',
  'page.desk.place': 'Dónde está, o de quién es',
  'page.desk.volume_or_shape': 'Sin volumen, Intro lleva a la forma.',
  'page.desk.volume_by_shape': 'Por la forma: {volume}',
  'page.desk.volume': 'Volumen, donde se conoce',
  'page.desk.bag': 'Saco de sal',
  'page.desk.products': 'Productos a mano',
  'page.desk.products_help':
    'Las cifras marcan lo que tiene el cliente, o lo que se vende aquí, por su etiqueta; Intro avanza. Otros se añaden en la página del plan por pasos.',
  'page.desk.pack': 'Tamaño del envase',
  'page.desk.same_products': 'Como en la última piscina',
  'page.desk.targets': 'Objetivos',
  'page.desk.targets_help':
    'El centro del intervalo de esta piscina, su único extremo donde tiene uno solo. Cada uno se puede cambiar.',
  'page.desk.take_targets': 'Apuntar a estos',
  'page.desk.targets_from': 'Intervalos: {source}',
  'page.desk.bottle': 'El frasco',
  'page.desk.bottle_of': 'Frasco del {date}',
  'page.desk.bottle_before': 'Mediciones de antes',
  'page.desk.bottle_now': '«{name}» está abierto; sus mediciones siguen abajo.',
  'page.desk.no_bottle': 'Todavía ningún frasco. La primera medición empieza uno.',
  'page.desk.new_bottle': 'Frasco nuevo',
  'page.desk.pool_temperature': 'Temperatura de la piscina',
  'page.desk.readings': 'Mediciones',
  'page.desk.more': 'Más mediciones',
  'page.desk.seen': 'Visto en la piscina',
  'page.desk.unit_of': 'Unidad de {quantity}',
  'page.desk.method_of': 'Análisis usado para {quantity}',
  'page.desk.method_unsaid': 'análisis no dicho',
  'page.desk.within': 'lo mide con margen de {half}',
  'page.desk.another': 'Otro análisis',
  'page.desk.another_of': 'Otro análisis de {quantity}',
  'page.desk.believed': 'se cree',
  'page.desk.take_out': 'Quitar',
  'page.desk.take_out_this': 'Quitar {reading}',
  'page.desk.readings_of': 'Mediciones de {quantity}',
  'page.desk.unlikely':
    '{name} {value} no es habitual en una piscina. Lea otra vez el análisis, o consérvelo: Intro lo conserva.',
  'page.desk.unlikely_pool':
    '{name} {value} no es habitual. Mire la cifra y su unidad, o consérvela: Intro la conserva.',
  'page.desk.limit_above': 'Se conserva como más de {value}, nunca como {value}. Diluya la muestra y mida otra vez.',
  'page.desk.limit_below': 'Se conserva como menos de {value}, nunca como {value}.',
  'page.desk.advice.number': 'Crea más bien {reading}: es un número; lo otro, solo un límite.',
  'page.desk.advice.bleaches':
    'Crea más bien {reading}: por encima de 10 mg/L los colorantes de otros análisis de cloro se blanquean y dan de menos; una valoración, no.',
  'page.desk.advice.finer': 'Crea más bien {reading}: de estos análisis es el que distingue más fino.',
  'page.desk.advice.first': 'Los dos análisis distinguen igual; se cree el primero hasta que usted diga otra cosa.',
  'page.desk.advice.apart': 'Difieren más de lo que yerran los dos análisis. Mida una vez más.',
  'page.desk.advice.agree': 'Concuerdan tan bien como pueden decir estos análisis.',
  'page.desk.check.total_below_free':
    'El cloro total {total_chlorine} es menos que el cloro libre {free_chlorine}: uno de los dos análisis yerra. Mida otra vez los dos.',
  'page.desk.check.dyes_err':
    'Con el cloro libre a {free_chlorine} yerran los colorantes del pH y la alcalinidad; el plan no usa ninguno hasta que haya bajado.',
  'page.desk.check.calcium_over_total':
    'La dureza cálcica {calcium_hardness} es más que la dureza total {total_hardness}, de la que es una parte: mida otra vez una de ellas.',
  'page.desk.check.hardness_alone':
    'La dureza total cuenta también el magnesio y nunca ocupa el lugar del calcio. Mida la propia dureza cálcica.',
  'page.desk.check.old':
    'Pasadas dos horas el cloro se ha ido del frasco: el plan lo hace medir otra vez en la piscina.',
  'page.desk.check.bottle_alone':
    'El equilibrio se guía por la temperatura de la propia piscina, no por la del frasco: pregúntela.',
  'page.desk.check.hardly_salt':
    'La sal {salt} es casi nada para una piscina con célula. Mire la unidad, o consérvela: Intro la conserva.',
  'page.desk.check.window_turned':
    'La sal mínima de la célula, {cell_salt_low}, no es menor que la máxima, {cell_salt_high}. Mire otra vez su etiqueta.',
  'page.desk.check.warmed':
    'El frasco ya no está a la temperatura de la piscina. Cuenta la de la piscina, {temperature}; la del frasco solo se anota.',
  'page.desk.done': 'A la hoja del cliente',
  'page.desk.to_grid': 'Hojas',
  'page.desk.to_plan': 'Plan por pasos',
  'product.stock.acid_31': 'Ácido clorhídrico (muriático), 31,45 % en masa',
  'product.stock.acid_14': 'Ácido clorhídrico (muriático), 14,5 % en masa',
  'product.stock.dry_acid': 'Bisulfato de sodio (ácido seco), 93,2 % en masa',
  'product.stock.liquid_12': 'Hipoclorito de sodio en solución, 12,5 % comercial',
  'product.stock.liquid_10': 'Hipoclorito de sodio en solución, 10 % comercial',
  'product.stock.granular_65': 'Hipoclorito de calcio, 65 % de cloro disponible',
  'product.stock.calcium_77': 'Cloruro de calcio, 77 % en masa',
  'product.stock.calcium_94': 'Cloruro de calcio, 94 % en masa',
  'product.stock.stabilizer': 'Estabilizador (ácido cianúrico), 98 % en masa',
  'page.desk.assume_calcium': 'Suponer el calcio como 0,7 de la dureza total, regla de un código estatal',
} as const
