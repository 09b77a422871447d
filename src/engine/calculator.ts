import type { Value } from '../functions/define'
import { type Problem, problem } from '../words/problem'
import type { Refusal } from '../worksheet/catalog'
import { refusalInCell } from '../worksheet/refusalInCell'
import { BEYOND, closureOf, isMissing, lockedClosure, type Reach, whole } from './closure'
import type { Layout } from './layout'
import type { Notice, Outcome } from './outcome'
import { type Held, isList } from './runLocked'

/**
 * Works out one column at a time over a layout, without the formula engine: the same parsed formulas as nested
 * functions. It is what long runs use; `Batch` holds it and the engine to the same answers.
 */
export interface Calculator {
  /** false when only the formula engine can tell; nothing can be asked then */
  run(given: (quantity: string) => Value | undefined): boolean
  /** what stands in the column of the last run; the names of what is missing are not gathered here */
  outcome(quantity: string): Outcome
  notices(quantity: string): readonly Notice[]
}

/** Null when a formula of the layout uses what closures do not cover. */
export function createCalculator(layout: Layout): Calculator | null {
  const { catalog, quantities, rowOf, solveRow } = layout
  const values: Held[] = quantities.map(() => GONE)
  const blocks: Held[] = []
  const raised: Notice[][] = quantities.map(() => NONE)
  const blockRaised = new Map<string, Notice[]>()
  const checked: Held[] = layout.checks.map(() => false)
  let marks: Notice[] = []

  const reach: Reach = {
    functions: catalog.functions,
    raise(notice) {
      if (!marks.includes(notice)) marks.push(notice)
    },
    read(of, name) {
      if (of === null) {
        const row = rowOf.get(name)
        return row === undefined ? undefined : () => values[row] ?? GONE
      }
      const row = solveRow.get(`${of}.${name}`)
      return row === undefined ? undefined : () => blocks[row] ?? GONE
    },
  }

  /** Runs one cell of ours: its marks are its own, and nothing is thrown out of it. */
  function cell(run: () => Held): Held {
    marks = []
    try {
      const value = run()
      return typeof value === 'object' ? value : whole(value)
    } catch (error) {
      if (error === BEYOND) throw error
      return problem('not_computable')
    }
  }

  function unless({ reason, when }: Refusal, rest: () => Held): (() => Held) | null {
    const holds = closureOf(when.tree, reach)
    const [[fact, value] = ['', '']] = Object.entries(reason.facts)
    const told = problem(reason.code, [], { [fact]: String(value) })
    return holds && (() => (holds() === true ? told : rest()))
  }

  function rowClosure(row: number): (() => Held) | null {
    const quantity = quantities[row]
    if (!quantity?.formula) return null
    const silenced = refusalInCell(quantity)
    if (silenced) return () => silenced
    const own = closureOf(quantity.formula.tree, reach)
    const assumed = 'when_missing' in quantity.row ? quantity.row.when_missing : undefined
    const body =
      own && assumed
        ? () => {
            const value = own()
            if (!isMissing(value)) return value
            reach.raise(`assumed:${assumed.of}`)
            return assumed.value
          }
        : own
    return quantity.refusals.reduceRight<(() => Held) | null>((rest, refusal) => rest && unless(refusal, rest), body)
  }

  function blockStep(id: string): (() => void) | null {
    const block = catalog.solves.get(id)
    const f = block && catalog.functions.get(block.function)
    const first = solveRow.get(id)
    if (!block || !f || first === undefined) return null
    const inputs = block.inputs.map((name) => (name === undefined ? undefined : reach.read(null, name)))
    const run = lockedClosure(f, inputs, reach.raise)
    return () => {
      marks = []
      const results = run()
      for (let i = 0; i < block.outputs.length; i++) {
        blocks[first + i] = isList(results) ? (results[i] ?? GONE) : results
      }
      blockRaised.set(id, marks)
    }
  }

  const steps = stepsOf(layout, blockStep, (row) => {
    const run = rowClosure(row)
    return (
      run &&
      (() => {
        values[row] = cell(run)
        raised[row] = marks
      })
    )
  })
  const checks = layout.checks.map(({ tree }) => closureOf(tree, reach))
  if (!steps || !checks.every((check) => check !== null)) return null
  const defaults = quantities.map(({ name, row, formula }): Held | null => {
    if (formula) return null
    const value = 'default' in row ? row.default : undefined
    return value ?? problem('missing', [], { names: name })
  })

  const solvesOf = quantities.map(({ name }) => layout.solvesReadBy.get(name) ?? [])
  const checksOf = quantities.map(({ name }) => layout.checksOf.get(name) ?? [])

  /** Of the cell, the solves that it reads and its checks. */
  function noticesOf(row: number): readonly Notice[] {
    const own = raised[row] ?? NONE
    const more: Notice[] = []
    for (const id of solvesOf[row] ?? []) more.push(...(blockRaised.get(id) ?? NONE))
    for (const check of checksOf[row] ?? []) {
      const notice = layout.checks[check]?.notice
      if (checked[check] === true && notice) more.push(notice)
    }
    return more.length === 0 ? own : [...own, ...more]
  }

  return {
    run(given) {
      const standing: boolean[] = []
      for (let row = 0; row < quantities.length; row++) {
        const value = given(quantities[row]?.name ?? '')
        standing[row] = value !== undefined || defaults[row] !== null
        if (standing[row]) values[row] = value ?? defaults[row] ?? GONE
        raised[row] = NONE
      }
      try {
        for (const { row, run } of steps) if (row === null || !standing[row]) run()
        for (let i = 0; i < checks.length; i++) {
          const check = checks[i]
          if (check) checked[i] = cell(check)
        }
      } catch (error) {
        if (error === BEYOND) return false
        throw error
      }
      return true
    },
    outcome(quantity) {
      const row = rowOf.get(quantity)
      const value = row === undefined ? undefined : values[row]
      if (row === undefined || value === undefined) {
        return { problem: problem('unknown_quantity', [quantity]), notices: NONE }
      }
      const notices = noticesOf(row)
      return typeof value === 'object' ? { problem: value, notices } : { value, notices }
    },
    notices(quantity) {
      const row = rowOf.get(quantity)
      return row === undefined ? NONE : noticesOf(row)
    },
  }
}

const NONE: Notice[] = []
const GONE: Problem = problem('not_computable')

interface Step {
  /** the row that it works out; null for a solve's block */
  readonly row: number | null
  run(): void
}

/** Every solve and every row in an order in which each comes after what it reads; null when one cannot be made. */
function stepsOf(
  { catalog, solves, rowOf }: Layout,
  blockStep: (id: string) => (() => void) | null,
  rowStep: (row: number) => (() => void) | null,
): readonly Step[] | null {
  const steps: (Step | null)[] = []
  const waiting = new Map(
    solves.map((id) => [id, new Set(catalog.solves.get(id)?.inputs.filter((name) => name !== undefined))]),
  )
  const settle = (settled: string | null) => {
    for (const [id, inputs] of waiting) {
      if (settled !== null) inputs.delete(settled)
      if (inputs.size > 0) continue
      waiting.delete(id)
      const run = blockStep(id)
      steps.push(run && { row: null, run })
    }
  }
  settle(null)
  for (const name of catalog.order) {
    const row = rowOf.get(name)
    if (row === undefined) continue
    if (catalog.quantities.get(name)?.formula) {
      const run = rowStep(row)
      steps.push(run && { row, run })
    }
    settle(name)
  }
  return waiting.size === 0 && steps.every((step) => step !== null) ? (steps as readonly Step[]) : null
}
