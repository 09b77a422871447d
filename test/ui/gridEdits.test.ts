import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pastedTable } from '../../src/intake/pastedTable'
import { apply } from '../../src/notebook/apply'
import { checkFormula } from '../../src/notebook/checkFormula'
import { clearCells } from '../../src/notebook/clearCells'
import { addScenario } from '../../src/notebook/commands'
import { newNotebook } from '../../src/notebook/create'
import type { Edit } from '../../src/notebook/edit'
import { fillRight } from '../../src/notebook/fillRight'
import { createHistory, remember, undo } from '../../src/notebook/history'
import { type Cell, cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { resolve } from '../../src/notebook/resolve'
import { together } from '../../src/notebook/together'
import { type Copied, quoted } from '../../src/ui/grid/copyBlock'
import { type Field, planPaste } from '../../src/ui/grid/planPaste'
import { spread } from '../../src/ui/grid/spread'
import { prepareFormulas } from '../../src/ui/shell/formulas'
import { isProblem } from '../../src/words/problem'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

await prepareFormulas()

const catalog = shippedCatalog()
/** Two numbers of different kinds, a choice, a worked-out row; ranges and choices as the definitions have them. */
const QUANTITIES = ['ph', 'calcium_hardness', 'shell', 'lsi'] as const
const ACCEPT = { ph: [0, 14], calcium_hardness: [0, 10_000] } as const
const COLUMNS = 4

function emptyNotebook(): Notebook {
  let notebook = newNotebook('Invented', 'As tested', 'metric')
  for (let i = 1; i < COLUMNS; i++) notebook = applied(notebook, addScenario(notebook, `What if ${i}`))
  return notebook
}

/** With something in the baseline for the others to follow, and something of another's own. */
function notebookWithEntries(): Notebook {
  const notebook = emptyNotebook()
  const [first, second] = inOrder(notebook)
  const put = (scenario: string | undefined, quantity: string, cell: Cell) =>
    ({ type: 'set_cell', scenario: scenario ?? '', quantity, cell }) as const
  const ph = { kind: 'value', entered: '7.6', unit: 'pH', canonical: 7.6 } as const
  return applied(
    notebook,
    together(
      put(first?.id, 'ph', ph),
      put(first?.id, 'shell', { kind: 'choice', id: 'plaster' }),
      put(second?.id, 'ph', { kind: 'formula', text: 'baseline.ph' }),
      put(second?.id, 'lsi', { kind: 'value', entered: '0.1', unit: '1', canonical: 0.1 }),
    ),
  )
}

function applied(notebook: Notebook, edit: Edit): Notebook {
  const next = apply(notebook, edit)
  if (isProblem(next)) throw new Error(next.code)
  return next.notebook
}

interface Rect {
  readonly row: number
  readonly column: number
  readonly rows: number
  readonly columns: number
}

/** A grid of strings: `v7.4` a number, `cplaster` a choice, `n` not taken, `f…` a formula, nothing where nothing was typed. */
type Model = readonly (readonly string[])[]
/** What the model says of a paste. */
interface Told {
  taken: number
  locked: number
  beyond: number
  refused: number
}

const LOCKED = QUANTITIES.indexOf('lsi')

function write(model: Model, put: (row: number, column: number, before: string) => string): Model {
  return model.map((line, row) => line.map((before, column) => put(row, column, before)))
}

const within = (rect: Rect, row: number, column: number) =>
  row >= rect.row && row < rect.row + rect.rows && column >= rect.column && column < rect.column + rect.columns

/** What stands in a cell: its own, else for an input the baseline's. */
const standing = (model: Model, row: number, column: number) =>
  model[row]?.[column] || (row === LOCKED ? '' : (model[row]?.[0] ?? ''))

function modelFill(model: Model, rect: Rect): Model {
  return write(model, (row, column, before) => {
    if (!within(rect, row, column) || column === rect.column) return before
    const from = standing(model, row, rect.column)
    return row === LOCKED && from === '' ? before : from
  })
}

/** How the model reads a text: null when it is refused, as a formula is whose unit is another than its row's. */
function modelRead(row: number, text: string): string | null {
  const quantity = QUANTITIES[row]
  if (text === '') return ''
  if (text === '-') return 'n'
  if (text.startsWith('=')) return text === '=baseline.ph' && quantity === 'ph' ? 'fbaseline.ph' : null
  if (quantity === 'shell') return ['vinyl', 'plaster'].includes(text) ? `c${text}` : null
  const [least, most] = ACCEPT[quantity as keyof typeof ACCEPT]
  const number = Number(text)
  return Number.isFinite(number) && number >= least && number <= most ? `v${number}` : null
}

/** What of one row's cell can stand in another's; null when it cannot. */
function modelMove(from: number, to: number, content: string): string | null {
  if (from === to || content === '' || content === 'n') return content
  return null
}

function modelPaste(
  model: Model,
  at: Rect,
  fields: readonly (readonly ((row: number) => string | null | 'locked')[])[],
): [Model, Told] {
  const told: Told = { taken: 0, locked: 0, beyond: 0, refused: 0 }
  const next = model.map((line) => [...line])
  fields.forEach((line, down) => {
    line.forEach((read, across) => {
      const to = next[at.row + down]
      if (!to || at.column + across >= COLUMNS) {
        told.beyond++
        return
      }
      const content = read(at.row + down)
      if (content === 'locked') told.locked++
      else if (content === null) told.refused++
      else {
        told.taken++
        to[at.column + across] = content
      }
    })
  })
  return [next, told]
}

function asModel(notebook: Notebook): Model {
  const scenarios = inOrder(notebook).map(({ id }) => id)
  return QUANTITIES.map((quantity) => scenarios.map((id) => contentOf(notebook.cells[cellKey(id, quantity)])))
}

function contentOf(cell: Cell | undefined): string {
  switch (cell?.kind) {
    case 'value':
      return `v${cell.canonical}`
    case 'choice':
      return `c${cell.id}`
    case 'formula':
      return `f${cell.text}`
    case 'not_taken':
      return 'n'
    default:
      return ''
  }
}

type Step =
  | { readonly act: 'clear' | 'fill' | 'cut'; readonly on: Rect }
  | { readonly act: 'paste'; readonly on: Rect; readonly text: readonly (readonly string[])[] }
  | { readonly act: 'move'; readonly from: Rect; readonly on: Rect }
  | { readonly act: 'undo' }

const rect: fc.Arbitrary<Rect> = fc
  .tuple(
    fc.nat({ max: QUANTITIES.length - 1 }),
    fc.nat({ max: COLUMNS - 1 }),
    fc.integer({ min: 1, max: 4 }),
    fc.integer({ min: 1, max: 4 }),
  )
  .map(([row, column, rows, columns]) => ({
    row,
    column,
    rows: Math.min(rows, QUANTITIES.length - row),
    columns: Math.min(columns, COLUMNS - column),
  }))
const word = fc.constantFrom(
  '7.4',
  '8',
  '250',
  '-20',
  '99999',
  'abc',
  '',
  '-',
  'plaster',
  'vinyl',
  '=baseline.ph',
  '=nothing.at.all',
  '=1+',
)
const table = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(word, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  )
const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({ act: fc.constantFrom('clear' as const, 'fill' as const, 'cut' as const), on: rect }),
  { weight: 3, arbitrary: fc.record({ act: fc.constant('paste' as const), on: rect, text: table }) },
  { weight: 2, arbitrary: fc.record({ act: fc.constant('move' as const), from: rect, on: rect }) },
  fc.record({ act: fc.constant('undo' as const) }),
)

test('clear, fill, cut, paste, copy and undo do what they do to a plain table', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 3, maxLength: 20, size: 'max' }), (steps) => {
      let notebook = notebookWithEntries()
      let history = createHistory()
      let model = asModel(notebook)
      const past: Model[] = []
      const scenarios = inOrder(notebook).map(({ id }) => id)
      const blockOf = (on: Rect) => ({
        quantities: QUANTITIES.slice(on.row, on.row + on.rows),
        scenarios: scenarios.slice(on.column, on.column + on.columns),
      })
      const take = (edit: Edit | null, next: Model) => {
        if (edit) {
          const done = apply(notebook, edit)
          if (isProblem(done)) throw new Error(done.code)
          notebook = done.notebook
          history = remember(history, edit, done)
          past.push(model)
        }
        model = next
      }
      const paste = (fields: readonly (readonly Field[])[], on: Rect) =>
        planPaste(fields, {
          notebook,
          catalog,
          rows: QUANTITIES.slice(on.row).flatMap((name) => catalog.quantities.get(name) ?? []),
          scenarios: scenarios.slice(on.column),
          unit: (quantity) => catalog.quantities.get(quantity)?.row.unit ?? '',
          check: checkFormula,
        })
      for (const one of steps) {
        switch (one.act) {
          case 'clear':
          case 'cut':
            take(
              clearCells(notebook, blockOf(one.on)),
              write(model, (row, column, before) => (within(one.on, row, column) ? '' : before)),
            )
            break
          case 'fill':
            take(fillRight(notebook, catalog, blockOf(one.on)), modelFill(model, one.on))
            break
          case 'paste': {
            const fields = spread(one.text, one.on)
            const { edit, report } = paste(fields, one.on)
            const [next, told] = modelPaste(
              model,
              one.on,
              fields.map((line) =>
                line.map((text) => (row: number) => (row === LOCKED ? 'locked' : modelRead(row, text))),
              ),
            )
            expect({ ...report, refused: report.refused.length }).toEqual(told)
            take(edit, next)
            break
          }
          case 'move': {
            const before = model
            const { from } = one
            const copied = blockOf(from).quantities.map((quantity) =>
              blockOf(from).scenarios.map((scenario): Copied => {
                const { cell, from: source } = resolve(notebook, catalog, scenario, quantity)
                const typed = source === 'typed'
                return { quantity, cell: quantity === 'lsi' && !typed ? null : cell, typed }
              }),
            )
            const { edit, report } = paste(spread(copied, one.on), one.on)
            const moves = Array.from({ length: from.rows }, (_, down) =>
              Array.from({ length: from.columns }, (_, across) => (row: number) => {
                const source = from.row + down
                const content = standing(before, source, from.column + across)
                const assumed = source === LOCKED && content !== ''
                if (row === LOCKED && !(source === LOCKED && assumed)) return 'locked'
                return modelMove(source, row, content)
              }),
            )
            const [next, told] = modelPaste(model, one.on, spread(moves, one.on))
            expect({ ...report, refused: report.refused.length }).toEqual(told)
            take(edit, next)
            break
          }
          case 'undo': {
            const turned = undo(history)
            if (!turned) break
            notebook = applied(notebook, turned.edit)
            history = turned.history
            model = past.pop() ?? model
            break
          }
        }
        expect(asModel(notebook)).toEqual(model)
      }
    }),
    { seed: 5, numRuns: process.env.LONG ? 4000 : 400 },
  )
})

test('a cell that is shown twice takes one content, and says so where it was given two', () => {
  const notebook = emptyNotebook()
  const ph = catalog.quantities.get('ph')
  if (!ph) throw new Error('no ph')
  const target = {
    notebook,
    catalog,
    rows: [ph, ph],
    scenarios: inOrder(notebook).map(({ id }) => id),
    unit: () => 'pH',
    check: checkFormula,
  }
  expect(planPaste([['7.4'], ['7.4']], target).report).toMatchObject({ taken: 2, refused: [] })
  const { edit, report } = planPaste([['7.4'], ['7.6']], target)
  expect(report.taken).toBe(1)
  expect(report.refused).toMatchObject([{ quantity: 'pH', why: { code: 'pasted_twice' } }])
  expect(edit).toMatchObject({ type: 'set_cell', cell: { canonical: 7.4 } })
})

test('a value that is pasted over another row keeps what it means, in the unit that the row counts in', () => {
  const notebook = emptyNotebook()
  const fill = catalog.quantities.get('fill_temperature')
  if (!fill) throw new Error('no fill_temperature')
  const copied: Copied = {
    quantity: 'temperature',
    cell: { kind: 'value', entered: '59', unit: '°F', canonical: 15 },
    typed: true,
  }
  const scenarios = inOrder(notebook).map(({ id }) => id)
  const { edit } = planPaste([[copied]], {
    notebook,
    catalog,
    rows: [fill],
    scenarios,
    unit: () => '°C',
    check: checkFormula,
  })
  expect(edit).toMatchObject({ quantity: 'fill_temperature', cell: { entered: '59', unit: '°F', canonical: 15 } })
})

test('a cell that followed a plan follows none where that plan is no more, or is the scenario’s own', () => {
  const notebook = emptyNotebook()
  const [only] = inOrder(notebook).map(({ id }) => id)
  const ph = catalog.quantities.get('ph')
  if (!ph) throw new Error('no ph')
  for (const plan of ['gone', only ?? '']) {
    const cell = { kind: 'value', entered: '7.5', unit: 'pH', canonical: 7.5, plan } as const
    const { edit } = planPaste([[{ quantity: 'ph', cell, typed: true }]], {
      notebook,
      catalog,
      rows: [ph],
      scenarios: [only ?? ''],
      unit: () => 'pH',
      check: checkFormula,
    })
    expect(edit).toMatchObject({
      type: 'set_cell',
      cell: { kind: 'value', entered: '7.5', unit: 'pH', canonical: 7.5 },
    })
    expect(JSON.stringify(edit)).not.toContain('plan')
  }
})

test('a block is repeated only where it fits a whole number of times', () => {
  const block = [
    [1, 2],
    [3, 4],
  ]
  expect(spread([['x']], { rows: 2, columns: 3 })).toEqual([
    ['x', 'x', 'x'],
    ['x', 'x', 'x'],
  ])
  expect(spread(block, { rows: 2, columns: 4 })).toEqual([
    [1, 2, 1, 2],
    [3, 4, 3, 4],
  ])
  expect(spread(block, { rows: 3, columns: 4 })).toEqual(block)
  expect(spread([[1], [2, 3]], { rows: 4, columns: 4 })).toEqual([[1], [2, 3]])
})

test('fields come back as they were put on the clipboard, with tabs, quotes and line ends in them', () => {
  // Quoting as RFC 4180 has it, with a tab for the comma: what spreadsheets put on the clipboard.
  expect(pastedTable('a\tb\r\n"c\t1"\t"say ""x"""\r\n')).toEqual([
    ['a', 'b'],
    ['c\t1', 'say "x"'],
  ])
  expect(pastedTable('5\'6"\t2')).toEqual([['5\'6"', '2']])
  expect(pastedTable('"6 in\t2\n1\t3')).toEqual([
    ['"6 in', '2'],
    ['1', '3'],
  ])
  expect(pastedTable('7.4')).toEqual([['7.4']])
  const field = fc.string({ unit: fc.constantFrom('a', '7', '.', '\t', '\n', '"', ' ', "'") })
  fc.assert(
    fc.property(fc.array(fc.array(field, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 5 }), (table) => {
      const text = table.map((line) => line.map(quoted).join('\t')).join('\n')
      expect(pastedTable(`${text}\n`)).toEqual(table)
    }),
    { seed: 5 },
  )
})
