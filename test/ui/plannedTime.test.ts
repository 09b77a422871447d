import { describe, expect, test } from 'vitest'
import type { GivenStep } from '../../src/notebook/record'
import { plannedTime } from '../../src/ui/record/plannedTime'

const step = (at: number) => ({ at }) as GivenStep
const PLAN = { date: '2026-05-01T09:30', sample: 'first', steps: [step(0), step(4), step(72)] }
const bottle = (id: string, date: string, elsewhere = false) => ({ id, name: id, date, elsewhere, readings: {} })
const at = (index: number, now: string, ...bottles: readonly ReturnType<typeof bottle>[]) =>
  plannedTime(
    { samples: Object.fromEntries([bottle('first', '2026-05-01'), ...bottles].map((one) => [one.id, one])) },
    PLAN,
    index,
    new Date(now),
  )

describe('when a step that is marked as done was done', () => {
  test('on the return visit: as the plan gave it, not then', () => {
    expect(at(0, '2026-05-09T10:00', bottle('next', '2026-05-09T09:50'))).toBe('2026-05-01T09:30')
    expect(at(1, '2026-05-09T10:00', bottle('next', '2026-05-09T09:50'))).toBe('2026-05-01T13:30')
  })

  test('before the next bottle, which has it in its water', () => {
    expect(at(2, '2026-05-09T10:00', bottle('next', '2026-05-02T08:00'))).toBe('2026-05-02T07:59')
    expect(at(2, '2026-05-09T10:00', bottle('next', '2026-05-02'))).toBe('2026-05-01T23:59')
    expect(at(1, '2026-05-09T10:00', bottle('next', '2026-05-01T09:30'))).toBe('2026-05-01T13:30')
    // another pool's, and one of before
    expect(at(2, '2026-05-09T10:00', bottle('other', '2026-05-02', true), bottle('old', '2026-04-02'))).toBe(
      '2026-05-04T09:30',
    )
  })

  test('never in the future', () => {
    expect(at(2, '2026-05-02T10:00')).toBe('2026-05-02T10:00')
  })
})
