import type { LockedFunction } from '../functions/define'
import type { Problem } from '../words/problem'
import type { Definition, Row } from './definition'
import type { Formula } from './formula'

/** A formula beside a row: where it is true, the row has the notice. It may read the row itself. */
export interface Check {
  readonly notice: string
  readonly when: Formula
}

/** Where its formula is true, the quantity has no value but this reason. */
export interface Refusal {
  readonly reason: Problem
  readonly when: Formula
}

/** A quantity as the page knows it: it shows formulas, and leaves their working to the engine. */
export interface OutlineQuantity {
  readonly name: string
  readonly row: Row
  /** the worksheet that owns it, and its place in contract order over all worksheets */
  readonly worksheet: string
  readonly index: number
  /** null for an input */
  readonly formula: Pick<Formula, 'text'> | null
  /** the quantities it and its refusals read directly (through a solve: the solve's inputs); its checks do not count */
  readonly reads: readonly string[]
  /** the quantities that read it directly */
  readonly readBy: readonly string[]
  /** the locked functions that its formula calls, and those of the solves that it reads, as they stand in it */
  readonly calls: readonly string[]
  /** of a row that the reader added: its id in the notebook */
  readonly own?: string
  /** why the answer of its formula is not shown: it cannot be read, or its units do not agree */
  readonly refused?: Problem
}

/** A quantity as the engine knows it, its formulas parsed. */
export interface Quantity extends OutlineQuantity {
  readonly formula: Formula | null
  readonly checks: readonly Check[]
  /** of its worksheet, then its own; the first that holds is told */
  readonly refusals: readonly Refusal[]
}

export interface SolveBlock {
  readonly id: string
  readonly worksheet: string
  readonly function: string
  /** quantity names in the function's parameter order; a parameter that is not given is undefined */
  readonly inputs: readonly (string | undefined)[]
  readonly outputs: readonly string[]
}

/** What the page needs of all loaded definitions; every catalog is one. */
export interface Outline {
  readonly worksheets: readonly Definition[]
  readonly quantities: ReadonlyMap<string, OutlineQuantity>
  readonly solves: ReadonlyMap<string, Pick<SolveBlock, 'id' | 'function' | 'inputs' | 'outputs'>>
}

/** All loaded definitions as one graph, checked: unique names, known units and functions, no circle. */
export interface Catalog extends Outline {
  readonly quantities: ReadonlyMap<string, Quantity>
  readonly solves: ReadonlyMap<string, SolveBlock>
  /** quantity names, each after all that it reads */
  readonly order: readonly string[]
  /** the locked functions that its formulas may call */
  readonly functions: ReadonlyMap<string, LockedFunction>
}
