import { type Failure, isFailure } from './failure'
import { productContent } from './productContent'
import type { ProductId, StrengthBasis } from './products'

/** kg, and L for a liquid. */
export interface ProductAmount {
  readonly mass: number
  readonly volume: number | undefined
}

/** How much of a product at a label strength holds `moles` of its substance. Errors: as `productContent`. */
export function productAmount(
  id: ProductId,
  moles: number,
  strength: number | undefined,
  basis: StrengthBasis | undefined,
  quantity: string,
): ProductAmount | Failure {
  const content = productContent(id, strength, basis, quantity)
  if (isFailure(content)) return content
  const mass = moles / content.moles
  return { mass, volume: content.density === undefined ? undefined : mass / content.density }
}
