import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { factWord } from '../../src/ui/factWord'
import { missingLabels } from '../../src/ui/grid/cellView'
import { whyText } from '../../src/ui/lab/whyText'
import { labelsOfRows } from '../../src/ui/labelOf'
import { noticeText } from '../../src/ui/noticeText'
import { problem } from '../../src/words/problem'
import { sayFacts, sentence } from '../../src/words/say'
import { catalogFor } from '../../src/worksheet/catalogFor'

const own = {
  id: 'r',
  worksheet: 'salt',
  after: 'salt_mass',
  order: 'a0',
  row: { name: 'my_dose', label: 'Dose of mine', unit: 'kg', formula: 'salt_mass' },
}
const catalog = catalogFor({}, { r: own })
const noWater = problem('no_such_water', ['Langelier index'], { quantity: 'total_alkalinity' })

afterEach(() => sayFacts((_code, _name, fact) => fact))

test('a command speaks of columns, by their names in formulas', () => {
  expect(sentence(noWater)).toContain('Look at total_alkalinity again.')
})

describe('the page', () => {
  beforeEach(() => sayFacts((code, name, fact) => factWord(catalog, code, name, fact)))

  test.each([
    [noWater, 'Langelier index: no water has these readings together. Look at total alkalinity again.'],
    [
      problem('out_of_range', [], { quantity: 'ph', value: 15, min: 0, max: 14 }),
      'pH is 15; this is worked out from 0 to 14 only.',
    ],
    [
      problem('missing', ['LSI'], { names: ['calcium_hardness', 'salt|chloride'] }),
      'LSI: needs readings that were not taken: calcium hardness, salt or chloride.',
    ],
    [
      problem('argument_not_a_number', [], { parameter: 'temperature', function: 'LSI', found: 'x' }),
      'Temperature of LSI is “x”, which is no number.',
    ],
    // a row of the reader's own has its label in the notebook
    [
      problem('units_flagged', ['Bags'], { name: 'my_dose' }),
      'Bags: the units in the formula of “Dose of mine” do not agree, so its number is not shown.',
    ],
    [
      problem('row_in_use', [], { name: 'my_dose', users: ['total_alkalinity'] }),
      '“Dose of mine” is read by Total alkalinity; change these formulas first.',
    ],
    [
      problem('mixed_models', ['HOCl'], { quantity: 'hocl', wanted: 'obrien_1974', model: 'wahman_2019' }),
      /derived with the model O’Brien, Morris and Butler, 1974, and Wahman and Alexander, 2019 is in use/,
    ],
  ])('calls quantities by their labels: %#', (trouble, text) => {
    expect(sentence(trouble)).toMatch(text)
  })

  test('knows a row of the reader’s own by its label also where only its name is at hand', () => {
    expect(missingLabels(['my_dose'])).toBe('my dose')
    expect(noticeText('unlikely:my_dose')).toMatch(/^my dose is unusual/)
    labelsOfRows((name) => catalog.quantities.get(name)?.row)
    expect(missingLabels(['my_dose', 'ph'])).toBe('dose of mine, pH')
    expect(noticeText('unlikely:my_dose')).toMatch(/^Dose of mine is unusual/)
    labelsOfRows(() => undefined)
  })

  test('gives the reasons for a laboratory’s column in the same words', () => {
    const column = { role: 'note' as const, confidence: 0 }
    const why = (code: string, facts: Readonly<Record<string, string>>) =>
      whyText({ ...column, why: [{ code, facts }] })
    expect(why('second_of', { quantity: 'total_alkalinity', heading: 'TA' })).toContain(
      'for total alkalinity, after “TA”',
    )
    expect(why('unit_wrong_dimension', { quantity: 'free_chlorine', found: 'kg' })).toMatch(/^free chlorine is not/)
    expect(why('role', { role: 'sample' })).toBe('a column that says Sample')
  })

  test('leaves a name that somebody wrote as it was written', () => {
    expect(sentence(problem('unknown_quantity', [], { name: 'calcium_hardnes' }))).toContain('“calcium_hardnes”')
    expect(sentence(problem('quantity_unknown', [], { quantity: 'no_such_row' }))).toContain('“no_such_row”')
    expect(sentence(problem('row_name_taken', [], { name: 'calcium_hardness' }))).toContain('“calcium_hardness”')
  })

  test('says what a row without a unit of its own counts, in words', () => {
    const apart = { at: 1, left_unit: 'pH', right_unit: 'choice' }
    expect(sentence(problem('units_together', ['Mine'], apart))).toContain('pH and a choice meet')
    expect(sentence(problem('units_row', ['Mine'], { wanted_unit: '1', found_unit: 'kg' }))).toBe(
      'Mine: the row’s unit is a plain number, and its formula gives kg.',
    )
  })
})
