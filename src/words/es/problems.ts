export const problems = {
  'problem.not_a_number': '{path}: el resultado no es un número.',
  'problem.no_number':
    '{path}: el resultado no es un número que exista. Mire entre qué divide la fórmula, o de qué toma una raíz o un logaritmo.',
  'problem.not_computable': '{path}: esto no se puede calcular. Mire la fórmula y lo que lee.',
  'problem.division_by_zero': '{path}: la fórmula divide entre cero.',
  'problem.circular': '{path}: esta fórmula necesita su propio resultado. Quite de ella la magnitud que vuelve aquí.',
  'problem.not_a_number_here': '{path}: la fórmula escrita no da un número. Esta fila admite números.',
  'problem.text_too_long': '{path}: la fórmula da un texto de más de {most} caracteres. Junte menos.',
  'problem.entry_out_of_range': '{path}: la fórmula escrita da {found}{unit}; esta fila admite de {min} a {max}{unit}.',
  'problem.unknown_quantity': '{path}: no hay ninguna magnitud «{name}».',
  'problem.engine_failed':
    'Las hojas dejaron de calcular ({why}). Se han puesto en marcha otra vez desde el cuaderno; nada de lo escrito se ha perdido.',
  'problem.engine_slow':
    'Un cálculo tardó más de {seconds} segundos y se detuvo. Las hojas se han puesto en marcha otra vez desde el cuaderno; nada de lo escrito se ha perdido.',
  'problem.engine_gave_up':
    'Las hojas no pueden calcular este cuaderno. Deshaga la última fórmula o guarde el cuaderno en un archivo; nada de lo escrito se ha perdido.',
  'problem.engine_runaway':
    'El último cambio, {what}, no se pudo calcular a tiempo, dos veces, y se deshizo. Las hojas se han puesto en marcha otra vez desde el cuaderno; nada más de lo escrito se ha perdido.',
  'problem.engine_runaway_kept':
    'El último cambio no se pudo calcular a tiempo, dos veces. Las hojas se han puesto en marcha otra vez desde el cuaderno; nada de lo escrito se ha perdido.',
  'engine.what.cell': '«{quantity}» en «{scenario}»',
  'engine.what.row': 'la fila «{name}»',
  'engine.what.worksheet': 'la hoja «{name}»',
  'engine.what.other': 'el que se hizo antes de que las hojas se detuvieran',
} as const
