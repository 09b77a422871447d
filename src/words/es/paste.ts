export const pasteWords = {
  'page.paste.title': 'Pegado',
  'page.paste.taken': '{count|Una celda aceptada|# celdas aceptadas}.',
  'page.paste.nothing_taken': 'No se aceptó nada.',
  'page.paste.locked':
    '{count|Una celda la calcula el cuaderno y quedó como estaba|# celdas las calcula el cuaderno y quedaron como estaban}.',
  'page.paste.beyond':
    '{count|Una celda más allá de la última fila o del último escenario no halló sitio|# celdas más allá de la última fila o del último escenario no hallaron sitio}.',
  'page.paste.refused': '{count|Se rechazó una celda|Se rechazaron # celdas}:',
  'page.paste.one_refused': 'En «{scenario}»: {why}',
  'page.paste.more_refused': '{count|y una más|y # más}',
  'page.paste.same':
    '{count|Una celda dice|# celdas dicen} lo que ya está ahí y {count|quedó|quedaron} como {count|estaba|estaban}.',
  'page.paste.strangers': '{count|Una celda|# celdas} sin sitio por su nombre.',
  'page.paste.no_row': 'Este cuaderno no tiene fila {names}.',
  'page.paste.no_scenario': 'Este cuaderno no tiene escenario {names}.',
  'page.paste.name': '«{name}»',
  'problem.pasted_several':
    '{path}: varias filas se llaman «{found}», así que no se sabe cuál es. Péguelo en sus celdas.',
  'page.paste.no_words': 'No hay texto en el portapapeles.',
  'page.paste.blocked': 'El navegador no deja que la página lea el portapapeles aquí. Pulse Ctrl V.',
  'page.paste.too_large': 'El portapapeles tiene {count} celdas; como mucho se toman {most} de una vez.',
  'problem.pasted_twice': '{path}: la misma celda se pegó dos veces, con dos contenidos. Se conservó el primero.',
} as const
