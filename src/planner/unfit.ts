import { type Draft, holds } from './draft'
import type { Role } from './shelf'

/**
 * Products that go by the name of a purpose and do not serve it within a plan, each with the rule that says so: bicarbonate
 * reaches a pH only far past the alkalinity that was wanted, and tablets give their chlorine over days.
 */
const UNFIT: Readonly<Partial<Record<Role, Readonly<Record<string, string>>>>> = {
  base: { sodium_bicarbonate: 'weak_base' },
  chlorine: { trichlor: 'slow_tablets' },
}

/** The rule that keeps a product from a purpose; undefined where none holds. */
export function unfit(draft: Draft, role: Role, product: string): string | undefined {
  const id = UNFIT[role]?.[product]
  return id !== undefined && holds(draft, id) ? id : undefined
}
