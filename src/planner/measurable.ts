import type { MeasureStep, PlanRules } from './rules'
import type { Amount } from './step'

/** An amount rounded down to what a kitchen scale or a measuring jug can tell apart. */
export function measurable(rules: PlanRules, amount: number, unit: 'kg' | 'L'): number {
  const step = stepFor(rules.measurable[unit], amount)
  // a hair up, so that 0.3 is not rounded down to 0.29 by the way that it is stored
  return step === undefined ? amount : Number((Math.floor(amount / step + 1e-9) * step).toFixed(9))
}

function stepFor(steps: readonly MeasureStep[], amount: number): number | undefined {
  return steps.find(([below]) => below === null || amount < below)?.[1]
}

/** Whole packs and the rest that is measured, where the size of a pack is known. */
export function inPacks(value: number, unit: 'kg' | 'L', pack: number | undefined): Amount {
  if (pack === undefined || !(pack > 0)) return { value, unit }
  const whole = Math.floor(value / pack + 1e-9)
  return { value, unit, packs: { whole, rest: Math.max(0, Number((value - whole * pack).toFixed(9))), pack } }
}
