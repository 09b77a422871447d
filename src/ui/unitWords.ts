import { unit } from '../units/unit'

/** A unit beside its figure; pH, plain numbers and choices have none. */
export function unitWords(code: string): string {
  return unit(code)?.symbol ?? code
}
