import { describe, expect, test } from 'vitest'
import { isListed, numbersOf } from '../../src/ui/study/quantityList'
import { catalogFor } from '../../src/worksheet/catalogFor'
import { prepareOwnWorksheets } from '../../src/worksheet/ownWorksheets'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

await prepareOwnWorksheets()

const row = { name: 'index_twice', unit: '1', formula: 'lsi * 2' }
const rows = { one: { id: 'one', worksheet: 'saturation', after: 'lsi', order: 'a0', row } }
const namesIn = (lists: ReturnType<typeof numbersOf>, id: string) =>
  lists.find(({ worksheet }) => worksheet.id === id)?.quantities.map(({ name }) => name) ?? []

describe('the quantities to choose from', () => {
  test.each(['computed', 'any'] as const)('have rows of the reader’s own under their worksheet: %s', (kind) => {
    const lists = numbersOf(catalogFor({}, rows), kind)
    const names = namesIn(lists, 'saturation')
    expect(names[names.indexOf('lsi') + 1]).toBe('index_twice')
    expect(isListed(lists, 'index_twice')).toBe(true)
  })

  test('have no worked-out row among the inputs', () => {
    expect(isListed(numbersOf(catalogFor({}, rows), 'input'), 'index_twice')).toBe(false)
  })

  test('name each quantity once, though other worksheets show it too', () => {
    for (const kind of ['input', 'computed', 'any'] as const) {
      const names = numbersOf(shippedCatalog(), kind).flatMap(({ quantities }) => quantities.map(({ name }) => name))
      expect(new Set(names).size).toBe(names.length)
    }
  })
})
