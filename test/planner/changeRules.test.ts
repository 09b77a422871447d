import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { changeable, changeRules } from '../../src/planner/changeRules'
import { RULES, ruleValue } from '../../src/planner/rules'
import { hasWords } from '../../src/words/say'
import { POOL, plan } from './bench'

describe('a changed value of a rule', () => {
  test('holds in the plan: three products a day, then one', () => {
    const { rules, refused } = changeRules({ 'three_a_day.products': 1, 'test_errors.salt': 100 })
    expect(refused).toEqual([])
    expect(rules.testErrors.get('salt')).toBe(100)
    const pool = { ...POOL, ph: 7.9, free_chlorine: 1, total_chlorine: 1 }
    expect(plan(pool, { rules }).steps.some(({ says }) => says.key === 'plan.step.tomorrow')).toBe(true)
    expect(plan(pool).steps.some(({ says }) => says.key === 'plan.step.tomorrow')).toBe(false)
  })

  test.each([
    [{ 'acid_cap.ph_least': 5 }, 'rule_outside'],
    [{ 'high_chlorine.free_chlorine': 30 }, 'rule_outside'],
    [{ 'fresh_plaster.days': 0 }, 'rule_outside'],
    [{ 'second_salt_reading.apart': 5000 }, 'rule_outside'],
    [{ 'acid_cap.ph_least': Number.NaN }, 'rule_outside'],
    [{ 'luck.most': 3 }, 'rule_not_known'],
    [{ 'daily_chlorine.hours': 48 }, 'rule_not_known'],
  ])('that would be nonsense is refused, and the shipped one holds: %o', (changes, code) => {
    const { rules, refused } = changeRules(changes)
    expect(refused.map((fault) => fault.code)).toEqual([code])
    expect(rules).toEqual(RULES)
  })

  test('no change whatever loosens a gate past its bounds', () => {
    const key = fc.constantFrom(...changeable().map((one) => one.key), 'no.such')
    fc.assert(
      fc.property(fc.dictionary(key, fc.double()), (changes) => {
        const { rules } = changeRules(changes)
        for (const { key: name, rule, name: value, least, most } of changeable()) {
          const held = rule === 'test_errors' ? rules.testErrors.get(value) : ruleValue(rules, rule, value)
          expect(held, name).toBeGreaterThanOrEqual(least)
          expect(held, name).toBeLessThanOrEqual(most)
        }
      }),
      { seed: 20_261_125 },
    )
  })

  test('has its words', () => {
    const keys = changeable().flatMap(({ key, rule }) => (rule === 'test_errors' ? [] : [`rule_value.${key}`]))
    expect(keys.filter((one) => !hasWords(one))).toEqual([])
  })
})
