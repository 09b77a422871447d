export const trace = {
  'trace.nothing_there': 'Ya no hay tal valor en este cuaderno.',
  'trace.in': 'en «{scenario}»',
  'trace.to_plan': 'Mostrar el plan, paso a paso.',
  'trace.plan_reads': 'Se hace con todo lo que está escrito en su escenario:',
  'trace.to_cell': 'Mostrarlo en su hoja',
  'trace.back': 'De dónde viene',
  'trace.forward': 'Qué lo usa',
  'trace.units':
    'Bajo cada fórmula están los números que se pusieron, en las unidades propias del cuaderno, con seis cifras; se calcula con todas.',
  'trace.function': 'versión {version}: {source}',
  'trace.nothing_uses': 'Nada más de este cuaderno lo usa.',
  'trace.entered': 'Escrito como {entered}.',
  'trace.method': 'Con este análisis: {method}.',
  'trace.sample': 'De la muestra «{name}», cuya fecha no se conoce.',
  'trace.sample_dated': 'De la muestra «{name}» del {date}.',
  'trace.elsewhere': 'Es una muestra de otra agua.',
  'trace.file': 'Del archivo {file}, fila {row}.',
  'trace.column': 'Su columna allí se titula «{heading}».',
  'trace.others':
    '{count|Otro análisis lo midió también; su medición se conserva junto a esta|Otros # análisis lo midieron también; sus mediciones se conservan junto a esta}.',
} as const
