import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { newNotebook } from '../../src/notebook/create'
import type { Edit } from '../../src/notebook/edit'
import { cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { resolve } from '../../src/notebook/resolve'
import { touched } from '../../src/ui/shell/touched'
import { isProblem } from '../../src/words/problem'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const catalog = shippedCatalog()
const QUANTITIES = ['ph', 'salt', 'depth_shallow', 'lsi'] as const

function start(): Notebook {
  let now = newNotebook('Invented', 'As tested', 'metric')
  const added: Edit[] = [
    { type: 'put_sample', sample: { id: 's', name: 'S', date: '', elsewhere: true, readings: {} } },
    { type: 'add_scenario', scenario: { id: 'b', name: 'B', note: '', order: 'a1', sample: null }, cells: {} },
    { type: 'add_scenario', scenario: { id: 'c', name: 'C', note: '', order: 'a2', sample: null }, cells: {} },
  ]
  for (const edit of added) {
    const applied = apply(now, edit)
    if (isProblem(applied)) throw new RangeError(applied.code)
    now = applied.notebook
  }
  return now
}

const notebook = start()
const ids = inOrder(notebook).map(({ id }) => id)
const value = { kind: 'value', entered: '7', unit: 'pH', canonical: 7 } as const
const simple: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({
    type: fc.constant('set_cell' as const),
    scenario: fc.constantFrom(...ids),
    quantity: fc.constantFrom(...QUANTITIES),
    cell: fc.constantFrom(value, null, { kind: 'not_taken' } as const),
  }),
  fc.record({
    type: fc.constant('change_scenario' as const),
    scenario: fc.constantFrom(...ids),
    set: fc.constantFrom({ sample: 's' }, { sample: null }, { note: 'n' }),
  }),
  fc.constantFrom<Edit>(
    { type: 'change_notebook', set: { name: 'Other' } },
    { type: 'remove_scenario', scenario: 'c' },
  ),
)

describe('touched', () => {
  test('names every cell whose source an edit changes', () => {
    fc.assert(
      fc.property(fc.array(simple, { minLength: 1, maxLength: 6 }), (edits) => {
        let now = notebook
        for (const edit of edits) {
          const applied = apply(now, edit)
          if (isProblem(applied)) continue
          const named = touched(edit, ids)
          for (const scenario of inOrder(applied.notebook)) {
            for (const quantity of QUANTITIES) {
              const before = resolve(now, catalog, scenario.id, quantity)
              const after = resolve(applied.notebook, catalog, scenario.id, quantity)
              const changed = JSON.stringify(before) !== JSON.stringify(after)
              if (changed && named !== 'all') expect(named).toContain(cellKey(scenario.id, quantity))
            }
          }
          now = applied.notebook
        }
      }),
      { seed: 11 },
    )
  })

  test('a later scenario wakes no other', () => {
    expect(touched({ type: 'set_cell', scenario: 'b', quantity: 'ph', cell: null }, ids)).toEqual([cellKey('b', 'ph')])
  })
})
