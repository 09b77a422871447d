import type { RawCellContent } from 'hyperformula'
import type { Value } from '../functions/define'
import type { Refusal } from '../worksheet/catalog'
import { compile } from '../worksheet/compile'
import type { Expression } from '../worksheet/formula'
import { refusalInCell } from '../worksheet/refusalInCell'
import { type Layout, QUANTITIES, SHEET_NAMES, SOLVES } from './layout'

/** What stands in one cell of one column. There is no blank: a blank would be 0 in arithmetic. */
export type Content =
  | { readonly kind: 'value'; readonly value: Value }
  /** the cell of the first column, by reference */
  | { readonly kind: 'inherit' }
  | { readonly kind: 'missing' }
  /** the row's own formula */
  | { readonly kind: 'own' }
  /** a formula that was entered here */
  | { readonly kind: 'formula'; readonly tree: Expression }
  /** something that cannot be computed, by the code of its problem */
  | { readonly kind: 'refused'; readonly code: string; readonly name: string }

/** The column that a scenario's reference points at; undefined when it is gone. */
export type ColumnOf = (reference: string, quoted: boolean) => number | undefined

export type Sheets = Record<(typeof SHEET_NAMES)[number], RawCellContent[][]>

/** Turns contents into what the engine's cells hold. Rows and columns are places on the sheets of a layout. */
export interface Writer {
  quantity(content: Content, row: number, column: number): RawCellContent
  /** the formula at the head of a solve's block */
  solve(id: string, column: number): string
  check(row: number, column: number): string
  /** whole sheets, for columns given by what each quantity has in them */
  sheets(columns: readonly ((quantity: string) => Content)[]): Sheets
}

/** @param baseline the column that `baseline.ph` reads; null where columns have nothing to do with each other */
export function createWriter(layout: Layout, columnOf: ColumnOf, baseline: number | null): Writer {
  function quantity(content: Content, row: number, column: number): RawCellContent {
    const of = layout.quantities[row]
    if (!of) return null
    switch (content.kind) {
      case 'value':
        return typeof content.value === 'string' ? `'${content.value}` : content.value
      case 'inherit':
        return `=${address(row, 0)}`
      case 'missing':
        return `=CELL(NOT_TAKEN("${of.name}"))`
      case 'refused':
        return `=CELL(${refused(content.code, content.name)})`
      case 'own': {
        if (!of.formula) return null
        const silenced = refusalInCell(of)
        if (silenced) return `=CELL(${refused(silenced.code, of.name)})`
        const body = compiled(of.formula.tree, column)
        const assumed = 'when_missing' in of.row ? of.row.when_missing : undefined
        const whole = assumed ? `ASSUMED(${body};${assumed.value};"${assumed.of}")` : body
        return `=CELL(${of.refusals.reduceRight((rest, refusal) => unless(refusal, rest, column), whole)})`
      }
      case 'formula': {
        const body = compiled(content.tree, column)
        if (!('accept' in of.row)) return `=CELL(${body})`
        const [min, max] = of.row.accept
        return `=ENTRY("${of.name}";"${of.row.unit}";${min};${max};${body})`
      }
    }
  }

  function unless({ reason, when }: Refusal, rest: string, column: number): string {
    const [fact = '', value = ''] = Object.entries(reason.facts)[0] ?? []
    const told = compiled({ kind: 'text', value: String(value), from: 0, to: 0 }, column)
    return `UNLESS(${compiled(when.tree, column)};"${reason.code}";"${fact}";${told};${rest})`
  }

  function solve(id: string, column: number): string {
    const block = layout.catalog.solves.get(id)
    const inputs = (block?.inputs ?? []).map((name) =>
      name === undefined ? 'NOT_TAKEN("")' : onQuantities(layout.rowOf.get(name) ?? 0, column),
    )
    return `=${block?.function}(${inputs.join(';')})`
  }

  function check(row: number, column: number): string {
    const tree = layout.checks[row]?.tree
    return tree ? `=CELL(${compiled(tree, column, onQuantities)})` : '=FALSE()'
  }

  function compiled(tree: Expression, column: number, at = address): string {
    return compile(tree, ({ of, quoted, name }) => {
      if (of !== null && !quoted && of !== 'baseline') {
        const row = layout.solveRow.get(`${of}.${name}`)
        if (row !== undefined) return `${SHEET_NAMES[SOLVES]}!${address(row, column)}`
      }
      const from = of === null ? column : of === 'baseline' && !quoted ? (baseline ?? undefined) : columnOf(of, quoted)
      const row = layout.rowOf.get(name)
      if (row === undefined) return refused('unknown_quantity', name)
      return from === undefined ? refused('scenario_gone', of ?? '') : at(row, from)
    })
  }

  function sheets(columns: readonly ((quantity: string) => Content)[]): Sheets {
    const rows = (height: number, raw: (row: number, column: number) => RawCellContent) =>
      Array.from({ length: height }, (_, row) => columns.map((_, column) => raw(row, column)))
    const heads = new Map(layout.solves.map((id) => [layout.solveRow.get(id), id]))
    return {
      q: rows(layout.quantities.length, (row, column) => {
        const name = layout.quantities[row]?.name
        const content = name === undefined ? undefined : columns[column]?.(name)
        return content ? quantity(content, row, column) : null
      }),
      s: rows(Math.max(-1, ...layout.solveRow.values()) + 1, (row, column) => {
        const id = heads.get(row)
        return id === undefined ? null : solve(id, column)
      }),
      c: rows(layout.checks.length, check),
    }
  }

  return { quantity, solve, check, sheets }
}

function refused(code: string, name: string): string {
  return `REFUSED("${code}";"${name.replaceAll('"', '""')}")`
}

function onQuantities(row: number, column: number): string {
  return `${SHEET_NAMES[QUANTITIES]}!${address(row, column)}`
}

/** A relative address: equal formulas in many columns are then parsed once. */
function address(row: number, column: number): string {
  let letters = ''
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters
  }
  return `${letters}${row + 1}`
}
