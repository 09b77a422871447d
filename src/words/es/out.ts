export const out = {
  'out.intro':
    'Hojas para otros programas y para el papel. Los archivos tienen cada cifra con todos sus dígitos, las suposiciones marcadas y las fórmulas como texto. Nada de ellos lo ejecuta el programa que los abre.',
  'out.worksheet': 'Hoja',
  'out.all_worksheets': 'Todas las hojas',
  'out.scenarios': 'Escenarios',
  'out.no_scenario': 'Elija al menos un escenario.',
  'out.csv': 'Guardar como CSV',
  'out.csv_says':
    'una línea por escenario, nombres y unidades en la cabecera; la página del laboratorio y las órdenes lo vuelven a leer',
  'out.ods': 'Guardar como hoja de cálculo',
  'out.ods_says':
    'OpenDocument (.ods), una hoja por cada hoja, y otra que dice de dónde vienen los números',
  'out.print_says': 'cada hoja en una página',
  'out.saved': '{name} se guardó.',
  'out.small':
    '{count|Una hoja se imprimirá|# hojas se imprimirán} con letra menor de {points} puntos para caber en una página. Con menos escenarios es mayor.',
  'out.preview': 'Como se imprime',
  'out.assumed_mark': '† supuesto: escrito sobre lo que calcula el cuaderno',
  'out.empty': 'Ninguna fila de esta hoja tiene todavía un valor.',
  'out.col.formula': 'Fórmula, como texto',
  'out.col.sample': 'Muestra',
  'out.sources': 'Fuentes',
  'out.sources.assumptions': 'Suposiciones',
  'out.sources.assumed': 'escrito sobre lo que calcula el cuaderno',
  'out.sources.samples': 'Muestras',
  'out.sources.file': 'del archivo {file}, fila {row}',
  'out.sources.entered': 'escrito a mano',
  'out.sources.elsewhere': 'de otra agua',
  'out.sources.functions': 'Funciones bloqueadas',
  'out.sources.version': 'versión {version}',
  'out.sources.worksheets': 'Hojas',
  'out.sources.edition': 'edición {edition}',
} as const
