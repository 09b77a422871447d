import type { Formula, LockedFunction, Solve } from '../../src/functions/define'
import type { Definition, Row } from '../../src/worksheet/definition'
import type { Source } from '../../src/worksheet/source'

/** The least definition that is accepted, with rows in one group. */
export function definition(id: string, rows: readonly (Row | string)[], more: Partial<Definition> = {}): Definition {
  return {
    format: 'basinbook-worksheet',
    version: 1,
    id,
    edition: 1,
    takes: [],
    groups: [{ id: 'rows', rows: [...rows] }],
    ...more,
  }
}

export function own(d: Definition): Source {
  return { definition: d, file: `${d.id}.json`, shipped: false }
}

export function shipped(d: Definition): Source {
  return { definition: d, file: `${d.id}.json`, shipped: true }
}

export function input(name: string, more: object = {}): Row {
  return { name, unit: 'mg/L', input: 'number', accept: [0, 100], ...more }
}

export function computed(name: string, formula: string, more: object = {}): Row {
  return { name, unit: 'mg/L', formula, ...more }
}

export function choice(name: string, choices: string[], more: object = {}): Row {
  return { name, unit: 'choice', input: 'choice', choices, ...more }
}

const about = {
  version: 1,
  source: 'for this test',
  equation: '',
  checks: [{ args: [], expect: 0, tolerance: 0, where: 'for this test' }],
} as const

/** TWICE(x; y) where y may be missing. */
const twice: Formula = {
  ...about,
  name: 'TWICE',
  parameters: [
    { name: 'x', unit: 'mg/L' },
    { name: 'y', unit: 'mg/L', optional: true },
  ],
  result: { name: 'twice', unit: 'mg/L' },
  evaluate: (x: number) => 2 * x,
}

/** A solve of x and, where it is there, y. */
const both: Solve = {
  ...about,
  name: 'BOTH',
  parameters: twice.parameters,
  outputs: [
    { name: 'sum', unit: 'mg/L' },
    { name: 'product', unit: 'mg/L' },
  ],
  solve: (x: number, y = 0) => [x + y, x * y],
}

export const registry: readonly LockedFunction[] = [twice, both]
