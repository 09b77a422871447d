export const quantitiesChlorine = {
  'worksheet.chlorine.label': 'Cloro a mano',
  'worksheet.chlorine.help':
    'Un producto que lleva el cloro libre a lo deseado, qué más deja en el agua y lo que gasta el cloro combinado.',
  'worksheet.chlorine.example':
    'Una piscina inventada de 56,8 m³ da cloro libre 1; se desea 4. El hipoclorito de 12,5 % comercial contiene 125 g/L, así que 170 g son 1,36 L, y dejan 4,9 mg/L de sal. De tricloro del 90 % harían falta 189 g, que dejan 1,8 mg/L de ácido cianúrico.',
  'group.chlorine.wanted': 'Deseado',
  'group.chlorine.product': 'Con qué',
  'group.chlorine.dose': 'Que añadir',
  'group.chlorine.side': 'Qué más hace',
  'group.chlorine.breakpoint': 'Cloro combinado',

  'quantity.target_free_chlorine.label': 'Cloro libre deseado',
  'quantity.target_free_chlorine.help':
    'Al menos lo que pide la norma; que baste o no lo decide el estabilizador.',
  'quantity.chlorine_rise.label': 'Cloro libre que falta',
  'quantity.chlorine_rise.help': 'Cuánto está el cloro libre por debajo de lo deseado.',
  'quantity.chlorine_product.label': 'Producto de cloro',
  'quantity.chlorine_product.help':
    'El dicloro y el tricloro traen estabilizador cada vez; el hipoclorito de calcio, calcio.',
  'choice.chlorine_product.sodium_hypochlorite': 'hipoclorito de sodio en solución',
  'choice.chlorine_product.calcium_hypochlorite': 'hipoclorito de calcio',
  'choice.chlorine_product.dichlor': 'dicloro (dihidrato)',
  'choice.chlorine_product.trichlor': 'tricloro',
  'quantity.product_age.label': 'Edad del producto',
  'quantity.product_age.help':
    'Días desde que se hizo. El hipoclorito en solución pierde fuerza todo el tiempo; si se valoró hoy, la edad es 0.',
  'quantity.chlorine_strength_used.label': 'Concentración usada',
  'quantity.chlorine_strength_used.help':
    'Lo que queda de la concentración de la etiqueta a esta edad.',
  'quantity.chlorine_product_mass.label': 'Producto de cloro que añadir',
  'quantity.chlorine_product_mass.help': 'Para el volumen tal como está.',
  'quantity.chlorine_product_volume.label': 'En volumen',
  'quantity.chlorine_product_volume.help': 'De una solución.',
  'quantity.cyanuric_acid_added.label': 'Ácido cianúrico que trae',
  'quantity.cyanuric_acid_added.help': 'Se queda cuando el cloro hace mucho que se fue.',
  'quantity.calcium_added.label': 'Calcio que trae',
  'quantity.calcium_added.help': 'Como carbonato de calcio.',
  'quantity.salt_added.label': 'Sal que trae',
  'quantity.salt_added.help': 'La suya, y aquello en que se convierte su cloro cuando se gasta.',
  'quantity.ph_after_chlorine.label': 'pH justo después',
  'quantity.ph_after_chlorine.help': 'Con todo mezclado y nada de su cloro gastado.',
  'quantity.ph_after_chlorine_used.label': 'pH cuando se ha gastado',
  'quantity.ph_after_chlorine_used.help':
    'El cloro que se gasta deja ácido; sin perder dióxido de carbono.',
  'quantity.total_alkalinity_after_chlorine_used.label': 'Alcalinidad cuando se ha gastado',
  'quantity.total_alkalinity_after_chlorine_used.help':
    'El tricloro y el dicloro quitan algo; los hipocloritos no quitan nada.',
  'quantity.breakpoint_dose.label': 'Cloro hasta el punto de ruptura',
  'quantity.breakpoint_dose.help':
    'Lo que gastan el cloro combinado y el amoníaco según su fórmula; otras cosas del agua gastan más.',
  'quantity.breakpoint_free_chlorine.label': 'Cloro libre para ello',
  'quantity.breakpoint_free_chlorine.help': 'Lo que hay y la dosis juntos.',
} as const
