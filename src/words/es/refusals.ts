export const refusals = {
  'problem.not_for.sanitizer':
    '{path}: esta piscina se mantiene con bromo o biguanida, y esta hoja trata del cloro; sus números serían falsos.',
  'problem.disagree.salt':
    '{path}: las mediciones de sal difieren en más de 400 mg/L. Nada de sal con una medición dudosa: mida otra vez, de otra forma.',
  'problem.upside_down.cell_salt':
    '{path}: la célula admite como mucho menos sal que como mínimo. Mire otra vez su intervalo.',
  'problem.upside_down.cell_flow':
    '{path}: la célula admite como mucho menos caudal que como mínimo. Mire otra vez sus límites.',
  'problem.outside_window.target_salt':
    '{path}: la sal deseada está fuera de lo que admite la célula. Cambie lo uno o lo otro.',
  'problem.wide_error.salt_test_error':
    '{path}: el error del análisis es tan ancho como el intervalo de la célula; use un análisis mejor antes de cambiar el agua.',
  'problem.dry.acid_product': '{path}: un ácido seco se pesa; véase su masa.',
  'problem.out_of_range.chlorine_product': '{path}: un producto seco se pesa; véase su masa.',
  'problem.out_of_range.acid_product': '{path}: un producto seco se pesa; véase su masa.',
  'problem.out_of_range.product_age':
    '{path}: pasado un año, solo una valoración dice lo que queda. Indique la concentración valorada y 0 como edad.',
  'problem.unreachable.salt':
    '{path}: el agua de llenado tiene tanta sal como el límite, o lleva la piscina por encima de él. Use otra agua de llenado.',
  'problem.unreachable.cyanuric_acid':
    '{path}: el agua de llenado tiene tanto ácido cianúrico como el límite, o lleva la piscina por encima de él. Use otra agua de llenado.',
  'problem.unreachable.calcium_hardness':
    '{path}: el agua de llenado tiene tanto calcio como el límite, o lleva la piscina por encima de él. Use otra agua de llenado.',
  'problem.unreachable.tds':
    '{path}: el agua de llenado tiene tantos sólidos disueltos como el límite, o lleva la piscina por encima de él. Use otra agua de llenado.',
  'problem.unreachable.ph': '{path}: ese pH no se alcanza con estos productos; la sosa cáustica podría, si se elige.',
  'problem.unreachable.drain_fraction': '{path}: habría que sacar toda el agua; ningún número de rondas hace eso.',

  'page.short.disagree': 'mediciones que no concuerdan',
  'page.short.not_for': 'no para esta piscina',
  'page.short.upside_down': 'límites al revés',
  'page.short.outside_window': 'fuera del intervalo',
  'page.short.wide_error': 'análisis demasiado tosco',
  'page.short.dry': 'véase la masa',
  'page.short.refused': 'sin respuesta',
} as const
