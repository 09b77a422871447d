import type { Chosen } from './choose'
import { type Draft, numberIn } from './draft'
import type { StepInputs } from './foretell'
import { inPacks, measurable } from './measurable'
import type { Amount } from './step'

/** So much of a product: whole packs where it has any, the rest rounded down to what can be measured. */
export function amountOf(draft: Draft, { item, unit }: Chosen, amount: number): Amount {
  const { pack } = item
  const whole = pack === undefined || !(pack > 0) ? 0 : Math.floor(Math.max(0, amount) / pack + 1e-9) * pack
  const rest = measurable(draft.rules, Math.max(0, amount - whole), unit)
  return inPacks(Number((whole + rest).toFixed(9)), unit, pack)
}

/** An amount of a product as the column takes it that foretells the water after it. */
export function inputsOf({ item, unit, answers }: Chosen, amount: number): StepInputs {
  const left = item.role === 'chlorine' ? numberIn(answers, 'chlorine_strength_used') : undefined
  return {
    step_product: item.product,
    step_strength: left ?? item.strength ?? PURE,
    step_strength_basis: item.basis ?? 'mass_percent',
    ...(unit === 'L' ? { step_volume: amount } : { step_mass: amount }),
  }
}

/** The strength of what is sold pure only: bicarbonate, soda ash. */
const PURE = 100

/** The index of the water as it stands; not known where cyanuric acid is not, which counts as none elsewhere only. */
export function lsiNow(draft: Draft): { readonly lsi?: number } {
  const lsi = numberIn(draft.answers, 'step_lsi')
  return lsi === undefined ? {} : { lsi }
}
