import type { Value } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import { type Answers, workedOut } from './bench'
import { changed, type Draft, numberIn, problemIn } from './draft'
import { labelOf, massRow, packIn, productsFor, ROLES, type Role, type ShelfProduct } from './shelf'
import type { Cost } from './step'
import { unfit } from './unfit'

/** A product, and how much of it the worksheet asks for. */
export interface Chosen {
  readonly item: ShelfProduct
  readonly need: number
  readonly unit: 'kg' | 'L'
  /** everything else that was worked out with this product */
  readonly answers: Answers
  readonly cost?: Cost
}

type Targets = Readonly<Record<string, Value | undefined>>

/**
 * The product for a purpose: where every one on hand has a price the cheapest for this need, else the first that can be dosed.
 * `targets` are set in the column that asks. What does not serve the purpose is passed over; where nothing else is there, the
 * rule that says so is the problem. Else it is that of the first product; without any, `missing:<role>_product`.
 */
export function choose(draft: Draft, role: Role, targets: Targets): Chosen | Problem {
  const offered = productsFor(role, draft.shelf, draft.column)
  const allowed = offered.filter(({ product }) => !draft.barred.has(product))
  if (allowed.length < offered.length && allowed.length === 0)
    return problem('plan_product_barred', [], { products: offered.map(({ product }) => product) })
  const items = allowed.filter(({ product }) => unfit(draft, role, product) === undefined)
  const [passed] = allowed
  if (passed && items.length === 0)
    return problem('plan_kept_out', [], { rule: unfit(draft, role, passed.product) ?? '' })
  const answers = workedOut(
    draft.bench,
    items.map((item) => changed(draft.column, { ...targets, ...labelOf(item) })),
  )
  const dosed = items.flatMap((item, i): Chosen[] => {
    const of = answers[i] ?? new Map()
    const litres = numberIn(of, ROLES[role].volume ?? '')
    const need = litres ?? numberIn(of, massRow(item))
    if (need === undefined) return []
    const unit = litres === undefined ? 'kg' : 'L'
    const pack = item.pack ?? packIn(role, unit, draft.column)
    return [{ item: pack === undefined ? item : { ...item, pack }, need, unit, answers: of }]
  })
  const [first, second] = byCost(dosed)
  if (first) {
    const price = costOf(first, first.need)
    if (price === undefined) return first
    const next = second && costOf(second, second.need)
    return {
      ...first,
      cost: {
        cost: price,
        ...(second && next !== undefined ? { runnerUp: { ...labelled(second.item), cost: next } } : {}),
      },
    }
  }
  const [item] = items
  const of = answers[0]
  return (item && of && problemIn(of, massRow(item))) ?? problem('missing', [], { names: [`${role}_product`] })
}

/** A product by its label: two of one kind differ in strength alone. */
function labelled({
  product,
  strength,
  basis,
}: Chosen['item']): Pick<Chosen['item'], 'product' | 'strength' | 'basis'> {
  return strength === undefined || basis === undefined ? { product } : { product, strength, basis }
}

function byCost(dosed: readonly Chosen[]): readonly Chosen[] {
  const costs = dosed.map((chosen) => costOf(chosen, chosen.need))
  if (costs.includes(undefined)) return dosed.slice(0, 1)
  return dosed.toSorted((a, b) => (costOf(a, a.need) ?? 0) - (costOf(b, b.need) ?? 0))
}

/** What so much of a product costs, by the price of its pack; undefined where that is not known. */
export function costOf({ item: { pack, price } }: Pick<Chosen, 'item'>, amount: number): number | undefined {
  return pack === undefined || price === undefined || !(pack > 0) ? undefined : (amount / pack) * price
}
