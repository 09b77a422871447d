import { expect, test } from 'vitest'
import { countsIn } from '../../src/ui/countsIn'

test('says the unit that a formula counts in, where the figure shown is another', () => {
  expect(countsIn('m³', 'US gal')).toBe('counts in m³; shown in US gal')
  expect(countsIn('°C', '°F')).toBe('counts in °C; shown in °F')
  expect(countsIn('kg', 'g')).not.toBe('')
  // 0 °C is 273.15 K, though their differences are the same
  expect(countsIn('°C', 'K')).not.toBe('')
})

test('is silent where nothing can be mistaken', () => {
  expect(countsIn('m³', 'm³')).toBe('')
  expect(countsIn('mg/L as CaCO3', 'ppm as CaCO3')).toBe('')
  expect(countsIn('pH', 'pH')).toBe('')
  expect(countsIn('truth', 'truth')).toBe('')
  // while a unit is still being written
  expect(countsIn('US g', 'US g')).toBe('')
})
