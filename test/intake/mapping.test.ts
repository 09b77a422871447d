import { describe, expect, test } from 'vitest'
import { answersOf, isMapping, mappingOf, readMapping, recognised } from '../../src/intake/mapping'
import { sniff } from '../../src/intake/sniff'
import { known } from './known'

const monday = 'Bottle;Date;Salz;Calcium (mg/l)\nA;03/07/2026;3,250;120\n'
const tuesday = 'Bottle;Date;Salz;Calcium (mg/l)\nB;05/07/2026;3,300;118\n'
const answers = {
  decimal: ',',
  dates: 'dmy',
  columns: { Salz: { unit: 'g/L' }, 'Calcium (mg/l)': { unit: 'mg/L as Ca' } },
} as const

describe('a mapping', () => {
  const answered = sniff(monday, known, answers)
  const mapping = mappingOf(answered, 'Monday’s laboratory')

  test('keeps the answers, and answers the next file of the same headings', () => {
    expect(sniff(monday, known).questions.map(({ code }) => code)).toEqual(['decimal_mark', 'date_order', 'which_unit'])
    // whether 3.25 of salt is in mg/L or g/L can be asked once the mark is known
    expect(sniff(monday, known, { decimal: ',', dates: 'dmy' }).questions.map(({ heading }) => heading)).toEqual([
      'Salz',
      'Calcium (mg/l)',
    ])
    expect(answered.questions).toEqual([])
    const open = sniff(tuesday, known)
    const found = recognised(open, [mapping])
    expect(found?.name).toBe('Monday’s laboratory')
    const again = sniff(tuesday, known, answersOf(mapping))
    expect(again.questions).toEqual([])
    expect(again.columns.map(({ quantity, unit }) => [quantity, unit?.code])).toEqual(
      answered.columns.map(({ quantity, unit }) => [quantity, unit?.code]),
    )
  })

  test('survives being written and read', () => {
    const read = readMapping(JSON.stringify(mapping), 'mapping.json')
    expect(isMapping(read) && read).toEqual(mapping)
  })

  test('is not recognised under other headings', () => {
    expect(recognised(sniff('Bottle;Date;pH\nA;03/07/2026;7,5\n', known), [mapping])).toBeNull()
  })

  test('a wrong file names the place', () => {
    const read = readMapping('{"format":"basinbook-mapping","version":1,"columns":{"pH":{"unit":7}}}', 'm.json')
    expect(read).toMatchObject([{ code: 'lab_mapping_wrong', path: ['m.json', 'columns', 'pH', 'unit'] }])
  })
})

test('an answer corrects what was matched, or sets a column aside', () => {
  const text = 'Sample,Ca hardness (mg/L),Total chlorine (ppm)\nA,7.4,2\nB,7.6,1\n'
  const { columns } = sniff(text, known, {
    columns: { 'Ca hardness (mg/L)': { quantity: 'ph', unit: 'pH' }, 'Total chlorine (ppm)': { role: 'note' } },
  })
  expect(columns.map(({ role, quantity }) => quantity ?? role)).toEqual(['sample', 'ph', 'note'])
})

test('a unit that stands in the rows is kept for no row without one', () => {
  const text = 'Sample,Parameter,Result,Unit\nA,Hardness,250,mg/L\nA,Salt,3200,\nB,Salt,3.1,g/L\n'
  const { columns } = mappingOf(sniff(text, known), 'Long')
  expect(columns).toMatchObject({ Hardness: { quantity: 'total_hardness' }, Salt: { unit: 'mg/L as NaCl' } })
  expect(columns?.Hardness).not.toHaveProperty('unit')
})
