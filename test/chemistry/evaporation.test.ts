import { describe, expect, test } from 'vitest'
import { evaporation, latentHeat, saturationPressure } from '../../src/chemistry/evaporation'

describe('saturation pressure', () => {
  // IAPWS steam tables (from memory), kPa
  test.each([
    [0.01, 0.6117],
    [10, 1.2282],
    [20, 2.3393],
    [25, 3.1699],
    [30, 4.247],
    [40, 7.3849],
  ])('at %d °C is %d kPa within 0.1 %%', (celsius, kilopascal) => {
    expect(Math.abs(Number(saturationPressure(celsius)) / kilopascal - 1)).toBeLessThan(0.001)
  })
})

// IAPWS steam tables (from memory), kJ/kg
test.each([
  [0, 2_500.9],
  [25, 2_441.7],
  [40, 2_406.0],
])('latent heat at %d °C is %d kJ/kg within 1', (celsius, heat) => {
  expect(Math.abs(latentHeat(celsius) - heat)).toBeLessThan(1)
})

describe('evaporation', () => {
  const at = (wind: number, area = 1) => Number(evaporation(area, 250 / 9, 29, 0.5, wind))

  // computed apart from the SI form: water 82 °F, air 29 °C at 50 %: pw 3.733, pa 2.004 kPa, Y 2435 kJ/kg
  test.each([
    [0, 5.46],
    [0.1, 5.94],
    [2, 15.06],
  ])('with a wind of %d m/s is %d mm a day', (wind, millimetres) => {
    expect(Math.abs(at(wind) - millimetres)).toBeLessThan(0.011)
  })

  // Smith et al. 1998 as printed: (95 + 0.425 v)(pw - pa) / Y, ft/min, inHg, Btu/lb, lb/(h ft²); 1 lb/(h ft²) = 117.18 mm a day
  test.each([0, 0.1, 1, 2, 5])('with a wind of %d m/s is that of the equation in its own units within 1 %%', (wind) => {
    const printed = ((95 + (0.425 * wind) / 0.00508) * (1.1024 - 0.5917)) / (2435 / 2.326)
    expect(Math.abs(at(wind) / (printed * 117.18) - 1)).toBeLessThan(0.01)
  })

  test('goes with the area, and is none where the air gives off more than the water', () => {
    expect(at(1, 32)).toBeCloseTo(32 * at(1), 9)
    expect(evaporation(30, 10, 30, 0.9, 1)).toBe(0)
    expect(evaporation(30, 26, 24, 1.2, 1)).toMatchObject({ failure: 'out_of_range', quantity: 'relative_humidity' })
  })
})
