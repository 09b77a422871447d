import type { Value } from '../functions/define'
import { type Draft, holds, numberOf } from './draft'
import { foretell } from './foretell'

/**
 * The readings as they will be once all of the salt is in, for what is aimed at in the meantime: salt moves pH and index.
 * Nothing where no salt is still to go in.
 */
export function finalWater(draft: Draft): Readonly<Record<string, Value | undefined>> {
  const now = numberOf(draft, 'salt')
  const volume = numberOf(draft, 'volume')
  const final = draft.finalSalt
  if (!holds(draft, 'final_salt') || final === undefined || now === undefined || volume === undefined || final <= now) {
    return {}
  }
  const { salt, ph, total_alkalinity } = foretell(draft, {
    step_product: 'salt',
    step_strength: 100,
    step_strength_basis: 'mass_percent',
    step_mass: ((final - now) * volume) / 1000,
  })
  return ph === undefined || total_alkalinity === undefined ? {} : { salt, ph, total_alkalinity }
}
