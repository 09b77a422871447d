/**
 * What a closed water keeps: the conserved quantities, each in mol per litre of water. `alkalinity` is Alk =
 * [HCO3-] + 2[CO3--] + cyanurate + borate + [OH-] - [H+] with ion pairs counted with their base and HOCl, H3Cy, B(OH)3,
 * CO2 as zero; it equals sodium + 2 calcium + 2 magnesium - chloride - 2 sulfate + `inert`. `chlorine` is oxidising
 * chlorine in moles of Cl2 equivalents, bound or free. `inert` is the charge of ions that take part in nothing
 * (tetrathionate of a neutralizer), negative for anions.
 */
export const TOTALS = [
  'alkalinity',
  'carbonate',
  'calcium',
  'magnesium',
  'sodium',
  'chloride',
  'sulfate',
  'borate',
  'cyanurate',
  'chlorine',
  'inert',
] as const

export type Conserved = (typeof TOTALS)[number]
export type Totals = Readonly<Record<Conserved, number>>

export const NO_TOTALS: Totals = {
  alkalinity: 0,
  carbonate: 0,
  calcium: 0,
  magnesium: 0,
  sodium: 0,
  chloride: 0,
  sulfate: 0,
  borate: 0,
  cyanurate: 0,
  chlorine: 0,
  inert: 0,
}
