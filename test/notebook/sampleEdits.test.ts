import { describe, expect, test } from 'vitest'
import { checkEdit } from '../../src/notebook/checkEdit'
import { fromFile } from '../../src/notebook/file'
import type { Notebook, Reading } from '../../src/notebook/notebook'
import { resolve } from '../../src/notebook/resolve'
import { presentSample, readingsOf, setReading, startSample, withReadings } from '../../src/notebook/sampleEdits'
import { toFile } from '../../src/notebook/toFile'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { applied, cell, EMPTY, edited, number, refusal, sample, scenario } from './samples'

const OF_A_SAMPLE = new Set(['ph', 'salt', 'cyanuric_acid'])
const over100: Reading = { kind: 'limit', side: 'above', entered: '100', unit: 'mg/L', canonical: 100 }
const before = { id: 'before', name: 'Typed before' }
const stands = (notebook: Notebook, quantity: string) => resolve(notebook, shippedCatalog(), 'first', quantity).cell

describe('a new bottle', () => {
  test('takes the baseline over, and what was typed there is kept as a sample of its own', () => {
    const typed = edited(EMPTY, cell('first', 'ph', number(7.8)), cell('first', 'measured_volume', number(50, 'm³')))
    const next = edited(typed, startSample(typed, sample('new', { salt: number(3000, 'mg/L') }), OF_A_SAMPLE, before))
    expect(stands(next, 'ph')).toBeNull()
    expect(stands(next, 'salt')).toMatchObject({ canonical: 3000 })
    expect(next.samples.before?.readings).toEqual({ ph: number(7.8) })
    // what is no reading of a sample stays where it was typed
    expect(stands(next, 'measured_volume')).toMatchObject({ canonical: 50 })
  })

  test('what was typed over a sample goes into it; a reading that was struck out goes out', () => {
    const tied = edited(
      EMPTY,
      { type: 'put_sample', sample: sample('old', { ph: number(7.2), salt: number(3000) }) },
      { type: 'change_scenario', scenario: 'first', set: { sample: 'old' } },
      cell('first', 'ph', number(7.6)),
      cell('first', 'salt', { kind: 'not_taken' }),
    )
    const next = edited(tied, startSample(tied, sample('new', {}), OF_A_SAMPLE, before))
    expect(next.samples.old?.readings).toEqual({ ph: number(7.6) })
    expect(presentSample(next)?.id).toBe('new')
    expect(next.cells).toEqual({})
  })

  test('a sample that another scenario reads too is not changed under it', () => {
    const tied = edited(
      EMPTY,
      { type: 'put_sample', sample: sample('old', { ph: number(7.2) }) },
      { type: 'change_scenario', scenario: 'first', set: { sample: 'old' } },
      scenario('second', 'a1', 'Second', 'old'),
      cell('first', 'ph', number(7.6)),
    )
    const next = edited(tied, startSample(tied, sample('new', {}), OF_A_SAMPLE, before))
    expect(next.samples.old?.readings).toEqual({ ph: number(7.2) })
    expect(next.samples.before?.readings).toEqual({ ph: number(7.6) })
  })

  test('is one step back', () => {
    const typed = edited(EMPTY, cell('first', 'ph', number(7.8)))
    const { notebook, inverse, history } = applied(typed, startSample(typed, sample('new', {}), OF_A_SAMPLE, before))
    expect(history).toBe('step')
    expect(edited(notebook, inverse)).toEqual(typed)
  })
})

describe('a reading', () => {
  const bottle = sample('bottle', { ph: number(7.2) })
  const tied = edited(
    EMPTY,
    { type: 'put_sample', sample: bottle },
    { type: 'change_scenario', scenario: 'first', set: { sample: 'bottle' } },
  )

  test('goes into the sample, and what was typed over it goes', () => {
    const typed = edited(tied, cell('first', 'ph', number(9)))
    const next = edited(typed, setReading(typed, bottle, 'ph', number(7.5)))
    expect(stands(next, 'ph')).toMatchObject({ canonical: 7.5 })
    expect(next.cells).toEqual({})
  })

  test('that was not taken is marked so', () => {
    const next = edited(tied, setReading(tied, bottle, 'ph', 'not_taken'))
    expect(stands(next, 'ph')).toEqual({ kind: 'not_taken' })
    expect(next.samples.bottle?.readings).toEqual({})
  })

  test('others of the same quantity are kept beside it, whichever is believed, through a file too', () => {
    const strip = { ...number(7.8), method: 'strip' } as Reading
    const both = withReadings(bottle, 'ph', [number(7.2), strip])
    expect(readingsOf(both, 'ph')).toEqual([number(7.2), strip])
    expect(both.readings.ph).toEqual(number(7.2))
    const turned = withReadings(both, 'ph', [strip, number(7.2)])
    expect(turned.readings.ph).toEqual(strip)
    expect(withReadings(turned, 'ph', [strip])).toEqual({ ...bottle, readings: { ph: strip } })
    const kept = edited(tied, { type: 'put_sample', sample: both })
    expect(fromFile(toFile(kept), 'a.json')).toEqual(kept)
  })

  test('one beside it that cannot be is refused like any other', () => {
    const wrong = withReadings(bottle, 'ph', [number(7.2), number(15)])
    const found = checkEdit(tied, { type: 'put_sample', sample: wrong }, shippedCatalog(), () => null)
    expect(refusal(found)).toMatch(/15/)
  })
})

describe('a limit', () => {
  test('is kept through a file, and stands where it was read', () => {
    const kept = edited(
      EMPTY,
      { type: 'put_sample', sample: sample('bottle', { cyanuric_acid: over100 }) },
      { type: 'change_scenario', scenario: 'first', set: { sample: 'bottle' } },
    )
    expect(fromFile(toFile(kept), 'a.json')).toEqual(kept)
    expect(stands(kept, 'cyanuric_acid')).toEqual(over100)
  })

  test('is for readings of a number only', () => {
    const check = (quantity: string) =>
      checkEdit(EMPTY, cell('first', quantity, over100), shippedCatalog(), () => null)?.code ?? null
    expect(check('cyanuric_acid')).toBeNull()
    expect(check('shell')).toBe('wants_choice')
    expect(check('lsi')).toBe('wants_number')
    expect(check('cyanuric_acid')).toBeNull()
  })
})
