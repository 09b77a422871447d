import { type Failure, isFailure } from './failure'
import { outside } from './outside'
import { type ProductAmount, productAmount } from './productAmount'
import { PRODUCTS, type StrengthBasis } from './products'
import { volumeOutside } from './volumeOutside'

export const CHLORINE_PRODUCTS = ['sodium_hypochlorite', 'calcium_hypochlorite', 'dichlor', 'trichlor'] as const
export type ChlorineProduct = (typeof CHLORINE_PRODUCTS)[number]

export const CHLORINE_NEUTRALIZERS = ['sodium_thiosulfate', 'hydrogen_peroxide', 'ascorbic_acid'] as const
export type ChlorineNeutralizer = (typeof CHLORINE_NEUTRALIZERS)[number]

/** A product's strength as its label has it; without a basis there is no dose. */
export interface Label {
  readonly strength: number | undefined
  readonly basis: StrengthBasis | undefined
}

/** What a dose of chlorine weighs, and what it leaves in the water once its chlorine is used up, mol/L. */
export interface ChlorineDose extends ProductAmount {
  readonly cyanurate: number
  readonly calcium: number
  readonly chloride: number
}

/**
 * The dose of a product that raises free chlorine by `rise` mol/L of Cl2 (0 to 0.01) in `volume` m³.
 *
 * Chlorine used up becomes chloride, a mole for a mole of Cl2; all else is what the product's own data bring. Errors: those of
 * the label (`productContent`), volume and rise out of range.
 */
export function chlorineDose(
  product: ChlorineProduct,
  volume: number,
  rise: number,
  { strength, basis }: Label,
): ChlorineDose | Failure {
  const refused = volumeOutside(volume) ?? outside('target_free_chlorine', rise, 0, 0.01)
  if (refused) return refused
  const { gives } = PRODUCTS[product]
  const perLitre = rise / (gives.chlorine ?? 0)
  const amount = productAmount(product, perLitre * 1_000 * volume, strength, basis, 'chlorine_strength')
  if (isFailure(amount)) return amount
  return {
    ...amount,
    cyanurate: perLitre * (gives.cyanurate ?? 0),
    calcium: perLitre * (gives.calcium ?? 0),
    chloride: perLitre * (gives.chloride ?? 0) + rise,
  }
}

/** The dose of a neutralizer that takes `fall` mol/L of Cl2 (0 to 0.01) out of `volume` m³; errors as `chlorineDose`. */
export function neutralizerDose(
  product: ChlorineNeutralizer,
  volume: number,
  fall: number,
  { strength, basis }: Label,
): ProductAmount | Failure {
  const refused = volumeOutside(volume) ?? outside('free_chlorine', fall, 0, 0.01)
  if (refused) return refused
  const moles = (fall * 1_000 * volume) / (PRODUCTS[product].takes?.chlorine ?? 0)
  return productAmount(product, moles, strength, basis, 'neutralizer_strength')
}
