import type { Failure } from '../chemistry/failure'

/** What an argument or a result can be. */
export type Value = number | string | boolean

/** A parameter in canonical units. Outside `min..max` the function refuses; outside `fitted` it answers with a notice. */
export interface Parameter {
  /** the name on the reference page, and the key by which a solve's inputs are given */
  readonly name: string
  /** a unit code of `src/units`; 'choice' takes one of `choices` */
  readonly unit: string
  readonly min?: number
  readonly max?: number
  readonly fitted?: readonly [low: number, high: number]
  readonly choices?: readonly string[]
  /** may be missing: the function then gets `undefined` and says in its summary what that means */
  readonly optional?: true
  /** a concentration counted as whatever it is counted as, the same in all parameters so marked */
  readonly ofAnyBasis?: true
}

export interface Output {
  readonly name: string
  readonly unit: string
  /** counted as the parameters so marked are */
  readonly ofAnyBasis?: true
}

/** A check against something outside the project. `where` names it; 'memory' or 'common practice, no source' say so. */
export interface Check {
  readonly args: readonly (Value | undefined)[]
  /** the expected result; for a solve, the one named by `output` */
  readonly expect: Value
  readonly output?: string
  readonly tolerance: number
  readonly where: string
}

interface Common {
  /** in capitals; says what it gives: LANGELIER_INDEX */
  readonly name: string
  /** goes up when any answer changes */
  readonly version: number
  readonly parameters: readonly Parameter[]
  /** author, title, year, table or page */
  readonly source: string
  /** TeX; set as MathML when the app is built */
  readonly equation: string
  readonly checks: readonly [Check, ...Check[]]
}

/** One result. */
export interface Formula extends Common {
  readonly result: Output
  readonly evaluate: (...args: never[]) => Value | Failure
}

/** Many results from one solve, in the order of `outputs`; one may fail while the others stand. */
export interface Solve extends Common {
  readonly outputs: readonly Output[]
  readonly solve: (...args: never[]) => readonly (Value | Failure)[] | Failure
}

export type LockedFunction = Formula | Solve

export function isSolve(f: LockedFunction): f is Solve {
  return 'outputs' in f
}
