import { choiceOf, type Draft, holds, numberOf, rule, say } from './draft'
import type { Say } from './step'

const ACIDS = new Set(['hydrochloric_acid', 'sulfuric_acid', 'sodium_bisulfate'])
const CHLORINES = new Set(['sodium_hypochlorite', 'calcium_hypochlorite', 'dichlor', 'trichlor'])
const LIQUIDS = new Set([
  'hydrochloric_acid',
  'sulfuric_acid',
  'sodium_hypochlorite',
  'sodium_hydroxide',
  'hydrogen_peroxide',
])
/** surfaces that lying grains bleach, burn or stain */
const TENDER = new Set(['vinyl', 'fibreglass'])

export function isAcid(product: string): boolean {
  return ACIDS.has(product)
}

export function isLiquid(product: string): boolean {
  return LIQUIDS.has(product)
}

/** Where and how a product goes in. */
export function placeFor(draft: Draft, product: string): readonly Say[] {
  if (ACIDS.has(product)) return holds(draft, 'acid_place') ? [say('plan.how.acid')] : []
  if (product === 'calcium_chloride' || product === 'calcium_chloride_dihydrate') {
    return holds(draft, 'calcium') ? [say('plan.how.calcium')] : []
  }
  if (product === 'cyanuric_acid') return holds(draft, 'stabilizer') ? [say('plan.how.stabilizer')] : []
  if (product === 'salt') return holds(draft, 'salt') ? [say('plan.how.salt')] : []
  if (product === 'sodium_carbonate') return holds(draft, 'base_cap') ? [say('plan.how.soda_ash')] : []
  if (product === 'trichlor') return [say('plan.how.tablets')]
  return [say(LIQUIDS.has(product) ? 'plan.how.pour' : 'plan.how.dissolve')]
}

/** The dangers of a product in this pool. */
export function cautionsFor(draft: Draft, product: string): readonly Say[] {
  const found: Say[] = [say('plan.caution.label')]
  const add = (id: string, key: string) => {
    if (holds(draft, id)) found.push(say(key))
  }
  if (ACIDS.has(product)) found.push(say('plan.caution.acid'))
  if (ACIDS.has(product) || CHLORINES.has(product)) add('acid_and_chlorine', 'plan.caution.acid_and_chlorine')
  if (CHLORINES.has(product)) add('chlorines_apart', 'plan.caution.chlorines_apart')
  if (product.startsWith('calcium_chloride')) add('calcium', 'plan.caution.calcium_heats')
  if (product.startsWith('bor')) found.push(say('plan.caution.borate'))
  if (!LIQUIDS.has(product) && product !== 'trichlor' && isTender(draft)) add('undissolved', 'plan.caution.undissolved')
  add('out_of_water', 'plan.caution.out_of_water')
  return found
}

function isTender(draft: Draft): boolean {
  return TENDER.has(choiceOf(draft, 'shell') ?? '') || isFreshPlaster(draft)
}

/** Plaster that still cures: no salt, cell or tablets on it. */
export function isFreshPlaster(draft: Draft): boolean {
  const days = rule(draft, 'fresh_plaster', 'days')
  const age = numberOf(draft, 'shell_age')
  return days !== undefined && choiceOf(draft, 'shell') === 'plaster' && age !== undefined && age < days
}
