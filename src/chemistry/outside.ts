import { type Failure, fail } from './failure'

/**
 * The failure for a value that is no finite number or lies outside `min..max` (both ends included); undefined
 * when the value is fine.
 */
export function outside(quantity: string, value: number, min: number, max: number): Failure | undefined {
  if (!Number.isFinite(value)) return fail('not_a_number', quantity)
  return value < min || value > max ? fail('out_of_range', quantity, { value, min, max }) : undefined
}

/** The same for a reading that may be missing: missing is fine here, a value has to be in range. */
export function givenOutside(
  quantity: string,
  value: number | undefined,
  min: number,
  max: number,
): Failure | undefined {
  return value === undefined ? undefined : outside(quantity, value, min, max)
}
