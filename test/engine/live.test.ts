import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import type { Change } from '../../src/engine/client'
import { Live } from '../../src/engine/live'
import { hasValue, type Outcome } from '../../src/engine/outcome'
import { apply } from '../../src/notebook/apply'
import { addScenario } from '../../src/notebook/commands'
import { newNotebook } from '../../src/notebook/create'
import type { Edit } from '../../src/notebook/edit'
import { goBack } from '../../src/notebook/goBack'
import type { Cell, Notebook } from '../../src/notebook/notebook'
import { baselineOf, inOrder } from '../../src/notebook/order'
import { isProblem } from '../../src/words/problem'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const number = (canonical: number): Cell => ({ kind: 'value', entered: String(canonical), unit: '', canonical })

/** An invented water, complete enough for the saturation worksheet. */
const READINGS = {
  ph: 7.6,
  temperature: 27,
  total_alkalinity: 90,
  calcium_hardness: 280,
  cyanuric_acid: 45,
  salt: 3100,
}

function applied(notebook: Notebook, edit: Edit): Notebook {
  const result = apply(notebook, edit)
  if (isProblem(result)) throw new Error(result.code)
  return result.notebook
}

function filled(): Notebook {
  const empty = newNotebook('Invented pool', 'As tested', 'metric')
  const scenario = baselineOf(empty).id
  return Object.entries(READINGS).reduce(
    (notebook, [quantity, value]) => applied(notebook, { type: 'set_cell', scenario, quantity, cell: number(value) }),
    empty,
  )
}

/** All outcomes by scenario and quantity, brought up to date by changes. */
function follow(known: Map<string, Outcome>, changes: readonly Change[]): Map<string, Outcome> {
  for (const { scenario, quantity, outcome } of changes) known.set(`${scenario}/${quantity}`, outcome)
  return known
}

const fresh = (notebook: Notebook) => {
  const live = new Live(notebook)
  const outcomes = follow(new Map(), live.all())
  live.close()
  return outcomes
}

describe('a live notebook', () => {
  test('works nothing out from a reading that is only a limit, and says so where it was needed', () => {
    const notebook = filled()
    const scenario = baselineOf(notebook).id
    const live = new Live(notebook)
    const known = follow(new Map(), live.all())
    expect(hasValue(known.get(`${scenario}/lsi`))).toBe(true)
    const cell: Cell = { kind: 'limit', side: 'above', entered: '100', unit: 'mg/L', canonical: 100 }
    follow(known, live.edit([{ type: 'set_cell', scenario, quantity: 'cyanuric_acid', cell }]))
    for (const name of ['cyanuric_acid', 'lsi', 'carbonate_alkalinity'])
      expect(known.get(`${scenario}/${name}`), name).toMatchObject({ problem: { code: 'only_a_limit' } })
    live.close()
  })

  test('names every reading that a result waits for, and fewer as they come', () => {
    const notebook = newNotebook('Invented pool', 'As tested', 'metric')
    const scenario = baselineOf(notebook).id
    const live = new Live(notebook)
    const known = follow(new Map(), live.all())
    const waitsFor = () => {
      const outcome = known.get(`${scenario}/lsi`)
      return outcome && !hasValue(outcome) ? outcome.problem.facts.names : null
    }
    expect(waitsFor()).toEqual(expect.arrayContaining(['ph', 'temperature', 'total_alkalinity', 'calcium_hardness']))
    expect(waitsFor()).not.toContain('cyanuric_acid')
    for (const [quantity, value] of Object.entries(READINGS)) {
      follow(known, live.edit([{ type: 'set_cell', scenario, quantity, cell: number(value) }]))
      const names = waitsFor()
      if (names) expect(names).not.toContain(quantity)
    }
    expect(waitsFor()).toBeNull()
    live.close()
  })

  test('a reading that the baseline loses is missing in the scenarios that follow it', () => {
    const first = filled()
    const notebook = applied(first, addScenario(first, 'What if'))
    const [baseline, later] = inOrder(notebook)
    const live = new Live(notebook)
    const known = follow(new Map(), live.all())
    follow(known, live.edit([{ type: 'set_cell', scenario: baseline?.id ?? '', quantity: 'ph', cell: null }]))
    expect(known.get(`${later?.id}/lsi`)).toMatchObject({ problem: { code: 'missing', facts: { names: ['ph'] } } })
    live.close()
  })

  test('gives the headless engine’s numbers for the same inputs', () => {
    fc.assert(
      fc.property(
        fc.record({
          ph: fc.double({ min: 6.8, max: 8.4, noNaN: true }),
          temperature: fc.double({ min: 2, max: 40, noNaN: true }),
          total_alkalinity: fc.double({ min: 40, max: 240, noNaN: true }),
          calcium_hardness: fc.double({ min: 20, max: 900, noNaN: true }),
          cyanuric_acid: fc.double({ min: 0, max: 90, noNaN: true }),
          salt: fc.double({ min: 200, max: 6000, noNaN: true }),
        }),
        (readings) => {
          const empty = newNotebook('Invented pool', 'As tested', 'metric')
          const scenario = baselineOf(empty).id
          const live = new Live(empty)
          live.all()
          const edits = Object.entries(readings).map(
            ([quantity, value]): Edit => ({ type: 'set_cell', scenario, quantity, cell: number(value) }),
          )
          const known = follow(new Map(), live.edit(edits))
          const wanted = ['lsi', 'calcite_si', 'table_index', 'ryznar', 'ccpp', 'carbonate_alkalinity']
          const batch = new Batch(shippedCatalog(), wanted)
          const [results] = batch.evaluate([new Map(Object.entries(readings))])
          wanted.forEach((name, i) => {
            expect(known.get(`${scenario}/${name}`)).toEqual(results?.[i])
          })
          live.close()
          batch.close()
        },
      ),
      { seed: 20, numRuns: 25 },
    )
  }, 60_000)

  test('stands as an earlier state did, once it has gone back to it, and as before once that is taken back', () => {
    const first = filled()
    const live = new Live(first)
    follow(new Map(), live.all())
    const more: Edit[] = [
      { type: 'set_cell', scenario: baselineOf(first).id, quantity: 'ph', cell: number(7.1) },
      addScenario(first, 'Warm'),
    ]
    const second = more.reduce(applied, first)
    live.edit(more)
    const back = goBack(second, first)
    const known = follow(new Map(), live.edit([back]))
    expect(known).toEqual(fresh(first))
    const result = apply(second, back)
    if (isProblem(result)) throw new Error(result.code)
    expect(follow(new Map(), live.edit([result.inverse]))).toEqual(fresh(second))
    live.close()
  })

  test('after any edits stands as if it had been opened so', () => {
    const quantities = [
      'ph',
      'temperature',
      'salt',
      'borate',
      'cyanuric_acid',
      'tds',
      'shape',
      'diameter',
      'depth_shallow',
      'volume',
    ]
    const cell = fc.oneof(
      fc.double({ min: 0.5, max: 40, noNaN: true }).map(number),
      fc.constant<Cell | null>(null),
      fc.constant<Cell>({ kind: 'not_taken' }),
      fc
        .constantFrom('baseline.ph', 'ph * 1.01', 'total_alkalinity / 10', 'lsi', 'magnesium', 'sulfate')
        .map((text): Cell => ({ kind: 'formula', text })),
    )
    const step = fc.oneof(
      {
        weight: 8,
        arbitrary: fc.record({
          do: fc.constant('set' as const),
          at: fc.nat(9),
          quantity: fc.constantFrom(...quantities),
          cell,
        }),
      },
      { weight: 2, arbitrary: fc.record({ do: fc.constant('add' as const) }) },
      { weight: 1, arbitrary: fc.record({ do: fc.constant('remove' as const), at: fc.nat(9) }) },
      { weight: 1, arbitrary: fc.record({ do: fc.constant('tie' as const), at: fc.nat(9), elsewhere: fc.boolean() }) },
    )
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), (steps) => {
        let notebook = filled()
        const live = new Live(notebook)
        const known = follow(new Map(), live.all())
        steps.forEach((s, n) => {
          const scenarios = inOrder(notebook)
          const at = 'at' in s ? (scenarios[s.at % scenarios.length]?.id ?? '') : ''
          const edits: Edit[] = []
          if (s.do === 'set') edits.push({ type: 'set_cell', scenario: at, quantity: s.quantity, cell: s.cell })
          if (s.do === 'add') edits.push(addScenario(notebook, 'What if'))
          if (s.do === 'remove') edits.push({ type: 'remove_scenario', scenario: at })
          if (s.do === 'tie') {
            const id = `sample-${n}`
            const readings = { ph: { kind: 'value', entered: '7.2', unit: '', canonical: 7.2 } as const }
            edits.push({ type: 'put_sample', sample: { id, name: id, date: '', elsewhere: s.elsewhere, readings } })
            edits.push({ type: 'change_scenario', scenario: at, set: { sample: id } })
          }
          for (const edit of edits) {
            const result = apply(notebook, edit)
            if (isProblem(result)) continue
            notebook = result.notebook
            follow(known, live.edit([edit]))
          }
        })
        const opened = fresh(notebook)
        for (const [key, outcome] of opened) expect([key, known.get(key)]).toEqual([key, outcome])
        live.close()
      }),
      { seed: 7, numRuns: 40 },
    )
  }, 60_000)
})
