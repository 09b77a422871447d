import { expect, test } from 'vitest'
import type { Plan } from '../../src/planner/step'
import { planEnd } from '../../src/ui/carry/planEnd'

const ending = (complete: boolean) =>
  ({
    complete,
    end: new Map<string, number>([
      ['free_chlorine', 0],
      ['ph', 7.4],
      ['total_chlorine', 1],
    ]),
  }) as unknown as Plan

test('a reading of zero at the end of a plan is zero, and not one that was not taken', () => {
  const end = planEnd(ending(true))
  expect(end.get('free_chlorine')).toBe(0)
  expect(end.get('ph')).toBe(7.4)
  expect(end.get('salt')).toBeNull()
  // what no step foretells and no time keeps is not carried at all
  expect(end.has('total_chlorine')).toBe(false)
})

test('a plan that stops short, or cannot be made, ends with no reading', () => {
  for (const plan of [ending(false), null]) expect(new Set(planEnd(plan).values())).toEqual(new Set([null]))
})
