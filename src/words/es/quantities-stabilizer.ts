export const quantitiesStabilizer = {
  'worksheet.stabilizer.label': 'Estabilizador y cloro activo',
  'worksheet.stabilizer.help':
    'Cuánto del cloro libre está activo en este momento y cuánto retiene el estabilizador. Dos modelos publicados están lado a lado; difieren en un tercio y más.',
  'worksheet.stabilizer.example':
    'Una piscina inventada da cloro libre 4, ácido cianúrico 80, pH 7,5 a 25 °C. Según el modelo de 2019 están activos unos 0,013 mg/L; según el de 1974, unos 0,020: de cada doscientas o trescientas partes de cloro libre trabaja una a la vez y el resto espera su turno. La relación es 20 : 1, que todavía es buena.',
  'group.stabilizer.readings': 'De la muestra',
  'group.stabilizer.active': 'Cloro activo',
  'group.stabilizer.ratio': 'Relación',
  'group.stabilizer.wanted': 'Para un cloro activo deseado',
  'group.stabilizer.dose': 'Estabilizador que añadir',
  'group.stabilizer.by_product': 'Estabilizador que traen los productos de cloro',

  'quantity.hocl_model.label': 'Modelo',
  'quantity.hocl_model.help':
    'El modelo publicado con el que se calcula el cloro activo; sus cifras no se mezclan con las de otro.',
  'choice.hocl_model.wahman_2019': 'Wahman y Alexander, 2019',
  'choice.hocl_model.obrien_1974': 'O’Brien, Morris y Butler, 1974',
  'quantity.hocl.label': 'Cloro activo (HOCl)',
  'quantity.hocl.help': 'Ácido hipocloroso, la parte del cloro libre que mata los gérmenes de inmediato.',
  'verdict.hocl.below': 'Menos cloro activo del que pide esa norma.',
  'verdict.hocl.within': 'Tanto cloro activo como pide esa norma.',
  'verdict.hocl.above': 'Más cloro activo del que esa norma permite para bañarse.',
  'quantity.ocl.label': 'Hipoclorito (OCl⁻)',
  'quantity.ocl.help':
    'La otra parte que ningún estabilizador retiene; es débil y se convierte en HOCl donde este se gasta.',
  'quantity.bound_chlorine.label': 'Retenido por el estabilizador',
  'quantity.bound_chlorine.help': 'Cloro libre unido al ácido cianúrico, que se suelta a medida que se gasta el resto.',
  'quantity.hocl_obrien.label': 'Cloro activo, modelo de 1974',
  'quantity.hocl_obrien.help':
    'La misma pregunta según O’Brien, Morris y Butler a 25 °C, sea cual sea la temperatura de la piscina.',
  'quantity.hocl_share.label': 'Parte activa',
  'quantity.hocl_share.help': 'El cloro activo como parte del cloro libre.',
  'quantity.cya_to_fc_ratio.label': 'Ácido cianúrico por uno de cloro',
  'quantity.cya_to_fc_ratio.help':
    'Partes de ácido cianúrico por una de cloro libre. Se busca 20; por encima de 45 un código modelo cierra la piscina.',
  'verdict.cya_to_fc_ratio.within': 'El cloro da abasto con el estabilizador.',
  'verdict.cya_to_fc_ratio.above':
    'El estabilizador retiene más cloro de lo conveniente; por encima de 45 : 1 un código cierra la piscina.',
  'quantity.fc_to_cya_share.label': 'Cloro como parte del ácido cianúrico',
  'quantity.fc_to_cya_share.help': 'La misma relación al revés; 20 : 1 es 0,05.',
  'quantity.target_hocl.label': 'Cloro activo deseado',
  'quantity.target_hocl.help': 'El HOCl que se desea. Pertenece al modelo con el que se dedujo.',
  'quantity.target_hocl_model.label': 'Deducido con',
  'quantity.target_hocl_model.help':
    'El modelo con el que se dedujo el HOCl deseado; si es otro que el que se usa, no hay respuesta.',
  'choice.target_hocl_model.wahman_2019': 'Wahman y Alexander, 2019',
  'choice.target_hocl_model.obrien_1974': 'O’Brien, Morris y Butler, 1974',
  'quantity.free_chlorine_for_target_hocl.label': 'Cloro libre para él',
  'quantity.free_chlorine_for_target_hocl.help':
    'Cloro libre con el que la parte activa es la deseada, con el estabilizador medido y el mismo modelo.',
  'quantity.target_cyanuric_acid.label': 'Ácido cianúrico deseado',
  'quantity.target_cyanuric_acid.help': 'Se puede añadir, y solo el agua nueva lo vuelve a sacar.',
  'quantity.stabilizer_purity.label': 'Pureza del estabilizador',
  'quantity.stabilizer_purity.help': 'La parte del producto que es ácido cianúrico.',
  'quantity.cyanuric_acid_mass.label': 'Estabilizador que añadir',
  'quantity.cyanuric_acid_mass.help':
    'Todo, para el volumen tal como está; se añade por partes y con una semana entre ellas.',
  'quantity.cyanuric_acid_from_dichlor.label': 'Una semana de dicloro trae',
  'quantity.cyanuric_acid_from_dichlor.help':
    'El ácido cianúrico que traen siete días en que el dicloro cubre la demanda.',
  'quantity.cyanuric_acid_from_trichlor.label': 'Una semana de tricloro trae',
  'quantity.cyanuric_acid_from_trichlor.help':
    'El ácido cianúrico que traen siete días en que el tricloro cubre la demanda.',
  'quantity.stabilizer_pack_mass.label': 'Envase de estabilizador',
  'quantity.stabilizer_pack_mass.help': 'Como se vende; el plan dice entonces envases enteros y lo que se mide aparte.',
} as const
