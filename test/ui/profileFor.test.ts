import { expect, test } from 'vitest'
import example from '../../examples/little-heron.json'
import { profileFor } from '../../src/ui/shell/profileFor'

test.each([
  ['en-US', 'us'],
  ['en-LR', 'us'],
  ['my-MM', 'us'],
  ['es-ES', 'metric'],
  ['de-DE', 'metric'],
  ['en-GB', 'metric'],
  ['en-CA', 'metric'],
  ['es', 'metric'],
  ['en', 'metric'],
  ['', 'metric'],
])('a first notebook for %s begins in %s units, also beside the example', (tag, profile) => {
  expect(profileFor(undefined, tag)).toBe(profile)
  expect(profileFor({ id: example.id, profile: 'us' }, tag)).toBe(profile)
})

test('a later one as the notebook that is open', () => {
  expect(profileFor({ id: 'mine', profile: 'us' }, 'es-ES')).toBe('us')
  expect(profileFor({ id: 'mine', profile: 'metric' }, 'en-US')).toBe('metric')
})
