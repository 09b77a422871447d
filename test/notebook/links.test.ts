import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Live } from '../../src/engine/live'
import { hasValue, type Outcome } from '../../src/engine/outcome'
import { apply } from '../../src/notebook/apply'
import { CARRIED_WATERS, type WaterName } from '../../src/notebook/carriedWater'
import { carriedReadings, carryForward } from '../../src/notebook/carryForward'
import { readersOfCell, readsOfCell } from '../../src/notebook/cellGraph'
import type { CellPlace } from '../../src/notebook/cellPlace'
import { checkCircle } from '../../src/notebook/checkCircle'
import { checkEdit } from '../../src/notebook/checkEdit'
import { checkFormula } from '../../src/notebook/checkFormula'
import type { Edit } from '../../src/notebook/edit'
import { fromFile } from '../../src/notebook/file'
import { toShown } from '../../src/notebook/formulaNames'
import { type Cell, cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { removeLinkedScenario } from '../../src/notebook/unlink'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { applied, cell, edited, scenario } from './samples'

const LONG = Number(process.env.LONG ?? 0) > 0
const catalog = shippedCatalog()
const EXAMPLE = fromFile(readFileSync('examples/little-heron.json', 'utf8'), 'little-heron.json') as Notebook
const BASE = inOrder(EXAMPLE)[0]?.id ?? ''

/** An invented pool with three scenarios beside its baseline, whose ids are short. */
const BOOK = edited(
  {
    ...EXAMPLE,
    scenarios: Object.fromEntries(Object.entries(EXAMPLE.scenarios).filter(([id]) => id === BASE)),
    cells: onlyOf(BASE),
  },
  scenario('one', 'a1', 'One'),
  scenario('two', 'a2', 'Two'),
  scenario('three', 'a3', 'Three'),
)

function onlyOf(id: string): Notebook['cells'] {
  return Object.fromEntries(Object.entries(EXAMPLE.cells).filter(([key]) => key.startsWith(`${id}/`)))
}

const formula = (text: string): Cell => ({ kind: 'formula', text })
const link = (scenarioId: string, quantity: string, text: string) => cell(scenarioId, quantity, formula(text))

/** As the page takes an edit: checked, applied, looked at for circles. Null where it is refused, with the reason. */
function taken(notebook: Notebook, edit: Edit): Notebook | string {
  const refused = checkEdit(notebook, edit, catalog, checkFormula)
  if (refused) return sentence(refused)
  const result = apply(notebook, edit)
  if (isProblem(result)) return sentence(result)
  const circle = checkCircle(result.notebook, catalog, edit)
  return circle ? sentence(circle) : result.notebook
}

function outcomes(notebook: Notebook): ReadonlyMap<string, Outcome> {
  const live = new Live(notebook)
  const all = new Map(live.all().map(({ scenario: id, quantity, outcome }) => [cellKey(id, quantity), outcome]))
  live.close()
  return all
}

const valueIn = (all: ReadonlyMap<string, Outcome>) => (place: CellPlace) => {
  const outcome = all.get(cellKey(place.scenario, place.quantity))
  return hasValue(outcome) ? outcome.value : undefined
}

const circular = (all: ReadonlyMap<string, Outcome>) =>
  [...all].filter(([, outcome]) => !hasValue(outcome) && outcome.problem.code === 'circular').map(([key]) => key)

describe('a formula that would wait for its own answer is refused in words', () => {
  test.each([
    ['itself', [], link('one', 'ph', "'one'.ph")],
    ['a worked-out row of its own scenario', [], link('one', 'ph', 'lsi - 1')],
    ['the output of a solve that reads it', [], link('one', 'ph', 'water.lsi + 7')],
    ['two scenarios, each by the other', [link('one', 'ph', "'two'.ph")], link('two', 'ph', "'one'.ph")],
    [
      'three, through what they work out',
      [link('one', 'ph', "'two'.ph_after_dilution"), link('two', 'ph', "'three'.ph")],
      link('three', 'ph', "'one'.ph_for_target_lsi"),
    ],
    ['the baseline, which the other follows', [], link(BASE, 'ph', "'one'.ph")],
    ['the baseline by its word', [link('one', 'ph', 'baseline.lsi + 7')], link(BASE, 'ph', "'one'.ph")],
    [
      'what a cleared cell follows',
      [cell('one', 'ph', { kind: 'value', entered: '7', unit: 'pH', canonical: 7 }), link(BASE, 'ph', "'one'.ph")],
      cell('one', 'ph', null),
    ],
  ])('%s', (_, before, edit) => {
    const notebook = before.reduce<Notebook>((now, one) => {
      const next = taken(now, one)
      if (typeof next === 'string') throw new Error(next)
      return next
    }, BOOK)
    const refused = taken(notebook, edit)
    expect(refused).toMatch(/run in a circle: .+ → .+\. No formula and no plan can wait/)
    // The engine, asked all the same, finds the circle too.
    expect(circular(outcomes(applied(notebook, edit).notebook)).length).toBeGreaterThan(0)
  })

  test('the sentence names the cells of the circle in the words of the page', () => {
    const notebook = edited(BOOK, link('one', 'ph', "'two'.ph"))
    expect(taken(notebook, link('two', 'ph', "'one'.ph"))).toContain('pH in “Two” → pH in “One” → pH in “Two”')
  })

  const ids = fc.constantFrom(BASE, 'one', 'two', 'three')
  /** quantities of one unit each, so that most of what is written is taken */
  const kinds = [
    ['ph', 'ph_after_dilution', 'ph_for_target_lsi', 'ph_after'],
    ['salt', 'salt_used', 'salt_after_dilution', 'salt_after_bags'],
  ] as const
  const written = fc.constantFrom(...kinds).chain((kind) => {
    const name = fc.constantFrom(...kind)
    const text = fc.oneof(
      fc.tuple(ids, name).map(([id, of]) => `'${id}'.${of}`),
      name,
      name.map((of) => `baseline.${of}`),
      fc.tuple(ids, name, name).map(([id, a, b]) => `IF('${id}'.${a} > 0; ${b}; ${a})`),
    )
    return fc.tuple(name, text)
  })
  const wish = fc.oneof(
    { weight: 6, arbitrary: fc.tuple(ids, written).map(([id, [quantity, text]]) => link(id, quantity, text)) },
    {
      weight: 1,
      arbitrary: fc.tuple(ids, fc.constantFrom('ph', 'salt', 'ph_after')).map(([id, q]) => cell(id, q, null)),
    },
  )

  test('and no circle survives: what is taken has none, what is refused for one has one (the engine is the judge)', () => {
    fc.assert(
      fc.property(fc.array(wish, { minLength: 3, maxLength: 12 }), (wishes) => {
        let notebook = BOOK
        for (const edit of wishes) {
          const next = taken(notebook, edit)
          if (typeof next !== 'string') notebook = next
          else if (next.includes('in a circle'))
            expect(circular(outcomes(applied(notebook, edit).notebook)).length).toBeGreaterThan(0)
        }
        expect(circular(outcomes(notebook))).toEqual([])
      }),
      { seed: 7, numRuns: LONG ? 60 : 8 },
    )
  }, 240_000)

  test('a cell is read by those that it is read by: both ways round the graph is the same', () => {
    const notebook = edited(BOOK, link('one', 'ph', "'two'.ph_after_dilution"), link('three', 'salt', 'baseline.salt'))
    for (const place of [
      { scenario: 'two', quantity: 'ph_after_dilution' },
      { scenario: BASE, quantity: 'salt' },
      { scenario: 'one', quantity: 'ph' },
    ]) {
      const readers = readersOfCell(notebook, catalog, place)
      expect(readers.length).toBeGreaterThan(0)
      for (const reader of readers) expect(readsOfCell(notebook, catalog, reader)).toContainEqual(place)
    }
    expect(readersOfCell(notebook, catalog, { scenario: 'two', quantity: 'ph_after_dilution' })).toEqual([
      { scenario: 'one', quantity: 'ph' },
    ])
  })
})

describe('taking a scenario out', () => {
  const target = fc.constantFrom('ph', 'salt', 'total_alkalinity', 'temperature', 'volume', 'shell')
  const of = (quantity: string) =>
    fc.constantFrom(`'one'.${quantity}`, `'one'.${quantity} * 1 + 0`, `('two'.${quantity} + 'one'.${quantity}) / 2`)
  const links = fc.array(
    fc
      .tuple(fc.constantFrom('two', 'three'), target)
      .chain(([id, quantity]) =>
        (quantity === 'shell' ? fc.constant("'one'.shell") : of(quantity)).map((text) => [id, quantity, text] as const),
      ),
    { minLength: 1, maxLength: 6 },
  )

  test('turns every link to it into the number that was shown; undo brings both back', () => {
    fc.assert(
      fc.property(links, fc.double({ min: 7, max: 8, noNaN: true }), (wishes, ph) => {
        let notebook = edited(
          BOOK,
          cell('one', 'ph', { kind: 'value', entered: String(ph), unit: 'pH', canonical: ph }),
        )
        for (const [id, quantity, text] of wishes) {
          const next = taken(notebook, link(id, quantity, text))
          if (typeof next !== 'string') notebook = next
        }
        const before = outcomes(notebook)
        const edit = removeLinkedScenario(notebook, catalog, 'one', valueIn(before))
        expect(taken(notebook, edit)).not.toBeTypeOf('string')
        const { notebook: after, inverse } = applied(notebook, edit)
        expect(after.scenarios.one).toBeUndefined()
        expect(JSON.stringify(after.cells)).not.toContain("'one'")
        const now = outcomes(after)
        for (const [key, outcome] of now) {
          const was = before.get(key)
          if (hasValue(was))
            expect([key, hasValue(outcome) ? outcome.value : outcome.problem.code]).toEqual([key, was.value])
        }
        expect(applied(after, inverse).notebook).toEqual(notebook)
      }),
      { seed: 9, numRuns: LONG ? 80 : 10 },
    )
  }, 240_000)

  test('leaves an input not taken where the link had no value, and a worked-out row to its own formula', () => {
    const notebook = edited(BOOK, link('two', 'bromine', "'one'.bromine"), link('two', 'volume', "'one'.iron"))
    const { notebook: after } = applied(
      notebook,
      removeLinkedScenario(notebook, catalog, 'one', valueIn(outcomes(notebook))),
    )
    expect(after.cells['two/bromine']).toEqual({ kind: 'not_taken' })
    expect(after.cells['two/volume']).toBeUndefined()
  })

  test('turns the whole formula into its value where its units need that of the link', () => {
    const notebook = edited(BOOK, link('two', 'salt_mass', "salt_shortfall * 'one'.volume / 1000"))
    const all = outcomes(notebook)
    const edit = removeLinkedScenario(notebook, catalog, 'one', valueIn(all))
    const after = taken(notebook, edit)
    if (typeof after === 'string') throw new Error(after)
    expect(after.cells['two/salt_mass']).toMatchObject({
      kind: 'value',
      canonical: valueIn(all)({ scenario: 'two', quantity: 'salt_mass' }),
    })
  })

  test('puts the number into rows of the reader’s own as well', () => {
    const row = { name: 'my_gap', unit: 'pH', formula: "ph - 'one'.ph" }
    const own = { id: 'gap', worksheet: 'sample', after: 'ph', order: 'a0', row }
    const notebook = edited(BOOK, link('one', 'ph', '7.25'), { type: 'put_row', row: own })
    const { notebook: after } = applied(
      notebook,
      removeLinkedScenario(notebook, catalog, 'one', valueIn(outcomes(edited(BOOK, link('one', 'ph', '7.25'))))),
    )
    expect(after.rows.gap?.row.formula).toBe('ph - 7.25')
  })
})

describe('carrying a water forward', () => {
  const all = outcomes(BOOK)
  const of =
    (source: string, from = all) =>
    (quantity: string) =>
      valueIn(from)({ scenario: source, quantity })
  const carry = (notebook: Notebook, source: string, water: WaterName, live: boolean, from = all): Notebook => {
    const edit = carryForward(notebook, catalog, source, {
      name: 'After it',
      note: '',
      water: CARRIED_WATERS[water],
      live,
      valueAt: of(source, from),
    })
    if (isProblem(edit)) throw new Error(sentence(edit))
    const next = taken(notebook, edit)
    if (typeof next === 'string') throw new Error(next)
    return next
  }
  const newest = (notebook: Notebook) =>
    Object.values(notebook.scenarios).find(({ name }) => name.startsWith('After it'))?.id ?? ''

  test.each([true, false])('the new scenario reads what the dilution foretells, linked %s', (live) => {
    const notebook = carry(BOOK, BASE, 'dilution', live)
    const now = outcomes(notebook)
    const id = newest(notebook)
    for (const [reading, predicted] of Object.entries(CARRIED_WATERS.dilution.foretold)) {
      const foretold = all.get(cellKey(BASE, predicted))
      if (hasValue(foretold) && hasValue(all.get(cellKey(BASE, reading))))
        expect(now.get(cellKey(id, reading))).toMatchObject({ value: foretold.value })
    }
    expect(now.get(cellKey(id, 'ph'))).toMatchObject({ value: expect.any(Number) })
    for (const old of ['free_chlorine', 'total_chlorine'])
      expect(now.get(cellKey(id, old))).toMatchObject({ problem: { code: 'missing' } })
    expect(now.get(cellKey(id, 'volume'))).toEqual(now.get(cellKey(BASE, 'volume')))
  })

  test('linked, it follows its source; as numbers, it does not', () => {
    const [linked, numbers] = [carry(BOOK, BASE, 'dilution', true), carry(BOOK, BASE, 'dilution', false)]
    const salty = (notebook: Notebook) =>
      edited(notebook, cell(BASE, 'salt', { kind: 'value', entered: '6000', unit: 'mg/L as NaCl', canonical: 6000 }))
    const salt = (notebook: Notebook) => outcomes(notebook).get(cellKey(newest(notebook), 'salt'))
    const now = outcomes(salty(linked)).get(cellKey(BASE, 'salt_after_dilution'))
    expect(salt(salty(linked))).toMatchObject({ value: hasValue(now) ? now.value : null })
    expect(salt(salty(numbers))).toEqual(salt(numbers))
  })

  test('a link keeps to its scenario when that is renamed', () => {
    const notebook = edited(carry(BOOK, 'one', 'dilution', true), {
      type: 'change_scenario',
      scenario: 'one',
      set: { name: 'Half out' },
    })
    const stands = notebook.cells[cellKey(newest(notebook), 'ph')]
    expect(stands?.kind === 'formula' && toShown(stands.text, notebook)).toBe("'Half out'.ph_after_dilution")
  })

  test('one is carried from another that was carried, in whatever order they stand', () => {
    const first = carry(BOOK, BASE, 'dilution', true)
    const middle = newest(first)
    const second = carry(first, middle, 'ph_alkalinity', true, outcomes(first))
    expect(circular(outcomes(second))).toEqual([])
    const moved = edited(second, { type: 'change_scenario', scenario: middle, set: { order: 'a9' } })
    expect(outcomes(moved)).toEqual(outcomes(second))
  })

  test('a water of which nothing is foretold is not carried, with a sentence', () => {
    const edit = carryForward(BOOK, catalog, 'one', {
      name: 'After it',
      note: '',
      water: CARRIED_WATERS.dilution,
      live: true,
      valueAt: () => undefined,
    })
    expect(isProblem(edit) && sentence(edit)).toMatch(/^Nothing is foretold/)
  })

  test('every quantity of the waters is one of the contract, each foretold reading an input, each forecast worked out', () => {
    for (const { foretold, stays } of Object.values(CARRIED_WATERS)) {
      for (const name of [...Object.keys(foretold), ...stays]) {
        expect(catalog.quantities.get(name), name).toMatchObject({ formula: null, worksheet: 'sample' })
      }
      for (const name of Object.values(foretold)) expect(catalog.quantities.get(name)?.formula, name).not.toBeFalsy()
      expect(stays.filter((name) => name in foretold)).toEqual([])
    }
  })

  test('chlorine and what a meter reads of the whole water are carried by no worksheet', () => {
    for (const name of Object.keys(CARRIED_WATERS) as WaterName[]) {
      const carried = carriedReadings(catalog, CARRIED_WATERS[name], () => 1).filter(({ from }) => from !== null)
      for (const old of [
        'free_chlorine',
        'total_chlorine',
        'bromine',
        'orp',
        'chloride',
        'conductivity',
        'cell_salt_reading',
      ])
        expect(carried.map(({ quantity }) => quantity)).not.toContain(old)
    }
  })
})
