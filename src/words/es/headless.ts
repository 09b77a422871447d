export const headless = {
  'headless.usage':
    'uso: evaluate (--worksheet ID | --only NOMBRE,NOMBRE) [--set NOMBRE=VALOR] [--case ID|ARCHIVO] [--censored limit|half|zero] [--decimal .|,] [--delimiter D] ARCHIVO|-',
  'headless.columns_not_used': 'columnas no usadas: {names}',

  'problem.usage_option': 'No se entendió la línea de órdenes: {why}',
  'problem.usage_no_file': 'No se nombró ningún archivo. Nombre uno, o «-» para la entrada estándar.',
  'problem.usage_many_files': 'Un archivo cada vez: {found}.',
  'problem.usage_nothing_asked':
    'No se pidió nada. Nombre una hoja (--worksheet saturation) o magnitudes (--only lsi).',
  'problem.usage_set': '«{found}» no fija nada. Escriba --set NOMBRE=VALOR, por ejemplo --set volume=56.8.',
  'problem.usage_case': 'No hay ningún caso «{found}», ni un archivo de ese nombre que se pueda leer. Hay {accepted}.',
  'problem.usage_choice': '--{flag} admite {accepted}, no «{found}».',
  'problem.usage_worksheet': 'No hay ninguna hoja «{found}». Hay {accepted}.',
  'problem.usage_plan_alone': 'El plan se pide solo: --worksheet plan.',
  'problem.usage_quantity': 'No hay ninguna magnitud «{found}».',
  'problem.given_twice': '«{name}» se da dos veces. Dela una vez, en la línea de órdenes o como columna.',
  'problem.input_empty': 'La entrada no tiene cabecera: su primera línea debe llevar nombres de magnitudes.',
  'problem.input_not_opened': '{path}: el archivo no se puede leer: {why}',
  'problem.header_twice': 'La columna «{name}» está dos veces en la cabecera. Quite una.',
  'problem.header_unknown': 'Ninguna columna de la cabecera es una magnitud que conozcamos: {found}.',
  'problem.header_unit': '«{heading}»: «{found}» no es una unidad de esta magnitud; la suya es {unit}.',
  'problem.decimal_mixed': 'Unos números tienen punto decimal y otros coma. Diga cuál es con {flag}.',
  'problem.decimal_ambiguous':
    '«{found}» se puede leer de dos formas. Diga qué signo decimal tiene el archivo con {flag}.',
  'problem.row_quotes': '{path}: las comillas de esta fila no casan',
  'problem.row_too_long': '{path}: {found} celdas bajo {expected} encabezados',
  'problem.cell_unreadable': '{path}: "{found}" no es un número',
  'problem.cell_censored':
    '{path}: "{found}" es un límite, no un número; diga con --censored qué ha de ocupar su lugar',
  'problem.cell_choice': '{path}: "{found}" no es uno de {accepted}',
  'problem.cell_outside': '{path}: {found} está fuera de {low} a {high} {unit}',
} as const
