/**
 * What a chemistry function returns when there is no number to return. It never throws and never
 * answers with a plausible number instead.
 *
 * `failure` is one of the codes below, `quantity` the contract name of what is at fault, `facts` what a
 * sentence about it needs.
 */
export interface Failure {
  readonly failure: FailureCode
  readonly quantity: string
  readonly facts: Readonly<Record<string, number | string>>
}

export type FailureCode =
  /** not a finite number */
  | 'not_a_number'
  /** outside what the function accepts: facts `value`, `min`, `max` */
  | 'out_of_range'
  /** no water has these readings together (cyanurate and borate alone exceed the alkalinity): facts as needed */
  | 'no_such_water'
  /** the wanted value does not exist in the allowed span: facts `wanted`, and what the two ends give */
  | 'unreachable'
  /** the solve did not meet its tolerance: facts `residual` */
  | 'no_convergence'
  /** an optional reading that this result needs was not given */
  | 'missing'
  /** a wanted value that was derived with another model than the one in use: facts `wanted`, `model` */
  | 'mixed_models'

export function fail(failure: FailureCode, quantity: string, facts: Failure['facts'] = {}): Failure {
  return { failure, quantity, facts }
}

export function isFailure(x: unknown): x is Failure {
  return typeof x === 'object' && x !== null && 'failure' in x
}
