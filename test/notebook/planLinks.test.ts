import { describe, expect, test } from 'vitest'
import type { Value } from '../../src/functions/define'
import { apply } from '../../src/notebook/apply'
import { afterPlan } from '../../src/notebook/carryForward'
import { readersOfCell, readsOfCell } from '../../src/notebook/cellGraph'
import { checkCircle } from '../../src/notebook/checkCircle'
import { checkEdit } from '../../src/notebook/checkEdit'
import { duplicateScenario } from '../../src/notebook/commands'
import type { Edit } from '../../src/notebook/edit'
import { editSchema } from '../../src/notebook/editSchema'
import { fromFile } from '../../src/notebook/file'
import { followPlan } from '../../src/notebook/followPlan'
import { createHistory, remember } from '../../src/notebook/history'
import { isLinkedTo } from '../../src/notebook/linkedTo'
import { type Cell, cellKey, type Notebook } from '../../src/notebook/notebook'
import { planOf, plansFollowed } from '../../src/notebook/planLink'
import { resolve } from '../../src/notebook/resolve'
import { toFile } from '../../src/notebook/toFile'
import { removeLinkedScenario } from '../../src/notebook/unlink'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { catalogFor } from '../../src/worksheet/catalogFor'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { applied, cell, EMPTY, edited, scenario } from './samples'

const catalog = shippedCatalog()
const value = (entered: string, canonical: number, unit: string): Cell => ({ kind: 'value', entered, unit, canonical })

/** An invented water, entered in the baseline, and a scenario beside it. */
const BOOK = edited(
  EMPTY,
  cell('first', 'ph', value('8.1', 8.1, 'pH')),
  cell('first', 'temperature', value('81', 27.2, '°F')),
  cell('first', 'free_chlorine', value('1', 1, 'mg/L')),
  cell('first', 'volume', value('40', 40, 'm³')),
  scenario('acid', 'a5', 'With acid'),
)
const END: ReadonlyMap<string, Value | null> = new Map([
  ['ph', 7.5],
  ['temperature', 27.2],
  ['salt', null],
])

function carried(notebook: Notebook, source: string, live = true): { notebook: Notebook; id: string } {
  const edit = afterPlan(notebook, catalog, source, {
    name: `After ${Object.keys(notebook.scenarios).length}`,
    note: '',
    live,
    readings: END,
    valueAt: () => undefined,
  })
  if (edit.type !== 'add_scenario') throw new Error(edit.type)
  return { notebook: edited(notebook, edit), id: edit.scenario.id }
}

/** What stands in the cells of a scenario, by quantity. */
function standing(notebook: Notebook, id: string): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(notebook.cells)
      .filter(([key]) => key.startsWith(`${id}/`))
      .map(([key, one]) => [key.slice(id.length + 1), one]),
  )
}

/** The same of readings alone. */
function readingsIn(notebook: Notebook, id: string): Record<string, unknown> {
  const all = Object.entries(standing(notebook, id))
  return Object.fromEntries(all.filter(([name]) => catalog.quantities.get(name)?.worksheet === 'sample'))
}

const circle = (notebook: Notebook, edit: Edit) => {
  const refused = checkCircle(applied(notebook, edit).notebook, catalog, edit)
  return refused && sentence(refused)
}

describe('a scenario of the end of a plan', () => {
  test('follows it in each reading that the plan holds, read or not; what does not last is not taken', () => {
    const { notebook, id } = carried(BOOK, 'acid')
    expect(readingsIn(notebook, id)).toEqual({
      ph: { kind: 'value', entered: '7.5', unit: 'pH', canonical: 7.5, plan: 'acid' },
      temperature: { kind: 'value', entered: '81', unit: '°F', canonical: 27.2, plan: 'acid' },
      salt: { kind: 'not_taken', plan: 'acid' },
    })
    expect(resolve(notebook, catalog, id, 'free_chlorine')).toEqual({ from: 'lacking', cell: null })
    expect(plansFollowed(notebook)).toEqual(['acid'])
  })

  test('as plain numbers it follows nothing', () => {
    const { notebook, id } = carried(BOOK, 'acid', false)
    expect(Object.values(readingsIn(notebook, id)).map((one) => planOf(one as Cell))).toEqual([null, null])
    expect(plansFollowed(notebook)).toEqual([])
  })

  test('moves with the plan, in no step of history; what was typed over it since stays', () => {
    const { notebook, id } = carried(BOOK, 'acid')
    const typed = edited(notebook, cell(id, 'temperature', value('30', 30, '°C')))
    const edit = followPlan(
      typed,
      catalog,
      'acid',
      new Map<string, Value>([
        ['ph', 7.4],
        ['salt', 3200],
        ['temperature', 20],
      ]),
    )
    if (!edit) throw new Error('nothing to follow')
    const result = applied(typed, edit)
    expect(standing(result.notebook, id)).toMatchObject({
      ph: { canonical: 7.4, plan: 'acid' },
      salt: { kind: 'value', canonical: 3200, plan: 'acid' },
      temperature: value('30', 30, '°C'),
    })
    const history = createHistory()
    expect(remember(history, edit, result)).toBe(history)
    expect(applied(result.notebook, result.inverse).notebook).toEqual(typed)
    expect(editSchema.parse(JSON.parse(JSON.stringify(edit)))).toEqual(edit)
  })

  test('is left alone where the plan ends as before, and has no reading where the plan has none', () => {
    const { notebook, id } = carried(BOOK, 'acid')
    expect(followPlan(notebook, catalog, 'acid', END)).toBeNull()
    expect(followPlan(notebook, catalog, 'first', END)).toBeNull()
    const edit = followPlan(notebook, catalog, 'acid', new Map())
    const now = standing(edit ? applied(notebook, edit).notebook : notebook, id)
    expect(now).toMatchObject({
      ph: { kind: 'not_taken', plan: 'acid' },
      temperature: { kind: 'not_taken', plan: 'acid' },
    })
  })

  test('comes back from a file as it was', () => {
    const { notebook } = carried(BOOK, 'acid')
    expect(fromFile(toFile(notebook), 'mine.json')).toEqual(notebook)
  })

  test('and a sample’s reading in a file follows no plan', () => {
    const reading = { ...value('7.5', 7.5, 'pH'), plan: 'acid' }
    const sample = { id: 's', name: 'S', date: '', elsewhere: false, readings: { ph: reading } }
    const text = JSON.stringify({ ...JSON.parse(toFile(BOOK)), samples: { s: sample } })
    expect(Array.isArray(fromFile(text, 'mine.json'))).toBe(true)
  })
})

describe('the graph of cells', () => {
  test('knows what a plan is made from, both ways round', () => {
    const { notebook, id } = carried(BOOK, 'acid')
    const ph = { scenario: id, quantity: 'ph' }
    const reads = readsOfCell(notebook, catalog, ph)
    for (const quantity of ['ph', 'temperature', 'free_chlorine', 'volume'])
      expect(reads).toContainEqual({ scenario: 'acid', quantity })
    expect(readersOfCell(notebook, catalog, { scenario: 'acid', quantity: 'volume' })).toContainEqual(ph)
  })

  const { notebook: chain, id } = carried(BOOK, 'acid')
  const formula = (text: string): Cell => ({ kind: 'formula', text })
  test.each<[string, Edit]>([
    ['a reading of its source by what follows it', cell('acid', 'ph', formula(`'${id}'.ph`))],
    ['a target of its source, which its plan reads too', cell('acid', 'target_ph', formula(`'${id}'.ph`))],
    ['the baseline, which its source follows', cell('first', 'ph', formula(`'${id}'.ph_after_dilution`))],
    ['a plan that follows it', cell('acid', 'ph', { ...value('7', 7, 'pH'), plan: id } as Cell)],
    ['the baseline by the plan of one that follows it', cell('first', 'ph', { kind: 'not_taken', plan: 'acid' })],
  ])('finds the circle through %s', (_, edit) => {
    expect(circle(chain, edit)).toMatch(/run in a circle: .+ → /)
  })

  test('takes a chain of plans, and a formula that reads what follows', () => {
    const second = carried(chain, id)
    expect(circle(chain, cell('acid', 'ph', value('7', 7, 'pH')))).toBeNull()
    expect(circle(second.notebook, cell(second.id, 'temperature', formula(`'${id}'.temperature`)))).toBeNull()
  })

  test('finds the circle that a cleared cell would bring about', () => {
    const own = edited(
      BOOK,
      ...['ph', 'temperature', 'free_chlorine', 'volume'].map((quantity) => cell('acid', quantity, formula('7'))),
    )
    const { notebook, id: follower } = carried(own, 'acid')
    const read = cell('first', 'ph', formula(`'${follower}'.ph`))
    expect(circle(notebook, read)).toBeNull()
    expect(circle(edited(notebook, read), cell('acid', 'ph', null))).toMatch(/in a circle/)
  })
})

describe('what cannot be', () => {
  const { notebook, id } = carried(BOOK, 'acid')
  const refused = (edit: Edit, of = notebook) => {
    const result = apply(of, edit)
    return isProblem(result) ? sentence(result) : 'taken'
  }

  test('its own plan, one of nobody, and a source that goes and leaves its followers behind', () => {
    expect(refused(cell(id, 'ph', { kind: 'not_taken', plan: id }))).toMatch(/cannot follow its own/)
    expect(refused(cell(id, 'ph', { kind: 'not_taken', plan: 'nobody' }))).not.toBe('taken')
    expect(refused({ type: 'remove_scenario', scenario: 'acid' })).toMatch(/is followed by another/)
    for (const plan of [id, 'nobody']) {
      const text = JSON.parse(toFile(notebook))
      text.cells[cellKey(id, 'ph')].plan = plan
      expect(Array.isArray(fromFile(JSON.stringify(text), 'mine.json')), plan).toBe(true)
    }
  })

  test('a row that leads from the plan to what follows it', () => {
    const row = { name: 'lent', unit: 'pH', formula: 'target_ph' }
    const own = { id: 'lent', worksheet: 'sample', after: 'ph', order: 'a0', row }
    const lent = edited(notebook, { type: 'put_row', row: own }, cell('acid', 'ph', { kind: 'formula', text: 'lent' }))
    const change: Edit = { type: 'put_row', row: { ...own, row: { ...row, formula: `'${id}'.ph` } } }
    const after = applied(lent, change).notebook
    const found = checkCircle(after, catalogFor(after.worksheets, after.rows), change)
    expect(found && sentence(found)).toMatch(/the step plan of “With acid”/)
  })

  test('a reading of the old water, where the plan’s is cleared', () => {
    const cleared = edited(notebook, cell(id, 'ph', null))
    expect(resolve(cleared, catalog, id, 'ph').cell).toBeNull()
    expect(resolve(cleared, catalog, id, 'shell').from).not.toBe('lacking')
  })

  test('another pool than that of its source, whatever is entered there later', () => {
    const larger = edited(notebook, cell('acid', 'measured_volume', value('90', 90, 'm³')))
    expect(resolve(larger, catalog, id, 'measured_volume').cell).toEqual({
      kind: 'formula',
      text: "'acid'.measured_volume",
    })
  })
})

describe('taking the source out', () => {
  test('makes plain numbers of what followed its plan, in the same edit; undo links them again', () => {
    const { notebook, id } = carried(BOOK, 'acid')
    expect(isLinkedTo(notebook, 'acid')).toBe(true)
    const edit = removeLinkedScenario(notebook, catalog, 'acid', () => undefined)
    expect(checkEdit(notebook, edit, catalog, () => null)).toBeNull()
    const { notebook: after, inverse } = applied(notebook, edit)
    expect(after.scenarios.acid).toBeUndefined()
    expect(standing(after, id)).toMatchObject({ ph: value('7.5', 7.5, 'pH'), salt: { kind: 'not_taken' } })
    expect(plansFollowed(after)).toEqual([])
    expect(JSON.stringify(after.cells)).not.toContain('plan')
    expect(applied(after, inverse).notebook).toEqual(notebook)
  })

  test('one that is copied follows the same plan', () => {
    const { notebook, id } = carried(BOOK, 'acid')
    const copy = duplicateScenario(notebook, id, 'Copy')
    const result = isProblem(copy) ? copy : apply(notebook, copy)
    if (isProblem(result)) throw new Error(sentence(result))
    const copied = Object.values(result.notebook.scenarios).find(({ name }) => name === 'Copy')?.id ?? ''
    expect(result.notebook.cells[cellKey(copied, 'ph')]).toMatchObject({ plan: 'acid' })
  })
})
