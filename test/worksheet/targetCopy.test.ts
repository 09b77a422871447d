import { describe, expect, test } from 'vitest'
import { sentence } from '../../src/words/say'
import { bandFor } from '../../src/worksheet/bandFor'
import { catalogWith } from '../../src/worksheet/catalogFor'
import type { TargetSet } from '../../src/worksheet/definition'
import { isDefinition, readDefinition } from '../../src/worksheet/readDefinition'
import { SHIPPED_TARGETS } from '../../src/worksheet/shippedTargets'
import { addBand, changeBand, copySet, ownSet, removeBand, setId, setOf } from '../../src/worksheet/targetCopy'

const shipped = (id: string): TargetSet => {
  const set = SHIPPED_TARGETS.find((one) => one.id === id)
  if (!set) throw new Error(id)
  return set
}
const copy = copySet(shipped('us_new_york'), 'ranges_ours', 'Ours', 'New York State')

describe('a copy of a set of ranges', () => {
  test('is a definition file of its own, read back as it was written, and no worksheet', () => {
    const text = JSON.stringify(ownSet(copy))
    const read = readDefinition(JSON.parse(text), 'ours.json')
    expect(isDefinition(read) ? [] : read.map(sentence)).toEqual([])
    expect(setOf(read)).toEqual(copy)
    const { catalog, refused } = catalogWith({ ranges_ours: ownSet(copy) })
    expect(refused.map(sentence)).toEqual([])
    expect(catalog.worksheets.map(({ id }) => id)).not.toContain('ranges_ours')
  })

  test.each(SHIPPED_TARGETS.map(({ id }) => id))('%s can be copied whole', (id) => {
    const { refused } = catalogWith({ ranges_ours: ownSet(copySet(shipped(id), 'ranges_ours', 'Ours', id)) })
    expect(refused.map(sentence)).toEqual([])
  })

  test('with another value it holds where it is chosen, with its source and its name; the shipped one stays', () => {
    const changed = changeBand(copy, 'ph', 0, { low: 7.3, high: 7.7, source: 'Changed from New York State' })
    const { catalog } = catalogWith({ ranges_ours: ownSet(changed) })
    const row = catalog.quantities.get('ph')?.row
    const band = (target_set: string) => (row ? bandFor(row, { target_set }) : undefined)
    expect(band('ranges_ours')).toMatchObject({ low: 7.3, high: 7.7, source: 'Changed from New York State' })
    // New York 10 NYCRR 6-1.30: 7.4 to 7.8
    expect(band('us_new_york')).toMatchObject({ low: 7.4, high: 7.8 })
    expect(catalog.quantities.get('target_set')?.row).toMatchObject({ labels: { ranges_ours: 'Ours' } })
  })

  test('an end can be taken away, a band added and taken out; what is left goes by the row itself', () => {
    expect(changeBand(copy, 'ph', 0, { low: undefined }).bands.ph?.[0]).not.toHaveProperty('low')
    const more = addBand(copy, 'turbidity', { high: 0.5, source: 'ours' })
    expect(more.bands.turbidity).toEqual([{ high: 0.5, source: 'ours' }])
    expect(removeBand(more, 'turbidity', 0)).toEqual(copy)
  })

  test('its id is made of its name, and never one that is taken', () => {
    expect(setId('Our County’s Pools', new Set())).toBe('ranges_our_county_s_pools')
    expect(setId('Ours', new Set(['ranges_ours']))).toBe('ranges_ours_2')
    expect(setId('…', new Set())).toMatch(/^ranges/)
  })

  test('a definition without rows and without a set is refused', () => {
    const read = readDefinition({ ...ownSet(copy), targets: [] }, 'mine.json')
    expect(isDefinition(read) ? [] : read.map(sentence)).toEqual([
      'mine.json, groups: at least one entry is expected here.',
    ])
    expect(setOf({ groups: [], targets: 'none' })).toBeUndefined()
    expect(setOf(null)).toBeUndefined()
  })
})
