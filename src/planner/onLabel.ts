import type { Chosen } from './choose'
import type { Step } from './step'

/** The strength of the chosen product as its own label has it; nothing where it is sold pure only. */
export function onLabel({ item: { strength, basis } }: Chosen): Pick<Step, 'strength' | 'basis'> {
  return strength === undefined || basis === undefined ? {} : { strength, basis }
}
