export const findWords = {
  'page.find.title': 'Buscar una magnitud',
  'page.find.label': 'Parte de su nombre',
  'page.find.count': '{count|una magnitud|# magnitudes}',
  'page.find.none': 'Ninguna magnitud tiene eso en su nombre.',
  'page.find.more': 'y {count} más',
} as const
