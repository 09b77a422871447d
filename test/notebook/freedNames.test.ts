import { expect, test } from 'vitest'
import { freedNames } from '../../src/notebook/freedNames'
import { catalogWith } from '../../src/worksheet/catalogFor'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { cell, EMPTY, edited } from './samples'

const row = (id: string, name: string, formula: string) => ({
  type: 'put_row' as const,
  row: { id, worksheet: 'salt', after: 'salt_mass', order: `a${id}`, row: { name, unit: 'kg', formula } },
})

/** As it was made when no shipped worksheet had a `salt_mass` or an `lsi`. */
const OLD = edited(
  EMPTY,
  row('1', 'salt_mass', '2 * bag_mass'),
  row('2', 'my_salt_mass', 'salt_mass + 1'),
  {
    type: 'put_worksheet',
    id: 'desk',
    definition: {
      format: 'basinbook-worksheet',
      version: 1,
      id: 'desk',
      edition: 1,
      takes: ['ph', 'salt_mass'],
      groups: [
        {
          id: 'rows',
          rows: [
            { name: 'lsi', unit: '1', formula: 'ph - 7.5' },
            { name: 'desk_index', unit: '1', formula: 'lsi + 0 * salt_mass / salt_mass' },
          ],
        },
      ],
    },
  },
  cell('first', 'salt_mass', { kind: 'value', entered: '3', unit: 'kg', canonical: 3 }),
  cell('first', 'my_salt_mass', { kind: 'formula', text: 'baseline.salt_mass * 2' }),
)

test('a row whose name a shipped worksheet has taken since gets another, and all that reads it follows', () => {
  const freed = freedNames(OLD, shippedCatalog())
  expect(freed?.renamed).toEqual(['salt_mass → my_salt_mass_2', 'lsi → my_lsi'])
  const now = freed?.notebook ?? EMPTY
  expect(now.rows['1']?.row).toMatchObject({ name: 'my_salt_mass_2', formula: '2 * bag_mass' })
  expect(now.rows['2']?.row).toMatchObject({ name: 'my_salt_mass', formula: 'my_salt_mass_2 + 1' })
  expect(now.cells['first/my_salt_mass_2']).toMatchObject({ canonical: 3 })
  expect(now.cells['first/salt_mass']).toBeUndefined()
  expect(now.cells['first/my_salt_mass']).toMatchObject({ text: 'baseline.my_salt_mass_2 * 2' })
  const { catalog, refused } = catalogWith(now.worksheets, now.rows)
  expect(refused).toEqual([])
  expect(catalog.quantities.get('my_lsi')?.formula?.text).toBe('ph - 7.5')
  expect(catalog.quantities.get('desk_index')?.reads).toEqual(['my_lsi', 'my_salt_mass_2'])
  expect(catalog.quantities.get('lsi')?.worksheet).toBe('saturation')
  // once is enough, and nothing is touched where no name is taken
  expect(freedNames(now, shippedCatalog())).toBeNull()
  expect(freedNames(EMPTY, shippedCatalog())).toBeNull()
})
