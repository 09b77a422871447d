import { expect, test } from 'vitest'
import { copied } from '../../src/ui/rows/ownWorksheetActs'
import { catalogFor } from '../../src/worksheet/catalogFor'
import type { Definition } from '../../src/worksheet/definition'
import { prepareOwnWorksheets } from '../../src/worksheet/ownWorksheets'

await prepareOwnWorksheets()

test('copies of one worksheet have names that tell them apart', () => {
  const own: Record<string, Definition> = {}
  const labels = [1, 2, 3].map(() => {
    const catalog = catalogFor(own)
    const original = catalog.worksheets.find(({ id }) => id === 'saturation')
    if (!original) throw new Error('there is no such worksheet')
    const copy = copied(original, catalog)
    own[copy.id] = copy
    return copy.label
  })
  expect(Object.keys(own)).toHaveLength(3)
  expect(labels[0]).toMatch(/, my copy$/)
  expect(labels.slice(1)).toEqual([`${labels[0]} 2`, `${labels[0]} 3`])
})
