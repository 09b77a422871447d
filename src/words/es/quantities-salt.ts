export const quantitiesSalt = {
  'worksheet.salt.label': 'Sal',
  'worksheet.salt.help':
    'Cuánta sal necesita todavía la célula, en masa y en sacos, o cuánto se ha pasado el agua. No se añade sal con mediciones que no concuerdan.',
  'worksheet.salt.example':
    'Una piscina inventada de 56,8 m³ da 600 mg/L; su célula admite de 2700 a 3400. El centro es 3050, así que faltan 2450 mg/L: 139,2 kg. En sacos de 18,14 kg son siete enteros, que dan 2836 mg/L, y 12,2 kg que se pesan del octavo.',
  'group.salt.readings': 'De la muestra',
  'group.salt.wanted': 'Lo que admite la célula',
  'group.salt.dose': 'Sal que añadir',
  'group.salt.loss': 'Agua perdida, según la sal',

  'quantity.cell_salt_low.label': 'Sal mínima de la célula',
  'quantity.cell_salt_low.help': 'El extremo bajo del intervalo de sal que da el fabricante de la célula.',
  'quantity.cell_salt_high.label': 'Sal máxima de la célula',
  'quantity.cell_salt_high.help': 'El extremo alto del intervalo de sal que da el fabricante de la célula.',
  'quantity.target_salt.label': 'Sal deseada',
  'quantity.target_salt.help': 'Donde no se indica nada, se usa el centro del intervalo de la célula.',
  'quantity.salt_test_error.label': 'Error del análisis de sal',
  'quantity.salt_test_error.help':
    'Cuánto puede errar el análisis; el agua con sal de más se lleva otro tanto por debajo del máximo.',
  'quantity.salt_window_middle.label': 'Centro del intervalo',
  'quantity.salt_window_middle.help': 'A medio camino entre lo que la célula admite como mínimo y como máximo.',
  'quantity.target_salt_used.label': 'Sal deseada, usada',
  'quantity.target_salt_used.help': 'Lo que se indicó; el centro del intervalo de la célula donde no se indicó nada.',
  'quantity.salt_at_most.label': 'Sal como mucho',
  'quantity.salt_at_most.help':
    'Donde se detiene la dilución: el máximo del intervalo, menos el error del análisis si el agua lo supera ahora.',
  'quantity.salt_shortfall.label': 'Sal que falta',
  'quantity.salt_shortfall.help': 'Cuánto está la sal por debajo de lo deseado.',
  'quantity.salt_excess.label': 'Sal de más',
  'quantity.salt_excess.help':
    'Cuánto está la sal por encima de lo deseado; dentro del intervalo de la célula no hace daño.',
  'quantity.salt_purity.label': 'Pureza de la sal',
  'quantity.salt_purity.help': 'La parte del producto que es cloruro de sodio.',
  'quantity.bag_mass.label': 'Masa de un saco',
  'quantity.bag_mass.help': 'La que está escrita en el saco.',
  'quantity.salt_mass.label': 'Sal que añadir',
  'quantity.salt_mass.help':
    'Toda la necesidad, para el volumen tal como está. No se puede volver a sacar: añada una parte, espere un día, mida de otra forma.',
  'quantity.salt_bags_whole.label': 'Sacos enteros',
  'quantity.salt_bags_whole.help':
    'Redondeados hacia abajo; hacia arriba solo si el agua queda bajo el centro del intervalo de la célula.',
  'quantity.salt_part_bag.label': 'Pesado de uno más',
  'quantity.salt_part_bag.help': 'Lo que queda por pesar después de los sacos enteros.',
  'quantity.salt_after_bags.label': 'Sal tras los sacos enteros',
  'quantity.salt_after_bags.help': 'Lo que da el agua solo con los sacos enteros, un día después.',
  'quantity.salt_bags_down.label': 'Sacos, hacia abajo',
  'quantity.salt_bags_down.help': 'Los sacos enteros que caben en la masa necesaria.',
  'quantity.salt_rise_per_bag.label': 'Un saco sube',
  'quantity.salt_rise_per_bag.help': 'Cuánto sube un saco entero la sal de esta piscina.',
  'quantity.days_between.label': 'Días entre mediciones',
  'quantity.days_between.help': 'De la medición de sal anterior a esta, sin añadir sal por el camino.',
  'quantity.water_loss.label': 'Agua perdida',
  'quantity.water_loss.help':
    'Por fuga, salpicaduras y lavado del filtro juntos; la evaporación no se lleva sal. Dos mediciones dan un intervalo ancho: un indicio, no una medida.',
  'quantity.water_loss_low.label': 'Agua perdida, al menos',
  'quantity.water_loss_low.help':
    'Con el error de las dos mediciones de sal; dos mediciones solo dicen una fuga a grandes rasgos.',
  'quantity.water_loss_high.label': 'Agua perdida, como mucho',
  'quantity.water_loss_high.help': 'Con el error de las dos mediciones de sal.',
} as const
