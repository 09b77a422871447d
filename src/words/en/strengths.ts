const BASES = {
  mass_percent: '% by mass',
  available_mass_percent: '% available chlorine by mass',
  trade_percent: 'trade % (tens of g/L of available chlorine)',
  g_per_L: 'g/L',
  baume: 'degrees Baumé',
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
    [`quantity.${of}_strength.label`, 'Its strength'],
    [`quantity.${of}_strength.help`, 'As the label gives it, or as it was titrated; without it there is no dose.'],
    [`quantity.${of}_strength_basis.label`, 'Strength counts'],
    [
      `quantity.${of}_strength_basis.help`,
      'What the figure on the label counts; labels differ, and without it there is no dose.',
    ],
    ...Object.entries(BASES).map(([id, text]): [string, string] => [`choice.${of}_strength_basis.${id}`, text]),
    [`problem.out_of_range.${of}_strength_basis`, '{path}: this product is not sold by {value}; use {accepted}.'],
    [
      `problem.out_of_range.${of}_strength`,
      '{path}: the strength comes to {value}, where {min} to {max} is possible. Look at the figure and at what it counts.',
    ],
  ]
}

/** Words of the strength of each product that a worksheet doses, and of what that strength counts. */
export const strengths = Object.fromEntries(
  (['acid', 'base', 'borate', 'calcium', 'chlorine', 'neutralizer', 'step'] as const).flatMap(words),
) as Readonly<Record<Key, string>>
