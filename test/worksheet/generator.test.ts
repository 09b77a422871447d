import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { POUND, sheet, TEN_THOUSAND_GALLONS, US_GALLON } from './sheet'

const generator = sheet('generator')
const seed = 20_260_715
const running = {
  pump_flow: 9,
  minimum_cell_flow: 4,
  maximum_cell_flow: 15,
  temperature: 26,
  cell_cold_limit: 15,
  salt: 3000,
  cell_salt_low: 2700,
  cell_salt_high: 3400,
}

describe('output', () => {
  test('14.29 A through one gap make a pound a day at full efficiency (Faraday’s law)', () => {
    const { number } = generator({ cell_current: 14.29, cell_pairs: 1, current_efficiency: 1 })
    expect((number('cell_output_used') * 24) / 1000 / POUND).toBeCloseTo(1, 3)
  })

  test('a night: 2.0 to 4.1 in 10 h at 56.8 m³ is 11.9 g/h (by hand: 2.1 g/m³ × 56.8 m³ / 10 h)', () => {
    const night = { volume: 56.8, free_chlorine_dusk: 2, free_chlorine_dawn: 4.1, dark_hours: 10, cell_setting: 1 }
    const measured = generator({ ...night, cell_output: 20 })
    expect(measured.number('cell_output_measured')).toBeCloseTo(11.93, 2)
    expect(measured.number('cell_output_used')).toBeCloseTo(11.93, 2)
    expect(measured.notices('cell_output_used')).toEqual(['disagree:cell_output'])
    expect(generator({ ...night, free_chlorine_dawn: 1 }).problem('cell_output_used').code).toBe('out_of_range')
  })
})

describe('hours', () => {
  test('4 lb a day for 10 000 US gal are 47.93 mg/L a day (Utah R392-302)', () => {
    const { number } = generator({
      volume: TEN_THOUSAND_GALLONS,
      cell_output: (4 * POUND * 1000) / 24,
      chlorine_demand: 47.93,
      cell_setting: 1,
      pump_hours: 24,
    })
    expect(number('generator_hours')).toBeCloseTo(24, 2)
    expect(number('chlorine_made')).toBeCloseTo(47.93, 2)
  })

  test('may exceed a day, and says so', () => {
    const { number, notices } = generator({
      volume: 56.8,
      cell_output: 5,
      chlorine_demand: 3,
      cell_setting: 1,
      pump_hours: 8,
    })
    expect(number('generator_hours')).toBeCloseTo(34.08, 9)
    expect(notices('generator_hours')).toEqual(['over_a_day:generator_hours'])
    expect(number('pump_hours_short')).toBeCloseTo(26.08, 9)
  })

  test('law: run for the hours it needs the cell makes the demand', () => {
    const positive = (max: number) => fc.double({ min: 0.1, max, noNaN: true })
    fc.assert(
      fc.property(positive(6), positive(200), positive(60), positive(1), (chlorine_demand, volume, cell_output, s) => {
        const given = { chlorine_demand, volume, cell_output, cell_setting: s }
        const hours = generator(given).number('generator_hours')
        if (hours > 24) return
        const { number } = generator({ ...given, pump_hours: hours })
        expect(number('chlorine_made')).toBeCloseTo(chlorine_demand, 9)
        expect(number('pump_hours_short')).toBeCloseTo(0, 9)
      }),
      { seed, numRuns: 200 },
    )
  })
})

describe('whether it may run', () => {
  test('flow, cold and salt decide, each with a reason', () => {
    const told = (more: object) => {
      const { value, notices } = generator({ ...running, ...more })
      return [value('cell_may_run'), ...notices('cell_may_run')]
    }
    expect(told({})).toEqual([true])
    expect(told({ pump_flow: 3 })).toEqual([false, 'low:pump_flow'])
    expect(told({ pump_flow: 16 })).toEqual([false, 'low:pump_flow'])
    expect(told({ temperature: 12 })).toEqual([false, 'cold:temperature'])
    expect(told({ salt: 2500 })).toEqual([false, 'low:salt'])
    expect(told({ salt: 3600 })).toEqual([false, 'high:salt'])
    expect(told({ salt: undefined })).toEqual([true, 'unknown:salt'])
    expect(told({ cell_salt_reading: 2500 })).toEqual([true, 'disagree:salt'])
    expect(told({ ph: 8 })).toEqual([true, 'high:ph'])
    expect(told({ ph: 8, total_alkalinity: 150, calcium_hardness: 500, cyanuric_acid: 30, temperature: 32 })).toEqual([
      true,
      'high:ph',
      'scale:cell',
    ])
  })

  test('no limit of the cell has a default; 700 US gal/h is offered by name', () => {
    const { minimum_cell_flow: _, ...rest } = running
    expect(generator(rest).missing('cell_may_run')).toEqual(['minimum_cell_flow|cell_kind'])
    const small = generator({ ...rest, cell_kind: 'small_above_ground' })
    expect(small.number('minimum_cell_flow_used')).toBeCloseTo(700 * US_GALLON, 9)
    expect(small.notices('minimum_cell_flow_used')).toEqual(['assumed:minimum_cell_flow'])
    expect(generator({ ...rest, cell_kind: 'other' }).missing('flow_margin')).toEqual(['minimum_cell_flow'])
    expect(generator({ ...running, cell_cold_limit: undefined }).missing('cell_may_run')).toEqual(['cell_cold_limit'])
  })

  test('limits upside down', () => {
    expect(generator({ ...running, maximum_cell_flow: 2 }).said('flow_margin')).toContain('Look at its limits again')
    expect(generator({ ...running, cell_salt_low: 4000 }).problem('cell_may_run')).toMatchObject({
      code: 'upside_down',
      facts: { quantity: 'cell_salt' },
    })
  })

  test.each(['bromine', 'biguanide'])('a pool kept with %s is refused', (sanitizer) => {
    expect(generator({ ...running, sanitizer }).problem('cell_may_run').code).toBe('not_for')
  })
})

describe('upkeep', () => {
  test('every three months', () => {
    expect(generator({ cell_looked_at: 100 }).number('cell_look_due')).toBe(-10)
  })

  // every symptom in words leads somewhere, and none of them to the salt worksheet
  test.each([
    ['low_salt', 'salt_again'],
    ['high_current', 'salt_again'],
    ['high_salt', 'dilution'],
    ['no_flow', 'circulation'],
    ['cold_water', 'temperature'],
    ['reversed_flow', 'plumbing'],
  ])('%s: look at %s first', (cell_symptom, look) => {
    const { value, notices } = generator({ cell_symptom })
    expect(value('cell_symptom_look')).toBe(look)
    expect(notices('cell_symptom_look')).toEqual([`symptom:${cell_symptom}`])
  })
})
