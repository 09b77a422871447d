import type { Conserved } from './totals'

/** What is written on a label. `trade_percent` is g/L of available chlorine divided by 10. */
export const STRENGTH_BASES = ['mass_percent', 'available_mass_percent', 'trade_percent', 'g_per_L', 'baume'] as const
export type StrengthBasis = (typeof STRENGTH_BASES)[number]

export const PRODUCT_IDS = [
  'hydrochloric_acid',
  'sulfuric_acid',
  'sodium_bisulfate',
  'sodium_carbonate',
  'sodium_bicarbonate',
  'sodium_hydroxide',
  'borax_decahydrate',
  'borax_pentahydrate',
  'boric_acid',
  'calcium_chloride',
  'calcium_chloride_dihydrate',
  'cyanuric_acid',
  'sodium_hypochlorite',
  'calcium_hypochlorite',
  'dichlor',
  'trichlor',
  'sodium_thiosulfate',
  'hydrogen_peroxide',
  'ascorbic_acid',
  'salt',
] as const
export type ProductId = (typeof PRODUCT_IDS)[number]

/** Moles of each conserved quantity that one mole brings. */
export type Gives = Readonly<Partial<Record<Conserved, number>>>

export interface Product {
  readonly formula: string
  /** g/mol of the formula, water of crystallisation included */
  readonly molarMass: number
  readonly gives: Gives
  /** a neutralizer of chlorine: moles of Cl2 one mole takes, and what each mole of Cl2 so taken leaves */
  readonly takes?: { readonly chlorine: number; readonly leaves: Gives }
  /** bases in which its strength is sold */
  readonly bases: readonly StrengthBasis[]
  /** mass percent of the formula that a label may reach: 100 but where the water of crystallisation may be missing */
  readonly most?: number
  /** mass percent and density in kg/L at 20 °C, for a liquid */
  readonly density?: readonly (readonly [massPercent: number, density: number])[]
  /** degrees Baumé and mass percent, where it is sold so */
  readonly baume?: readonly (readonly [baume: number, massPercent: number])[]
}

const dry: readonly StrengthBasis[] = ['mass_percent']
const available: readonly StrengthBasis[] = ['mass_percent', 'available_mass_percent']
const liquid: readonly StrengthBasis[] = ['mass_percent', 'g_per_L']

/**
 * Every product, as what its substance brings into the water. Molar masses: standard atomic weights (IUPAC 2021).
 * Densities: hydrochloric acid by International Critical Tables; sulfuric acid, caustic and peroxide by Perry's Chemical
 * Engineers' Handbook (from memory); hypochlorite by strength after Handbook of Chlorination (1972) as quoted by a distributor's
 * profile. Degrees Baumé: tables of the Manufacturing Chemists' Association (from memory).
 * Commercial hypochlorite solution holds as much sodium chloride as hypochlorite. A neutralizer's product is taken to be
 * tetrathionate for thiosulfate (7.0 mg of pentahydrate per mg of chlorine, instrument maker's note TE213), chloride and acid
 * for peroxide and ascorbic acid.
 */
export const PRODUCTS: Readonly<Record<ProductId, Product>> = {
  hydrochloric_acid: {
    formula: 'HCl',
    molarMass: 36.461,
    gives: { alkalinity: -1, chloride: 1 },
    bases: ['mass_percent', 'g_per_L', 'baume'],
    density: [
      [0, 0.9982],
      [10, 1.048],
      [20, 1.098],
      [30, 1.149],
      [32, 1.159],
      [34, 1.169],
      [36, 1.179],
      [38, 1.189],
    ],
    baume: [
      [16, 24.57],
      [18, 27.92],
      [20, 31.45],
      [22, 35.21],
    ],
  },
  sulfuric_acid: {
    formula: 'H2SO4',
    molarMass: 98.079,
    gives: { alkalinity: -2, sulfate: 1 },
    bases: ['mass_percent', 'g_per_L', 'baume'],
    density: [
      [0, 0.9982],
      [10, 1.0661],
      [20, 1.1394],
      [30, 1.2185],
      [40, 1.3028],
      [50, 1.3951],
      [60, 1.4983],
      [70, 1.6105],
      [80, 1.7272],
      [90, 1.8144],
      [98, 1.8361],
    ],
    baume: [
      [50, 62.18],
      [60, 77.67],
      [66, 93.19],
    ],
  },
  sodium_bisulfate: {
    formula: 'NaHSO4',
    molarMass: 120.06,
    gives: { alkalinity: -1, sodium: 1, sulfate: 1 },
    bases: dry,
  },
  sodium_carbonate: {
    formula: 'Na2CO3',
    molarMass: 105.988,
    gives: { alkalinity: 2, carbonate: 1, sodium: 2 },
    bases: dry,
  },
  sodium_bicarbonate: {
    formula: 'NaHCO3',
    molarMass: 84.007,
    gives: { alkalinity: 1, carbonate: 1, sodium: 1 },
    bases: dry,
  },
  sodium_hydroxide: {
    formula: 'NaOH',
    molarMass: 39.997,
    gives: { alkalinity: 1, sodium: 1 },
    bases: liquid,
    density: [
      [0, 0.9982],
      [10, 1.1089],
      [20, 1.2191],
      [30, 1.3279],
      [40, 1.43],
      [50, 1.5253],
    ],
  },
  borax_decahydrate: {
    formula: 'Na2B4O7·10H2O',
    molarMass: 381.37,
    gives: { alkalinity: 2, sodium: 2, borate: 4 },
    bases: dry,
  },
  borax_pentahydrate: {
    formula: 'Na2B4O7·5H2O',
    molarMass: 291.29,
    gives: { alkalinity: 2, sodium: 2, borate: 4 },
    bases: dry,
  },
  boric_acid: { formula: 'H3BO3', molarMass: 61.833, gives: { borate: 1 }, bases: dry },
  calcium_chloride: { formula: 'CaCl2', molarMass: 110.984, gives: { calcium: 1, chloride: 2 }, bases: dry },
  calcium_chloride_dihydrate: {
    formula: 'CaCl2·2H2O',
    molarMass: 147.014,
    gives: { calcium: 1, chloride: 2 },
    bases: dry,
  },
  cyanuric_acid: { formula: 'C3H3N3O3', molarMass: 129.075, gives: { cyanurate: 1 }, bases: dry },
  sodium_hypochlorite: {
    formula: 'NaOCl',
    molarMass: 74.442,
    gives: { alkalinity: 1, sodium: 2, chloride: 1, chlorine: 1 },
    bases: ['mass_percent', 'available_mass_percent', 'trade_percent', 'g_per_L'],
    density: [
      [0, 0.9982],
      [6, 1.08],
      [8.25, 1.11],
      [11.22, 1.17],
      [15, 1.24],
    ],
  },
  calcium_hypochlorite: {
    formula: 'Ca(OCl)2',
    molarMass: 142.98,
    gives: { alkalinity: 2, calcium: 1, chlorine: 2 },
    bases: available,
  },
  dichlor: {
    formula: 'NaC3N3O3Cl2·2H2O',
    molarMass: 255.98,
    gives: { alkalinity: 1, sodium: 1, cyanurate: 1, chlorine: 2 },
    bases: available,
    // anhydrous, 64.5 % available chlorine; labels of the dihydrate say 55 to 56
    most: 116.5,
  },
  trichlor: {
    formula: 'C3N3O3Cl3',
    molarMass: 232.41,
    gives: { cyanurate: 1, chlorine: 3 },
    bases: available,
  },
  sodium_thiosulfate: {
    formula: 'Na2S2O3·5H2O',
    molarMass: 248.18,
    gives: { sodium: 2, inert: -2 },
    takes: { chlorine: 0.5, leaves: { alkalinity: 1, chloride: 1, inert: 2 } },
    bases: dry,
  },
  hydrogen_peroxide: {
    formula: 'H2O2',
    molarMass: 34.015,
    gives: {},
    takes: { chlorine: 1, leaves: { alkalinity: -1, chloride: 1 } },
    bases: liquid,
    density: [
      [0, 0.9982],
      [10, 1.0324],
      [20, 1.0694],
      [30, 1.1081],
      [35, 1.1282],
      [50, 1.1915],
    ],
  },
  ascorbic_acid: {
    formula: 'C6H8O6',
    molarMass: 176.12,
    gives: { alkalinity: -1, inert: -1 },
    takes: { chlorine: 1, leaves: { chloride: 1, inert: 1 } },
    bases: dry,
  },
  salt: { formula: 'NaCl', molarMass: 58.443, gives: { sodium: 1, chloride: 1 }, bases: dry },
}
