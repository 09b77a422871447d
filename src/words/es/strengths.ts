const BASES = {
  mass_percent: '% en masa',
  available_mass_percent: '% de cloro disponible en masa',
  trade_percent: '% comercial (decenas de g/L de cloro disponible)',
  g_per_L: 'g/L',
  baume: 'grados Baumé',
} as const

type Of = 'acid' | 'base' | 'borate' | 'calcium' | 'chlorine' | 'neutralizer' | 'step'
type Key =
  | `quantity.${Of}_strength.${'label' | 'help'}`
  | `quantity.${Of}_strength_basis.${'label' | 'help'}`
  | `choice.${Of}_strength_basis.${keyof typeof BASES}`
  | `problem.out_of_range.${Of}_strength_basis`
  | `problem.out_of_range.${Of}_strength`

function words(of: Of): [string, string][] {
  return [
    [`quantity.${of}_strength.label`, 'Su concentración'],
    [`quantity.${of}_strength.help`, 'La que da la etiqueta, o la que se valoró; sin ella no hay dosis.'],
    [`quantity.${of}_strength_basis.label`, 'La concentración cuenta'],
    [
      `quantity.${of}_strength_basis.help`,
      'Qué cuenta la cifra de la etiqueta; las etiquetas difieren, y sin ello no hay dosis.',
    ],
    ...Object.entries(BASES).map(([id, text]): [string, string] => [`choice.${of}_strength_basis.${id}`, text]),
    [`problem.out_of_range.${of}_strength_basis`, '{path}: este producto no se vende por {value}; use {accepted}.'],
    [
      `problem.out_of_range.${of}_strength`,
      '{path}: la concentración resulta {value}, cuando lo posible es de {min} a {max}. Mire la cifra y lo que cuenta.',
    ],
  ]
}

/** Words of the strength of each product that a worksheet doses, and of what that strength counts. */
export const strengths = Object.fromEntries(
  (['acid', 'base', 'borate', 'calcium', 'chlorine', 'neutralizer', 'step'] as const).flatMap(words),
) as Readonly<Record<Key, string>>
