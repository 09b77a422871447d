export const assumptions = {
  'assumptions.intro':
    'Un valor que se escribió sobre lo que calcula el cuaderno. Pasa a todo lo que se apoya en él: las demás hojas, el plan por pasos, lo que se imprime y exporta. No cambia nada más, y su fórmula vuelve cuando se quita.',
  'assumptions.none':
    'No hay nada supuesto: cada valor calculado sigue a su fórmula. Para suponer otro, elija su celda y escriba encima.',
  'assumptions.col.quantity': 'Magnitud',
  'assumptions.col.scenario': 'Escenario',
  'assumptions.col.typed': 'Escrito',
  'assumptions.col.formula': 'La fórmula da',
  'assumptions.followed': '{count|lo sigue un escenario|lo siguen # escenarios}',
  'assumptions.as_formula': '{value}, por = {formula}',
  'assumptions.working': 'calculándose…',
  'assumptions.no_value': 'sin valor',
  'assumptions.remove': 'Quitar',
  'assumptions.remove_one': 'Quitar la suposición de {name} en «{scenario}»',
  'assumptions.remove_all': 'Quitar todas',
  'assumptions.removed': '{count|Se quitó una suposición|Se quitaron # suposiciones}. Deshacer las recupera.',
  'assumptions.rests': 'Se apoya en lo que se escribió sobre las fórmulas de las propias hojas:',
} as const
