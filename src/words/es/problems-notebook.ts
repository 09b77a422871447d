export const problemsNotebook = {
  'formula.removed_scenario': 'escenario quitado',

  'problem.scenario_gone': 'Este escenario ya no está en el cuaderno.',
  'problem.scenario_exists': 'El escenario «{name}» ya está en el cuaderno.',
  'problem.scenario_name_taken': 'Ya hay un escenario llamado «{name}»; elija otro nombre.',
  'problem.scenario_name_reserved':
    '«{name}» no puede ser el nombre de un escenario: en las fórmulas esa palabra significa siempre el primero. Elija otro nombre.',
  'problem.scenario_is_last': '«{name}» ya es el último escenario.',
  'problem.plan_of_itself': 'Un escenario no puede seguir su propio plan por pasos.',
  'problem.scenario_followed':
    'Otro escenario sigue el plan de «{name}», y sus enlaces tienen que volverse números en el mismo paso.',
  'problem.baseline_stays':
    '«{name}» es el escenario base, al que siguen los demás; se queda el primero y no se puede quitar.',
  'problem.before_baseline':
    '«{name}» no puede ir antes de «{baseline}», que es el escenario base al que siguen los demás.',
  'problem.order_taken': '«{name}» y «{other}» no pueden tener el mismo lugar.',
  'problem.order_unreadable': 'El lugar de «{name}» entre los escenarios no se puede leer.',
  'problem.name_empty': 'El nombre está vacío; escriba uno.',
  'problem.name_too_long': 'El nombre tiene {length} caracteres; se conservan como mucho {most}.',
  'problem.name_unwritable':
    'Un nombre es una sola línea, sin tabuladores, saltos de línea ni otros caracteres de control.',
  'problem.note_too_long': 'La nota tiene {length} caracteres; se conservan como mucho {most}.',
  'problem.sample_gone': 'Esta muestra ya no está en el cuaderno.',
  'problem.sample_in_use': 'La muestra «{name}» la usan {scenarios}; elija allí antes otra muestra.',
  'problem.worksheet_gone': 'La hoja «{id}» ya no está en el cuaderno.',
  'problem.worksheet_id': 'La definición dice otro id que «{id}».',
  'problem.row_gone': 'Esta fila ya no está en el cuaderno.',
  'problem.row_at_end': '«{name}» ya está al final.',
  'problem.row_of_words':
    'Una fila propia da un número, o sí o no, y no palabras. Diga TRUE o FALSE, o dele una unidad.',
  'problem.row_name_taken': 'Ya hay una magnitud «{name}»; elija otro nombre para la fila.',
  'problem.row_in_use': '«{name}» la leen {users}; cambie antes esas fórmulas.',
  'problem.too_many_rows': 'Un cuaderno tiene como mucho {most} filas propias; quite antes una.',
  'problem.too_many_edits': 'Más de {most} cambios de una vez; hágalos por partes.',
  'problem.too_many_scenarios':
    'Un cuaderno tiene como mucho {most} escenarios; quite algunos o empiece otro cuaderno.',
  'problem.too_many_products': 'No caben más productos a mano: caben {most}.',
  'problem.too_many_rules': 'Un cuaderno cambia como mucho {most} valores de las reglas.',
  'problem.case_gone': 'El caso «{id}» ya no está en este cuaderno.',
  'problem.case_id': 'El caso se llama con otro id que «{id}».',
  'problem.too_many_cases': 'Un cuaderno tiene como mucho {most} casos propios.',
  'problem.product_gone': 'Este producto ya no está a mano.',
  'problem.too_many_charts': 'Un cuaderno tiene como mucho {most} gráficos; quite antes uno.',
  'problem.chart_gone': 'Este gráfico ya no está en el cuaderno.',
  'problem.too_many_precisions': 'Un cuaderno tiene como mucho {most} precisiones propias.',
  'problem.not_an_input': '{quantity} no es un número que se escriba, así que no se puede dibujar nada frente a él.',
  'problem.span_empty': 'El tramo termina antes de empezar: el primer extremo tiene que estar por debajo del segundo.',
  'problem.plan_given_already': 'Este plan ya está en el registro, y un plan que se dio queda como se dio.',
  'problem.plan_record_gone': 'Este plan ya no está en el registro.',
  'problem.addition_gone': 'Esta adición ya no está en el registro.',
  'problem.remark_gone': 'Esta nota ya no está en el registro.',
  'problem.lesson_gone': 'Esto ya no está en el registro.',
  'problem.record_full': 'El registro está lleno: caben {most} de estos.',
  'problem.too_many_samples': 'Un cuaderno tiene como mucho {most} muestras; quite algunas o empiece otro cuaderno.',
  'problem.too_many_cells': 'Un cuaderno tiene como mucho {most} entradas; quite algunas o empiece otro cuaderno.',
  'problem.too_many_worksheets': 'Un cuaderno tiene como mucho {most} hojas propias; quite antes una.',
  'problem.too_many_units': 'Como mucho {most} filas pueden tener unidades propias.',

  'problem.quantity_unknown': '{path}: ninguna hoja de este cuaderno tiene una magnitud «{quantity}».',
  'problem.outside_accept':
    '{path}: {label}: {found}{unit} no puede ser; está de {low} a {high}{unit}. Compruebe la entrada.',
  'problem.entered_other':
    '{path}: se introdujo «{found}{unit}», que es {read}{own}, pero al lado está {canonical}{own}. Corrija uno de los dos.',
  'problem.entered_unreadable':
    '{path}: lo introducido, «{found}{unit}», no se puede leer como número; al lado está {canonical}.',
  'problem.wants_number': '{path}: {label} toma un número, no una opción.',
  'problem.wants_choice': '{path}: {label} toma una de sus opciones: {choices}.',
  'problem.choice_unknown': '{path}: {label}: «{found}» no es una de sus opciones: {choices}.',
  'problem.reading_of_computed':
    '{path}: {label} lo calcula el cuaderno, así que una muestra no puede tener una medición de ello.',
  'problem.computed_not_taken': '{path}: {label} lo calcula el cuaderno; no se puede marcar como no tomado.',
  'problem.formula_no_such_scenario': '{path}: la fórmula nombra un escenario «{name}», y ninguno se llama así.',
  'problem.formula_scenario_gone': '{path}: la fórmula nombra un escenario que ya no está en el cuaderno.',

  'problem.file_too_large': '{path} tiene más de {most} millones de caracteres; un archivo tan grande no se lee.',
  'problem.json_too_deep': '{path}: más de {most} paréntesis están unos dentro de otros; un archivo así no se lee.',
  'problem.json_unreadable': '{path} no es texto JSON, o está cortado; no se leyó nada.',
  'problem.json_reserved_key': '{path}: esta clave no se acepta en ningún archivo.',
  'problem.json_not_data': '{path}: lo que hay ahí no se puede escribir como JSON.',
  'problem.not_a_notebook': '{path} no es un archivo de cuaderno: su “format” no dice “basinbook-notebook”.',
  'problem.file_no_version': '{path}: su “version” no es un número entero desde 1; este programa lee hasta {ours}.',
  'problem.file_newer':
    '{path} está escrito en la versión {found} del formato de cuaderno, y este programa lee hasta la versión {ours}; ábralo con un Basinbook más nuevo.',
  'problem.file_missing': 'Falta {path}.',
  'problem.file_unknown_key': '{path}: un cuaderno no tiene nada con este nombre.',
  'problem.file_unknown_name': '{path}: esto no puede ser un nombre aquí.',
  'problem.file_unknown_kind': '{path}: no se conoce nada de esta clase: {found}.',
  'problem.file_wants_text': '{path}: aquí se espera un texto entre comillas, no {found}.',
  'problem.file_wants_number': '{path}: aquí se espera un número, no {found}.',
  'problem.file_wants_whole': '{path}: aquí se espera un número entero, no {found}.',
  'problem.file_wants_truth': '{path}: aquí se espera true o false, no {found}.',
  'problem.file_wants_list': '{path}: aquí se espera una lista entre corchetes, no {found}.',
  'problem.file_wants_record': '{path}: aquí se esperan nombres con valores entre llaves, no {found}.',
  'problem.file_wants_one_of': '{path}: aquí se espera uno de {choices}, no {found}.',
  'problem.file_unreadable': '{path}: «{found}» no puede estar aquí.',
  'problem.file_text_too_long': '{path}: el texto tiene más de {most} caracteres.',
  'problem.file_too_many': '{path}: hay más de {most} entradas.',
  'problem.file_number_too_small': '{path}: {found} es menor que {least}.',
  'problem.file_no_scenario': '{path}: un cuaderno tiene al menos un escenario.',
  'problem.file_no_such_sample': '{path}: el cuaderno no tiene ninguna muestra con este id.',
  'problem.file_no_such_scenario': '{path}: el cuaderno no tiene ningún escenario con este id.',
  'problem.file_other_id': '{path}: tiene que ser igual al nombre bajo el que está, «{id}».',
  'problem.file_order_taken': '{path}: otro escenario tiene el mismo lugar.',
  'problem.file_name_empty': '{path}: el nombre está vacío.',
  'problem.file_name_too_long': '{path}: el nombre tiene {length} caracteres; se conservan como mucho {most}.',
  'problem.file_name_unwritable':
    '{path}: un nombre es una sola línea, sin tabuladores, saltos de línea ni otros caracteres de control.',
  'problem.file_row_name_taken': '{path}: «{name}» ya es el nombre de otra fila.',
  'problem.file_name_taken': '{path}: «{name}» lo tiene ya otro escenario, o significa el escenario base.',

  'problem.stored_no_snapshot':
    '{path}: lo que el navegador conserva de este cuaderno está dañado. Guarde los registros almacenados en un archivo y pida ayuda con él.',
  'problem.stored_edit_missing':
    '{path}: de {head} cambios almacenados falta el número {seq}. Guarde los registros almacenados en un archivo y pida ayuda con él.',
  'problem.stored_edit_damaged':
    '{path}: de {head} cambios almacenados no se puede leer el número {seq}. Guarde los registros almacenados en un archivo y pida ayuda con él.',
  'problem.state_of_another': 'Este es un estado de otro cuaderno; ábralo como copia.',
  'problem.state_gone': 'Este estado anterior ya no se conserva.',
  'problem.state_damaged': 'Este estado anterior está dañado y no se puede leer.',
  'problem.notebook_not_stored': 'El navegador ya no conserva este cuaderno; guárdelo en un archivo.',
  'problem.notebook_stored_already': 'El cuaderno «{name}» ya está almacenado.',
  'problem.notebook_not_open': 'Este cuaderno no está abierto en esta pestaña, así que no se escribió nada.',
  'problem.written_elsewhere':
    'Otra pestaña ha cambiado este cuaderno desde que se abrió aquí. Guarde este en un archivo si lo necesita y vuelva a abrirlo.',
  'problem.storage_blocked':
    'Este navegador no deja que la página conserve nada, como en algunas ventanas privadas. Lo que escriba se pierde al cerrar la pestaña: guarde el cuaderno en un archivo.',
  'problem.storage_held':
    'Otra pestaña ejecuta un Basinbook más viejo y tiene ocupado el almacén. Cierre las demás pestañas y cargue esta página otra vez.',
  'problem.storage_newer':
    'Lo que conserva el navegador lo escribió un Basinbook más nuevo. Cargue la página otra vez; si no sirve, vacíe la caché que el navegador tiene de ella.',
  'problem.storage_full':
    'Al navegador no le queda sitio, así que los últimos cambios no están guardados. Borre cuadernos que ya no necesite o guarde este en un archivo.',
  'problem.storage_lost':
    'Se cerró la conexión con el almacén del navegador. Guarde el cuaderno en un archivo y cargue la página otra vez.',
  'problem.storage_failed':
    'El navegador no pudo conservar los últimos cambios: {why}. Guarde el cuaderno en un archivo.',
  'formula.plan_of': 'el plan por pasos de «{scenario}»',
  'formula.in_scenario': '{name} en «{scenario}»',
  'problem.worksheet_in_use': 'La hoja «{id}» la leen {users}; cambie antes esas fórmulas.',
  'problem.link_circle':
    '{path}: esto daría vueltas en círculo: {circle}. Ninguna fórmula ni plan puede esperar su propia respuesta; quite uno de estos enlaces.',
  'problem.carry_nothing':
    'Todavía no se prevé nada de esta agua, así que no hay nada que llevar adelante. La hoja dice qué le falta.',
} as const
