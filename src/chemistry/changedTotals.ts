import { PRODUCTS, type ProductId } from './products'
import { type Conserved, TOTALS, type Totals } from './totals'

/** One thing that happens to a water. Amounts in mol of substance per litre of pool water, shares 0 to 1. */
export type WaterChange =
  | { readonly kind: 'product'; readonly product: ProductId; readonly amount: number }
  /** this share is drained and filled up with water of these totals */
  | { readonly kind: 'dilution'; readonly share: number; readonly fill: Totals }
  /** this share leaves as vapour, everything dissolved stays */
  | { readonly kind: 'evaporation'; readonly share: number }
  /** CO2 taken up (positive) or lost */
  | { readonly kind: 'carbon_dioxide'; readonly amount: number }
  /** chlorine used up: HOCl leaves chloride and acid; no more than there is */
  | { readonly kind: 'chlorine_used'; readonly amount: number }
  /** chlorine made by a cell from the water's own chloride: Cl- + H2O leaves HOCl, H2 and base */
  | { readonly kind: 'chlorine_made'; readonly amount: number }

/**
 * The conserved quantities after a list of changes, in order. Products given next to one another act together, so their order
 * does not matter: all dissolve, then a neutralizer takes the chlorine that is there.
 */
export function changedTotals(from: Totals, changes: readonly WaterChange[]): Totals {
  const totals = { ...from }
  const takers = new Map<ProductId, number>()
  for (const change of changes) {
    if (change.kind !== 'product') neutralize(totals, takers)
    switch (change.kind) {
      case 'product': {
        const { gives, takes } = PRODUCTS[change.product]
        give(totals, gives, change.amount)
        if (takes) takers.set(change.product, (takers.get(change.product) ?? 0) + change.amount)
        break
      }
      case 'dilution':
        for (const name of TOTALS) totals[name] += change.share * (change.fill[name] - totals[name])
        break
      case 'evaporation':
        for (const name of TOTALS) totals[name] /= 1 - change.share
        break
      case 'carbon_dioxide':
        totals.carbonate += change.amount
        break
      case 'chlorine_used':
        give(totals, USED_CHLORINE, Math.min(change.amount, totals.chlorine))
        break
      case 'chlorine_made':
        give(totals, USED_CHLORINE, -Math.min(change.amount, totals.chloride))
    }
  }
  neutralize(totals, takers)
  return totals
}

/** HOCl -> Cl- + H+ */
const USED_CHLORINE = { chlorine: -1, chloride: 1, alkalinity: -1 } as const

type Writable = { -readonly [Name in Conserved]: number }

function give(totals: Writable, gives: Readonly<Partial<Record<Conserved, number>>>, amount: number): void {
  for (const name of TOTALS) totals[name] += (gives[name] ?? 0) * amount
}

/** Several neutralizers share the chlorine by what each could take. */
function neutralize(totals: Writable, takers: Map<ProductId, number>): void {
  let wanted = 0
  for (const [id, amount] of takers) wanted += (PRODUCTS[id].takes?.chlorine ?? 0) * amount
  const share = wanted > 0 ? Math.min(1, totals.chlorine / wanted) : 0
  for (const [id, amount] of takers) {
    const takes = PRODUCTS[id].takes
    if (!takes) continue
    const taken = share * takes.chlorine * amount
    totals.chlorine -= taken
    give(totals, takes.leaves, taken)
  }
  takers.clear()
}
