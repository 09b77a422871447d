/** For each contract quantity `quantity.<name>.label` and `.help`; group headings, choices, worksheet titles. */
export const quantities = {
  'quantity.ph.label': 'pH',
  'quantity.ph.help': 'How acid or alkaline the water is.',
} as const
