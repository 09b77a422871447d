export const quantitiesCalcium = {
  'worksheet.calcium.label': 'Calcio',
  'worksheet.calcium.help':
    'Cloruro de calcio para una dureza deseada, y el índice que tiene entonces el agua. Solo el agua nueva saca calcio; véase dilución.',
  'worksheet.calcium.example':
    'Una piscina inventada de mortero, de 37,85 m³ (10 000 gal de EE. UU.), da 150; se desea 200. Con cloruro de calcio del 77 % son 2,73 kg, o 6 lb: por porciones en un cubo de agua fría, vertido alrededor del borde.',
  'group.calcium.wanted': 'Deseado',
  'group.calcium.dose': 'Calcio que añadir',
  'group.calcium.after': 'El agua después',

  'quantity.target_calcium_hardness.label': 'Dureza cálcica deseada',
  'quantity.target_calcium_hardness.help':
    'La que necesita este revestimiento; una pared de vinilo no tiene calcio que perder.',
  'quantity.calcium_product.label': 'Producto de calcio',
  'quantity.calcium_product.help': 'Lo que cuenta la concentración de su etiqueta.',
  'choice.calcium_product.calcium_chloride': 'cloruro de calcio, contado en seco',
  'choice.calcium_product.calcium_chloride_dihydrate': 'cloruro de calcio dihidratado',
  'quantity.calcium_product_mass.label': 'Producto de calcio que añadir',
  'quantity.calcium_product_mass.help': 'Todo, para el volumen tal como está; como mucho 50 mg/L en un día.',
  'quantity.calcium_hardness_after.label': 'Dureza cálcica después',
  'quantity.calcium_hardness_after.help': 'Con todo disuelto y mezclado.',
  'quantity.lsi_after_calcium.label': 'Índice de Langelier después',
  'quantity.lsi_after_calcium.help': 'Con todo disuelto, antes de que nada se deposite.',
  'verdict.lsi_after_calcium.within': 'El agua admite ese calcio.',
  'verdict.lsi_after_calcium.above': 'El agua depositaría ese calcio como cal: primero el pH.',
  'quantity.ph_after_calcium.label': 'pH después',
  'quantity.ph_after_calcium.help': 'El calcio se une al carbonato y baja un poco el pH.',
  'quantity.salt_after_calcium.label': 'Sal después',
  'quantity.salt_after_calcium.help': 'Como la lee una tira: el cloruro del producto cuenta como sal.',
  'quantity.calcium_pack_mass.label': 'Envase de cloruro de calcio',
  'quantity.calcium_pack_mass.help': 'Como se vende; el plan dice entonces envases enteros y lo que se mide aparte.',
} as const
