import { describe, expect, test } from 'vitest'
import { Columns } from '../../src/engine/columns'
import { layoutFor } from '../../src/engine/layout'
import { hasValue } from '../../src/engine/outcome'
import type { Content } from '../../src/engine/sheets'
import { isProblem } from '../../src/words/problem'
import { parseFormula } from '../../src/worksheet/parse'
import { smallCatalog } from './smallCatalog'

const catalog = smallCatalog()

function tree(text: string) {
  const formula = parseFormula(text)
  if (isProblem(formula)) throw new Error(formula.code)
  return formula.tree
}

/** Two columns; the second refers to the first for its readings. */
function twoColumns(readings: Record<string, number>): Columns {
  const content =
    (column: number) =>
    (quantity: string): Content => {
      if (catalog.quantities.get(quantity)?.formula) return { kind: 'own' }
      if (column > 0) return { kind: 'inherit' }
      const value = readings[quantity]
      return value === undefined ? { kind: 'missing' } : { kind: 'value', value }
    }
  return new Columns(layoutFor(catalog), [content(0), content(1)])
}

const value = (columns: Columns, column: number, quantity: string) => {
  const outcome = columns.outcome(column, quantity)
  return hasValue(outcome) ? outcome.value : outcome.problem
}

describe('columns', () => {
  test('compute a worksheet by its formulas', () => {
    const columns = twoColumns({ a: 2, b: 3 })
    expect(value(columns, 0, 'total')).toBe(5)
    expect(value(columns, 0, 'hours')).toBe(0.4)
    expect(value(columns, 1, 'hours')).toBe(0.4)
  })

  test('never take a missing reading for zero', () => {
    const columns = twoColumns({ b: 3 })
    expect(value(columns, 0, 'a')).toMatchObject({ code: 'missing', facts: { names: 'a' } })
    expect(value(columns, 0, 'total')).toMatchObject({ code: 'missing', facts: { names: 'a' } })
    expect(value(columns, 1, 'hours')).toMatchObject({ code: 'missing', facts: { names: 'a' } })
  })

  test('say where a declared default stands in, and stop saying it', () => {
    const columns = twoColumns({ a: 2 })
    expect(columns.outcome(0, 'b_used')).toEqual({ value: 3, notices: ['assumed:b'] })
    expect(columns.outcome(0, 'either')).toEqual({ value: 2, notices: [] })
    columns.change(() => columns.put(0, 'b', { kind: 'value', value: 3 }))
    expect(columns.outcome(0, 'b_used')).toEqual({ value: 3, notices: [] })
  })

  test('report a cell whose notice changed although its value did not', () => {
    const columns = twoColumns({ a: 2 })
    const changed = columns.change(() => columns.put(0, 'b', { kind: 'value', value: 3 }))
    expect(changed).toContainEqual([0, 'b_used'])
  })

  test('raise a check’s notice on its own row', () => {
    const columns = twoColumns({ a: 9, b: 3 })
    expect(columns.outcome(0, 'total')).toEqual({ value: 12, notices: ['disagree:total'] })
    columns.change(() => columns.put(0, 'a', { kind: 'value', value: 1 }))
    expect(columns.outcome(0, 'total').notices).toEqual([])
  })

  test('follow the first column until something is entered', () => {
    const columns = twoColumns({ a: 2, b: 3 })
    columns.change(() => columns.put(1, 'b', { kind: 'value', value: 8 }))
    columns.change(() => columns.put(0, 'a', { kind: 'value', value: 1 }))
    expect(value(columns, 0, 'total')).toBe(4)
    expect(value(columns, 1, 'total')).toBe(9)
  })

  test('compute an entered formula, and refuse its result outside what the input accepts', () => {
    const columns = twoColumns({ a: 2, b: 3 })
    columns.change(() => columns.put(1, 'b', { kind: 'formula', tree: tree('baseline.a * 2') }))
    expect(value(columns, 1, 'b')).toBe(4)
    columns.change(() => columns.put(1, 'b', { kind: 'formula', tree: tree('a * 20') }))
    expect(value(columns, 1, 'total')).toMatchObject({ code: 'entry_out_of_range', facts: { found: 40, max: 10 } })
  })

  test('say that a formula runs in a circle, and come back from it', () => {
    const columns = twoColumns({ a: 2, b: 3 })
    columns.change(() => columns.put(0, 'b', { kind: 'formula', tree: tree('total') }))
    expect(value(columns, 0, 'total')).toMatchObject({ code: 'circular' })
    columns.change(() => columns.put(0, 'b', { kind: 'value', value: 3 }))
    expect(value(columns, 0, 'total')).toBe(5)
  })

  test('refuse what a locked function refuses, with the function and its range', () => {
    const columns = twoColumns({ a: 0, b: 0 })
    expect(value(columns, 0, 'hours')).toMatchObject({
      code: 'argument_out_of_range',
      facts: { function: 'TURNOVER_TIME' },
    })
  })

  test('fill a column that was cleared', () => {
    const columns = twoColumns({ a: 2, b: 3 })
    columns.change(() => columns.clear(1))
    columns.change(() =>
      columns.add(1, (quantity) =>
        catalog.quantities.get(quantity)?.formula ? { kind: 'own' } : { kind: 'value', value: 1 },
      ),
    )
    expect(value(columns, 1, 'total')).toBe(2)
    expect(value(columns, 0, 'total')).toBe(5)
  })
})
