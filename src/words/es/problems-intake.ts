export const problemsIntake = {
  'problem.lab_empty_file': 'El archivo está vacío.',
  'problem.lab_not_a_table':
    'Esto no es una tabla de texto. Si es una hoja de cálculo, guárdela como CSV y traiga esa.',
  'problem.lab_no_header':
    'Ninguna fila del archivo nombra una magnitud que conozcamos, así que sus columnas no se distinguen. Dé un encabezado a las columnas, con la unidad entre corchetes.',
  'problem.lab_not_a_number': '{path}: "{found}" no es un número',
  'problem.lab_ambiguous_number':
    '{path}: "{found}" se puede leer de dos formas; diga qué signo decimal tiene el archivo',
  'problem.lab_out_of_range': '{path}: "{found}" es imposible; {quantity} está entre {min} y {max} {unit}',
  'problem.lab_cell_unit': '{path}: "{found}" no tiene una unidad que pueda tener {quantity}',
  'problem.lab_not_a_choice': '{path}: "{found}" no es uno de {accepted}',
  'problem.lab_not_a_date': '{path}: "{found}" no es una fecha',
  'problem.lab_ambiguous_date': '{path}: "{found}" se puede leer de dos formas; diga en qué orden van el día y el mes',
  'problem.lab_not_a_time': '{path}: "{found}" no es una hora del día',
  'problem.lab_broken_quotes': '{path}: las comillas no casan en "{found}"',
  'problem.lab_too_many_cells': '{path}: {cells} celdas bajo {most} encabezados; "{found}" no tiene encabezado',
  'problem.lab_no_analyte': '{path}: el resultado "{found}" no dice qué se midió',
  'problem.lab_unknown_qualifier':
    '{path}: la observación "{found}" no se conoce, así que el número no se puede tomar tal cual',
  'problem.lab_unanswered': '{path}: "{found}" podría ser {choices}; diga cuál en la correspondencia',
  'problem.lab_late_row':
    '{path}: más resultados de "{found}" tras {most} otras muestras; ordene el archivo por muestra',
  'problem.lab_looks_wrong':
    '{path}: la mayoría de las mediciones son improbables para {quantity} en {unit} (la del centro es {median})',
  'problem.lab_some_look_wrong':
    '{path}: {count|una medición es improbable|# mediciones son improbables} para {quantity} en {unit} ({found}), y no en {looks_like}',
  'problem.lab_qualifier_apart':
    '{path}: "{found}" y similares no dicen qué mediciones limitan; se conservan como nota',
  'problem.lab_sign_in_heading':
    '{path}: el encabezado termina en "{found}", y sus números se leen tal cual; donde son límites, escriba el signo en las celdas',
  'problem.lab_mapping_unreadable': '{path} no es un archivo de correspondencia: no es texto JSON.',
  'problem.lab_mapping_wrong': '{path}: esto no es lo que un archivo de correspondencia tiene aquí.',
  'problem.lab_answer_quantity': '{path}: no hay ninguna magnitud «{found}».',
  'problem.lab_answer_unit': '{path}: «{found}» no es una unidad que pueda tener {quantity}.',
  'problem.lab_questions_open': 'El archivo deja {count|una pregunta abierta|# preguntas abiertas}; responda antes.',
  'problem.lab_file_gone': 'El archivo no se pudo leer hasta el final: {why}',
  'problem.lab_mapping_heading': 'La correspondencia nombra «{found}», que el archivo no tiene.',

  'intake.looks_like': 'Esta columna parece {looks_like}.',

  'intake.question.decimal_mark': '«{found}» se puede leer de dos formas. ¿Cuál es el signo decimal de este archivo?',
  'intake.question.date_order': '«{found}» se puede leer de dos formas. ¿En qué orden van día, mes y año?',
  'intake.question.which_quantity': '¿Qué magnitud es «{heading}»?',
  'intake.question.which_unit': '¿En qué unidad está «{heading}»?',
  'intake.choice.dmy': 'día, mes, año',
  'intake.choice.mdy': 'mes, día, año',
  'intake.choice.ymd': 'año, mes, día',
  'intake.choice..': 'punto',
  'intake.choice.,': 'coma',

  'intake.why.contract_name': 'un nombre del contrato',
  'intake.why.known_spelling': 'escritura conocida «{spelled}»',
  'intake.why.close_spelling': 'cercano a la escritura «{spelled}»',
  'intake.why.role': 'una columna que dice {role}',
  'intake.why.answered': 'como usted dijo',
  'intake.why.unknown': 'ninguna magnitud que conozcamos; se conserva como nota',
  'intake.why.second_of': 'una segunda columna para {quantity}, tras «{heading}»; se conserva como nota',
  'intake.why.unit_unsaid': 'sin unidad; leído en {unit}',
  'intake.why.unit_by_readings': 'sin unidad; las mediciones solo son posibles en {unit}',
  'intake.why.unit_of_others': 'sin unidad; leído en {unit}, como otros resultados suyos',
  'intake.why.among_ions': 'está entre otros iones, así que se lee en {unit}',
  'intake.why.beside_results': 'cada fila es un resultado; se conserva como nota',
  'intake.why.not_total_alkalinity': 'una parte de la alcalinidad, no la alcalinidad total; se conserva como nota',
  'intake.why.salinity': 'una salinidad en masa o por cociente de conductividad, no sal en mg/L; se conserva como nota',
  'intake.why.worked_out_word':
    '{quantity} es una palabra que calculan las hojas y no una medición; se conserva como nota',
  'intake.why.base_capacity': 'una capacidad básica, no alcalinidad; se conserva como nota',
  'intake.why.not_total_hardness':
    'una parte de la dureza por sus aniones, ni la total ni la cálcica; se conserva como nota',
  'intake.why.unit_unread_unit': '«{found}» no es una unidad que conozcamos para {quantity}; se conserva como nota',
  'intake.why.unit_wrong_dimension': '{quantity} no se mide en «{found}»; se conserva como nota',
  'intake.why.basis_unknown': '«contado como {found}» no se convierte aquí; se conserva como nota',
  'intake.why.unit_wrong_basis': '«{found}» cuenta otra sustancia que {quantity}; se conserva como nota',
  'intake.why.unit_ambiguous_unit': '«{found}» significa varias unidades; se conserva como nota',
  'intake.why.unit_reference_temperature':
    '«{found}» no es ni a 20 ni a 25 °C, y desde ahí no se puede pasar una conductividad; se conserva como nota',

  'intake.skipped.blank': 'filas vacías',
  'intake.skipped.nothing_measured': 'filas en las que no se midió nada',
  'intake.skipped.not_a_sample': 'medias, límites, blancos y otras filas que no son muestras',
  'intake.skipped.rejected': 'resultados que el laboratorio rechazó',
  'intake.skipped.header_again': 'la cabecera repetida',
  'intake.skipped.joined': 'otros resultados de una muestra que se cuenta por el primero',
  'intake.skipped.other_analyte': 'resultados que no son magnitud nuestra, conservados como notas',
  'intake.skipped.repeated': 'mediciones repetidas, por la regla elegida',

  'headless.intake_usage':
    'uso: intake [--dates dmy|mdy|ymd] [--decimal .|,] [--delimiter D] [--replicates keep|first|last|mean] [--mapping ARCHIVO] ARCHIVO|-',
  'headless.intake_question': '{question} Puede ser {choices}. Responda con {flag}.',
  'headless.intake_words':
    '{count|una columna tiene palabras|# columnas tienen palabras} que calculan las hojas y ninguna medición; quedan aparte: {names}.',
  'headless.intake_uncertain': 'la columna «{heading}» se lee como {quantity}: {why}',
} as const
