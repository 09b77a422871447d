import { problem } from '../words/problem'
import { type Draft, holds, numberOf, rule, testError, unmet, usable } from './draft'

/** What dilution takes down. */
export const LIMITED = ['salt', 'cyanuric_acid', 'calcium_hardness', 'total_alkalinity', 'tds'] as const
export type Limited = (typeof LIMITED)[number]

export interface Limit {
  /** over this by more than the test's error it is too much */
  readonly over: number
  /** where dilution takes it */
  readonly most: number
  /** so far over that is near enough: a test would hardly tell it */
  readonly near: number
}

export function limitOf(draft: Draft, name: Limited): Limit | undefined {
  const given = numberOf(draft, `most_${name}`)
  if (given !== undefined) {
    const least = leastLimit(draft, name)
    if (given < least) unmet(draft, `most_${name}`, problem('plan_limit_under_target', [], { most: given, least }))
    return given < least ? undefined : { over: given, most: given, near: testError(draft, name) / 2 }
  }
  if (name === 'salt') {
    const top = numberOf(draft, 'cell_salt_high')
    return top === undefined ? undefined : { over: top, most: Math.max(0, top - testError(draft, 'salt')), near: 0 }
  }
  const closes = rule(draft, 'stabilizer_ratio', 'stabilizer_most')
  if (name !== 'cyanuric_acid' || closes === undefined) return undefined
  const most = Math.min(numberOf(draft, 'target_cyanuric_acid') ?? closes, closes)
  return { over: closes, most, near: Math.min(testError(draft, name), closes - most) }
}

/** A limit under what the plan is to dose up to cannot be kept. */
function leastLimit(draft: Draft, name: Limited): number {
  const salt = numberOf(draft, 'target_salt_used') ?? 0
  if (name === 'tds') return salt === 0 ? 0 : salt + OTHER_SOLIDS
  return name === 'salt' ? salt : (numberOf(draft, `target_${name}`) ?? 0)
}

/** What is dissolved beside salt in a balanced water, mg/L. Common practice, no source. */
const OTHER_SOLIDS = 500

export function isOver(draft: Draft, name: Limited, limit: Limit | undefined): boolean {
  const reading = readingOf(draft, name)
  if (limit === undefined || reading === undefined || reading <= limit.over) return false
  return reading > limit.over + testError(draft, name) || !holds(draft, 'test_again')
}

/** Whether it is still so far from where dilution takes it that another round is worth its water. */
export function isFar(draft: Draft, name: Limited): boolean {
  const limit = limitOf(draft, name)
  const reading = readingOf(draft, name)
  return (
    limit === undefined || reading === undefined || !holds(draft, 'test_again') || reading > limit.most + limit.near
  )
}

/** What lies over its limit by no more than the error of its test. */
export function doubtfullyOver(draft: Draft): readonly string[] {
  if (!holds(draft, 'test_again')) return []
  return LIMITED.filter((name) => {
    const limit = limitOf(draft, name)
    const reading = readingOf(draft, name)
    return (
      limit !== undefined &&
      reading !== undefined &&
      reading > limit.over + testError(draft, name) / 2 &&
      !isOver(draft, name, limit)
    )
  })
}

/** What the steps themselves have brought over its limit: acid, calcium chloride and chlorine by hand all leave salt. */
export function risenOver(draft: Draft): readonly Limited[] {
  return LIMITED.filter((name) => {
    const limit = limitOf(draft, name)
    const reading = readingOf(draft, name)
    return limit !== undefined && reading !== undefined && reading > limit.over + testError(draft, name) / 2
  })
}

function readingOf(draft: Draft, name: Limited): number | undefined {
  return usable(draft, name === 'tds' ? 'tds_used' : name)
}
