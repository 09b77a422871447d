export const problemsFunctions = {
  'problem.out_of_range': '{path}: {quantity} es {value}; esto se calcula solo de {min} a {max}.',
  'problem.no_such_water': '{path}: ninguna agua tiene juntas estas mediciones. Mire otra vez {quantity}.',
  'problem.unreachable': '{path}: lo deseado no se puede alcanzar, a causa de {quantity}.',
  'problem.no_convergence':
    '{path}: no se halló respuesta para {quantity}. Comuníquelo, por favor, con sus mediciones.',
  'problem.mixed_models':
    '{path}: {quantity} se dedujo con el modelo {wanted}, y se usa {model}. Use un solo modelo para los dos.',
  'problem.missing': '{path}: hacen falta mediciones que no se tomaron: {names}.',
  'problem.argument_not_a_number': '{path}: {parameter} de {function} es «{found}», que no es un número.',
  'problem.argument_out_of_range':
    '{path}: {parameter} de {function} es {found}{unit}; funciona de {min} a {max}{unit}.',
  'problem.not_a_choice': '{path}: {parameter} de {function} es «{found}»; admite uno de {accepted}.',
  'problem.not_a_truth': '{path}: {parameter} de {function} es «{found}»; admite TRUE o FALSE.',
} as const
