export const problemsWorksheet = {
  'problem.only_a_limit':
    '{path}: una medición es solo un límite de su análisis. Diluya la muestra y mida otra vez; de un límite no se calcula nada.',
  'problem.formulas_on_their_way':
    '{path}: lo que lee fórmulas todavía viene de camino a este navegador. Escríbala otra vez dentro de un momento.',
  'problem.formula_empty': '{path}: la fórmula está vacía.',
  'problem.formula_too_long': '{path}: la fórmula tiene {found} caracteres; se leen como mucho {most}.',
  'problem.formula_too_large':
    '{path}: la fórmula tiene más de {most} partes; ponga algunas en filas propias y use sus nombres.',
  'problem.formula_too_deep':
    '{path}: más de {most} paréntesis, funciones u operadores están unos dentro de otros; ponga algunos en filas propias.',
  'problem.formula_number_too_large': '{path}: {found} es demasiado grande para un número.',
  'problem.formula_ends_early':
    '{path}: la fórmula termina tras «{after}», donde tiene que seguir un número, una magnitud o una función.',
  'problem.formula_not_closed': '{path}: el paréntesis del carácter {at} no está cerrado; falta un «)» al final.',
  'problem.formula_comma':
    '{path}: hay una coma en el carácter {at}; los argumentos se separan con «;» y los decimales se escriben con punto.',
  'problem.formula_text_not_closed': '{path}: el texto que empieza en el carácter {at} no está cerrado; falta un «"».',
  'problem.formula_scenario_name':
    "{path}: en el carácter {at} empieza un nombre entre comillas simples; es un escenario, y le siguen un punto y una magnitud, como en 'As tested'.ph.",
  'problem.formula_wants_operand':
    '{path}: en el carácter {at} está «{found}», donde se espera un número, una magnitud o una función.',
  'problem.formula_wants_operator':
    '{path}: en el carácter {at} está «{found}», donde se espera un operador como + o el final.',
  'problem.formula_wants_close': '{path}: en el carácter {at} está «{found}», donde se espera un operador o «)».',
  'problem.formula_wants_argument_end':
    '{path}: en el carácter {at} está «{found}», donde se espera un operador, «;» o «)».',
  'problem.formula_unknown_name': '{path}: «{name}», en el carácter {at}, no es ninguna magnitud.',
  'problem.formula_name_in_capitals':
    '{path}: «{name}», en el carácter {at}, no es ninguna magnitud; los nombres van en minúsculas: «{meant}».',
  'problem.formula_name_not_taken': '{path}: «{name}», en el carácter {at}, es de otra hoja; inclúyalo en “takes”.',
  'problem.formula_other_scenario':
    '{path}: «{name}», en el carácter {at}, lee otro escenario, lo que no puede una hoja que viene con la aplicación.',
  'problem.formula_unknown_function':
    '{path}: «{name}», en el carácter {at}, no es una función que puedan usar las fórmulas.',
  'problem.formula_calls_solve':
    '{path}: «{name}», en el carácter {at}, da muchos resultados; declárelo en “solves” y lea sus salidas por su nombre.',
  'problem.formula_argument_count':
    '{path}: {name}, en el carácter {at}, tiene {found|# argumento|# argumentos}; admite {accepted}.',
  'problem.formula_circle': '{path}: las fórmulas dan vueltas en círculo: {circle}.',
  'problem.formula_chain':
    '{path}: «{name}» está al final de una cadena de más de {most} fórmulas que se leen unas a otras.',

  'problem.units_together':
    '{path}: en el carácter {at} se encuentran {left_unit} y {right_unit}; no se pueden sumar, comparar ni ocupar uno el lugar del otro, y ningún factor convierte uno en el otro.',
  'problem.units_together_size':
    '{path}: en el carácter {at} se encuentran {left_unit} y {right_unit}; son unidades de una misma clase, pero no del mismo tamaño. Convierta uno con un factor.',
  'problem.units_together_basis':
    '{path}: en el carácter {at} se encuentran {left_unit} y {right_unit}; cuentan sustancias distintas. Convierta uno con un factor.',
  'problem.units_together_difference':
    '{path}: una medición y una diferencia, {left_unit} y {right_unit}, se encuentran en el carácter {at}; no pueden ocupar una el lugar de la otra.',
  'problem.units_number':
    '{path}: {function} toma un número sin unidad; lo que está en el carácter {at} viene en {found_unit}. Divídalo entre algo en la misma unidad.',
  'problem.units_power':
    '{path}: en el carácter {at} {left_unit} se eleva a una potencia ({right_unit}) que no es un solo número escrito en la fórmula, así que no se puede saber la unidad del resultado.',
  'problem.units_multiplied':
    '{path}: en el carácter {at} se multiplican o dividen {left_unit} y {right_unit}. Una medición logarítmica, como un pH, no es cantidad de nada: tome una diferencia de dos, o 10 elevado a ella.',
  'problem.units_divided':
    '{path}: en el carácter {at} {left_unit} se divide entre una medición en {right_unit}, una escala cuyo cero es solo convenido. Divida entre una diferencia; las temperaturas, también en kelvin.',
  'problem.units_argument':
    '{path}: {function} toma {parameter} en {wanted_unit}; lo que está en el carácter {at} viene en {found_unit}.',
  'problem.units_argument_basis':
    '{path}: {function} toma {parameter} en {wanted_unit}; lo que está en el carácter {at} viene en {found_unit}, que cuenta otra sustancia.',
  'problem.units_argument_difference':
    '{path}: {function} toma {parameter} como medición en {wanted_unit}; en el carácter {at} hay una diferencia o una suma de mediciones.',
  'problem.units_row': '{path}: la unidad de la fila es {wanted_unit} y su fórmula da {found_unit}.',
  'problem.units_row_basis':
    '{path}: la fila está en {wanted_unit} y su fórmula da {found_unit}, que no cuenta la misma sustancia.',
  'problem.units_row_difference':
    '{path}: la unidad de la fila es {wanted_unit} y su fórmula da una diferencia o una suma de mediciones, que se mostraría como medición. Una diferencia de temperaturas va en una fila en K.',
  'problem.formula_refused': '{path}: la fórmula de «{name}» no se puede calcular tal como está.',
  'problem.units_flagged':
    '{path}: las unidades de la fórmula de «{name}» no concuerdan, así que su número no se muestra.',

  'problem.definition_missing': 'Falta {path}.',
  'problem.definition_wants_text': '{path}: aquí se espera un texto entre comillas, no {found}.',
  'problem.definition_wants_number': '{path}: aquí se espera un número, no {found}.',
  'problem.definition_wants_whole_number': '{path}: aquí se espera un número entero, no {found}.',
  'problem.definition_wants_list': '{path}: aquí se espera una lista entre corchetes, no {found}.',
  'problem.definition_wants_two_numbers': '{path}: aquí se esperan dos números entre corchetes, no {found}.',
  'problem.definition_wants_object': '{path}: aquí se esperan nombres y valores entre llaves, no {found}.',
  'problem.definition_wants_other': '{path}: {found} no es lo que se espera aquí.',
  'problem.definition_empty_text': '{path}: el texto está vacío.',
  'problem.definition_long_text': '{path}: el texto tiene más de {bound} caracteres.',
  'problem.definition_too_low': '{path}: {found} es demasiado pequeño; se acepta al menos {bound}.',
  'problem.definition_too_high': '{path}: {found} es demasiado grande; se acepta como mucho {bound}.',
  'problem.definition_too_few': '{path}: aquí {bound|se espera al menos una entrada|se esperan al menos # entradas}.',
  'problem.definition_too_many':
    '{path}: aquí {bound|se acepta como mucho una entrada|se aceptan como mucho # entradas}.',
  'problem.definition_bad_name':
    '{path}: {found} no es un nombre; un nombre tiene como mucho 64 letras minúsculas de la a a la z, cifras y _, y empieza por una letra.',
  'problem.definition_bad_notice':
    '{path}: {found} no es una nota; escriba una clase y un nombre, como en "disagree:tds".',
  'problem.definition_bad_choice':
    '{path}: {found} no es el id de una opción; tiene como mucho 64 letras de la a a la z, cifras y _, y empieza por una minúscula.',
  'problem.definition_bad_value': '{path}: {found} no se acepta aquí; use {accepted}.',
  'problem.definition_unknown_key': '{path}: aquí no se conoce nada con este nombre.',

  'problem.worksheet_twice': '{path}: ya hay una hoja «{name}», en {other}; dé a esta otro id.',
  'problem.worksheet_shadows_shipped':
    '{path}: «{name}» es una hoja que viene con la aplicación y no se puede sustituir; dé a esta otro id.',
  'problem.name_twice':
    '{path}: «{name}» ya existe, en {other}; un nombre significa una sola magnitud en todas las hojas.',
  'problem.name_shadows_shipped':
    '{path}: «{name}» viene con la aplicación, en {other}, y no se puede sustituir; use otro nombre, como my_{name}.',
  'problem.name_is_function': '{path}: «{name}» es una función y no puede ser el nombre de una magnitud.',
  'problem.name_reserved':
    '{path}: «{name}» significa otra cosa en las fórmulas y no puede ser el nombre de una magnitud.',
  'problem.takes_nothing': '{path}: ninguna hoja da «{name}».',
  'problem.chart_not_input':
    '{path}: {name} no es un número que se escriba, así que no se puede dibujar nada frente a él.',
  'problem.chart_not_number': '{path}: {name} no es un número, así que no se puede dibujar.',
  'problem.row_not_known': '{path}: no hay ninguna magnitud «{name}».',
  'problem.row_not_taken': '{path}: «{name}» es de otra hoja; inclúyalo en “takes”.',
  'problem.unit_unknown':
    '{path}: «{found}» no es una unidad que se conozca aquí; escríbala como en «mg/L as CaCO3», «°C» o «m³».',
  'problem.span_order': '{path}: el extremo bajo, {low}, no está por debajo del extremo alto, {high}.',
  'problem.default_outside': '{path}: {found} está fuera de lo que acepta la fila, de {low} a {high}.',
  'problem.default_not_a_choice': '{path}: «{found}» no es una de las opciones {accepted}.',
  'problem.plausible_outside': '{path}: esto se sale de lo que acepta la fila, de {low} a {high}.',
  'problem.band_without_ends': '{path}: una banda necesita un extremo bajo, uno alto o los dos.',
  'problem.when_of_wrong_kind':
    '{path}: una condición sobre una elección es una lista de ids, y una sobre un número es “from” y “below”.',
  'problem.when_not_a_choice': '{path}: «{found}» no es una de las opciones {accepted}.',
  'problem.refused': '{path}: aquí no hay respuesta: {why}',
  'problem.stand_in_not_read': '{path}: la fórmula de la fila no lee «{name}».',
  'problem.solve_unknown_function': '{path}: no hay ninguna función bloqueada «{name}».',
  'problem.solve_of_one_result': '{path}: {name} da un solo resultado; llámela en una fórmula.',
  'problem.solve_unknown_input': '{path}: {function} no tiene ninguna entrada «{name}»; tiene {accepted}.',
  'problem.solve_input_unit':
    '{path}: {function} toma {parameter} en {wanted_unit}; la magnitud dada está en {found_unit}.',
  'problem.solve_input_missing': '{path}: {function} necesita una entrada «{name}».',
} as const
