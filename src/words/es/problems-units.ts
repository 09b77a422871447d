export const problemsUnits = {
  'problem.unreadable_number': '{path}: «{found}» no es un número aquí; el signo decimal es «{decimal}».',
  'problem.limit_entered':
    '{path}: «{found}» es un límite, no una medición. Aquí se quiere un número, o «-» donde no hay ninguno.',
  'problem.long_entry': '{path}: «{found}» es demasiado largo; una entrada tiene como mucho {most} caracteres.',
  'problem.not_finite': '{path}: «{found}» supera lo que se puede calcular.',
  'problem.wrong_compound':
    '{path}: «{found}» no es una sola cantidad. Escriba un número entero de {large} y un resto menor en {small}.',
  'problem.unknown_unit': '{path}: «{found}» no es una unidad que conozcamos.',
  'problem.unread_unit': '{path}: «{found}» no es una unidad que conozcamos aquí; use, por ejemplo, {accepted}.',
  'problem.wrong_dimension':
    '{path}: «{found}» es una unidad de {found_kind}; aquí se quiere una de {wanted_kind}, como {wanted}.',
  'problem.wrong_basis': '{path}: «{found}» cuenta otra sustancia; aquí se quiere {wanted}.',
  'problem.ambiguous_unit': '{path}: «{found}» puede significar {choices}. Escriba la que se quiere decir.',
} as const
