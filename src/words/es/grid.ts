export const gridWords = {
  'page.grid.range': '{rows|una fila|# filas} por {scenarios|un escenario|# escenarios} en la selección',
  'page.grid.cleared': '{count|una entrada quitada|# entradas quitadas}',
  'page.grid.filled': '{count|una celda rellenada|# celdas rellenadas}',
  'page.grid.copied': '{count|una celda copiada|# celdas copiadas}',
  'page.grid.cut': '{count|una celda copiada y vaciada|# celdas copiadas y vaciadas}',
  'page.grid.and_left':
    '{done}; {left|una celda calculada se ha dejado|# celdas calculadas se han dejado} como {left|está|están}',
  'page.grid.cells': 'Celdas',
  'page.grid.find': 'Buscar',
  'page.rows_folded': '{count|una fila|# filas}',
  'page.state.typed': 'escrito aquí',
  'page.state.assumed': 'supuesto',
  'page.state.sample': 'de la muestra',
  'page.state.baseline': 'sigue al escenario base',
  'page.state.default': 'valor de la propia hoja',
  'page.grid.width_of': 'Anchura de «{name}»',
  'page.scenario.width': 'Cambiar la anchura',
} as const
