import { afterAll, describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { hasValue, type Outcome } from '../../src/engine/outcome'
import type { Value } from '../../src/functions/define'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const catalog = shippedCatalog()
const wanted = [...catalog.quantities.keys()]
const batch = new Batch(catalog, wanted, 1)
afterAll(() => batch.close())

type Readings = Readonly<Record<string, Value>>

function column(readings: Readings): (quantity: string) => Outcome {
  const [outcomes = []] = batch.evaluate([new Map(Object.entries(readings))])
  return (quantity) =>
    outcomes[wanted.indexOf(quantity)] ?? { problem: { code: 'none', path: [], facts: {} }, notices: [] }
}

/** The value, or what is missing, or the code of another problem. */
function found(readings: Readings, quantity: string): Value | string {
  const outcome = column(readings)(quantity)
  if (hasValue(outcome)) return outcome.value
  const { code, facts } = outcome.problem
  return code === 'missing' ? `missing ${[facts.names].flat().join(' ')}` : code
}

function notices(readings: Readings, quantity: string): readonly string[] {
  return column(readings)(quantity).notices
}

const FOOT = 0.3048
const GALLON = 0.003785411784
const round = { shape: 'round', diameter: 15 * FOOT, depth_shallow: 4 * FOOT }
const water = { ph: 7.5, temperature: 25, total_alkalinity: 100, calcium_hardness: 300, cyanuric_acid: 0, salt: 1000 }

describe('volume', () => {
  test('by shape: a 15 ft round pool with 4 ft of water is 5288 US gal (7.48052 US gal a cubic foot, by hand)', () => {
    expect(Math.abs(Number(found(round, 'volume')) / GALLON - 5288)).toBeLessThan(1)
  })

  test('by meter before shape, with a notice where they are over 10 % apart', () => {
    expect(found({ ...round, measured_volume: 19 }, 'volume')).toBe(19)
    expect(notices({ ...round, measured_volume: 19 }, 'volume')).toEqual([])
    expect(notices({ ...round, measured_volume: 17 }, 'volume')).toEqual(['disagree:volume'])
  })

  test('low and high, the contract: 2 % by meter, 10 % by shape, else the interval of the salt rise', () => {
    const low = (readings: Readings) => Number(found(readings, 'volume_low'))
    const high = (readings: Readings) => Number(found(readings, 'volume_high'))
    expect([low({ measured_volume: 50 }), high({ measured_volume: 50 })]).toEqual([49, 51])
    const byShape = Number(found(round, 'volume'))
    expect([low(round) / byShape, high(round) / byShape]).toEqual([expect.closeTo(0.9, 12), expect.closeTo(1.1, 12)])
    const rise = { salt_mass_added: 50, salt_before: 2000, salt: 3000 }
    expect([low(rise), high(rise)]).toEqual([expect.closeTo(50 / 1.3, 9), expect.closeTo(50 / 0.7, 9)])
    expect(found(rise, 'volume_from_salt_rise')).toBe(50)
  })

  test('says which measure is missing', () => {
    expect(found({}, 'volume')).toBe('missing measured_volume|shape')
    expect(found({ shape: 'round', depth_shallow: 1 }, 'volume')).toBe('missing measured_volume|diameter')
    expect(found({ shape: 'round', diameter: 4 }, 'volume')).toBe('missing measured_volume|depth_shallow')
  })
})

describe('salt', () => {
  test('is the reading, else from chloride (1941 mg/L is 3200 as NaCl), else from conductivity', () => {
    expect(found({ salt: 3100, chloride: 1941, conductivity: 5000 }, 'salt_used')).toBe(3100)
    expect(Math.abs(Number(found({ chloride: 1941, conductivity: 5000 }, 'salt_used')) - 3200)).toBeLessThan(1)
    expect(Math.abs(Number(found({ conductivity: 1185 }, 'salt_used')) - 584.43)).toBeLessThan(1)
  })

  test('is worked out of dissolved solids where nothing else was read: 3100 mg/L with 1 mmol/L of sodium bicarbonate, by hand', () => {
    const solids = { tds: 3184.006, total_alkalinity: 50.0435, calcium_hardness: 0 }
    expect(found(solids, 'salt_used')).toBeCloseTo(3100, 1)
    expect(found({ tds: 3000 }, 'salt_used')).toBe('missing salt|chloride|conductivity|total_alkalinity')
    expect(found({}, 'salt_used')).toBe('missing salt|chloride|conductivity|tds')
  })

  test('readings apart: the highest less the lowest, from two readings on', () => {
    expect(found({ salt: 3100, cell_salt_reading: 2600 }, 'salt_disagreement')).toBe(500)
    expect(notices({ salt: 3100, cell_salt_reading: 2600 }, 'salt_disagreement')).toEqual(['disagree:salt'])
    expect(notices({ salt: 3100, cell_salt_reading: 2800 }, 'salt_disagreement')).toEqual([])
    expect(found({ salt: 3100, conductivity: 5000 }, 'salt_disagreement')).toBeGreaterThan(400)
    expect(found({ salt: 3100 }, 'salt_disagreement')).toBe('missing cell_salt_reading')
    expect(String(found({ cell_salt_reading: 2800 }, 'salt_disagreement'))).toMatch(
      /^missing salt\|chloride\|conductivity/,
    )
  })

  test('dissolved solids: the reading, else the sum of the ions; a notice over 20 % apart', () => {
    const sum = Number(found(water, 'tds_used'))
    expect(found({ ...water, tds: sum * 1.1 }, 'tds_used')).toBeCloseTo(sum * 1.1, 9)
    expect(notices({ ...water, tds: sum * 1.1 }, 'tds_used')).toEqual([])
    expect(notices({ ...water, tds: sum * 1.3 }, 'tds_used')).toContain('disagree:tds')
    expect(notices({ ...water, tds: sum * 0.75 }, 'tds_used')).toContain('disagree:tds')
  })
})

describe('chlorine', () => {
  test('combined is total less free, never under 0, with a notice where free reads higher', () => {
    expect(found({ free_chlorine: 2, total_chlorine: 2.5 }, 'combined_chlorine')).toBe(0.5)
    expect(found({ free_chlorine: 3, total_chlorine: 2.5 }, 'combined_chlorine')).toBe(0)
    expect(notices({ free_chlorine: 3, total_chlorine: 2.5 }, 'combined_chlorine')).toEqual(['disagree:total_chlorine'])
    expect(found({ free_chlorine: 3 }, 'combined_chlorine')).toBe('missing total_chlorine')
  })
})

describe('saturation', () => {
  test('an empty notebook says what the index waits for', () => {
    expect(found({}, 'lsi')).toMatch(
      /^missing ph temperature total_alkalinity calcium_hardness salt\|chloride\|conductivity\|tds$/,
    )
  })

  test('what is assumed is noticed, what is refused is not assumed', () => {
    const { cyanuric_acid: _, ...rest } = water
    expect(notices(water, 'borate_used')).toEqual(['assumed:borate'])
    expect(notices(rest, 'cyanuric_acid_used')).toEqual(['assumed:cyanuric_acid'])
    expect(found(rest, 'cyanuric_acid_used')).toBe(0)
    expect(found({ ...rest, cyanuric_acid: 40 }, 'cyanuric_acid_used')).toBe(40)
  })

  test('carbon dioxide: 420 ppm but indoors, where it is asked', () => {
    expect(found({}, 'air_co2_used')).toBe(420)
    expect(notices({ setting: 'outdoor' }, 'air_co2_used')).toEqual(['assumed:air_co2'])
    expect(found({ setting: 'indoor' }, 'air_co2_used')).toBe('missing air_co2')
    expect(found({ setting: 'indoor', air_co2: 900 }, 'air_co2_used')).toBe(900)
    expect(notices({ air_co2: 900 }, 'air_co2_used')).toEqual([])
  })

  test('the rows read their solves', () => {
    expect(found(water, 'lsi')).toBeCloseTo(7.5 - Number(found(water, 'ph_saturation')), 12)
    expect(found(water, 'ryznar')).toBeCloseTo(2 * Number(found(water, 'ph_saturation')) - 7.5, 12)
    expect(found(water, 'lsi_cold')).toBe('missing temperature_low')
    expect(found({ ...water, target_lsi: 0 }, 'ph_for_target_lsi')).toBeTypeOf('number')
  })

  test('the worked example of the New York code: pH 7.8, 68 °F, calcium 140, alkalinity 20 give −0.8', () => {
    const readings = { ...water, ph: 7.8, temperature: 20, calcium_hardness: 140, total_alkalinity: 20, tds: 500 }
    expect(Number(found(readings, 'table_index'))).toBeCloseTo(-0.8, 1)
  })
})
