import type { Product } from '../../notebook/notebook'

/** What desks mostly sell, by the strength on the label: trade-usual assays (from memory), no brand among them. */
export interface Stock extends Required<Pick<Product, 'role' | 'product' | 'strength' | 'basis'>> {
  /** `product.stock.<id>` */
  readonly id: string
}

/** In the order of their digits, 1 to 9. */
export const STOCK: readonly Stock[] = [
  { id: 'acid_31', role: 'acid', product: 'hydrochloric_acid', strength: 31.45, basis: 'mass_percent' },
  { id: 'acid_14', role: 'acid', product: 'hydrochloric_acid', strength: 14.5, basis: 'mass_percent' },
  { id: 'dry_acid', role: 'acid', product: 'sodium_bisulfate', strength: 93.2, basis: 'mass_percent' },
  { id: 'liquid_12', role: 'chlorine', product: 'sodium_hypochlorite', strength: 12.5, basis: 'trade_percent' },
  { id: 'liquid_10', role: 'chlorine', product: 'sodium_hypochlorite', strength: 10, basis: 'trade_percent' },
  {
    id: 'granular_65',
    role: 'chlorine',
    product: 'calcium_hypochlorite',
    strength: 65,
    basis: 'available_mass_percent',
  },
  { id: 'calcium_77', role: 'calcium', product: 'calcium_chloride', strength: 77, basis: 'mass_percent' },
  { id: 'calcium_94', role: 'calcium', product: 'calcium_chloride', strength: 94, basis: 'mass_percent' },
  { id: 'stabilizer', role: 'stabilizer', product: 'cyanuric_acid', strength: 98, basis: 'mass_percent' },
]

/** The product on the shelf that is this one by its label. */
export function onShelf(shelf: Readonly<Record<string, Product>>, stock: Stock): Product | undefined {
  return Object.values(shelf).find(
    ({ role, product, strength, basis }) =>
      role === stock.role && product === stock.product && strength === stock.strength && basis === stock.basis,
  )
}
