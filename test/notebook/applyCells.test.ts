import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { addScenario } from '../../src/notebook/commands'
import { newNotebook } from '../../src/notebook/create'
import type { SetCell } from '../../src/notebook/edit'
import type { Cell, Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { isProblem } from '../../src/words/problem'

function applied(notebook: Notebook, edit: Parameters<typeof apply>[1]) {
  const next = apply(notebook, edit)
  if (isProblem(next)) throw new Error(next.code)
  return next
}

const first = newNotebook('Invented', 'As tested', 'metric')
const notebook = applied(first, addScenario(first, 'What if')).notebook
const scenarios = inOrder(notebook).map(({ id }) => id)

const cell: fc.Arbitrary<Cell | null> = fc.constantFrom(
  null,
  { kind: 'not_taken' },
  { kind: 'choice', id: 'vinyl' },
  { kind: 'value', entered: '7.4', unit: 'pH', canonical: 7.4 },
)
const entry: fc.Arbitrary<SetCell> = fc.record({
  type: fc.constant('set_cell' as const),
  scenario: fc.constantFrom(...scenarios),
  quantity: fc.constantFrom('ph', 'shell', 'salt'),
  cell,
})

test('many entries in one step come to what they come to one after another, and go back as one', () => {
  fc.assert(
    fc.property(
      fc.array(entry, { maxLength: 12 }),
      fc.array(entry, { maxLength: 12 }),
      fc.nat(12),
      (before, edits, at) => {
        const start = before.reduce((now, edit) => applied(now, edit).notebook, notebook)
        const rename = { type: 'change_scenario', scenario: scenarios[1] ?? '', set: { name: 'Renamed' } } as const
        const mixed = [...edits.slice(0, at), rename, ...edits.slice(at)]
        const one = mixed.reduce((now, edit) => applied(now, edit).notebook, start)
        const all = applied(start, { type: 'together', edits: mixed })
        expect(all.notebook).toEqual(one)
        expect(applied(all.notebook, all.inverse).notebook).toEqual(start)
      },
    ),
    { seed: 3 },
  )
})

test('an entry of a scenario that is gone refuses the step whole', () => {
  const edits = [
    ...fc.sample(entry, { numRuns: 3, seed: 3 }),
    { ...fc.sample(entry, { numRuns: 1, seed: 3 })[0], scenario: 'gone' },
  ]
  expect(apply(notebook, { type: 'together', edits: edits as SetCell[] })).toMatchObject({ code: 'scenario_gone' })
})
