/** Units that laboratories leave out of a heading, beside the canonical one. */
const UNSAID: Readonly<Record<string, readonly string[]>> = {
  temperature: ['°F'],
  bottle_temperature: ['°F'],
  air_temperature: ['°F'],
  conductivity: ['mS/cm'],
  salt: ['g/L'],
  total_hardness: ['°dH', '°fH', 'mmol/L as CaCO3'],
  calcium_hardness: ['°dH', '°fH'],
  total_alkalinity: ['°dH', '°fH', 'mmol/L as HCO3'],
  phosphate: ['µg/L as PO4'],
}

export function unsaidUnits(quantity: string): readonly string[] {
  return Object.hasOwn(UNSAID, quantity) ? (UNSAID[quantity] ?? []) : []
}
