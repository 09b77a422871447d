import type { Notebook } from '../../notebook/notebook'
import type { Solved, SolveOrder } from '../../study/solveBack'
import type { Line, SweepOrder } from '../../study/sweep'
import type { Swings, SwingsOrder } from '../../study/swings'
import type { Interval, UncertaintyOrder } from '../../study/uncertainty'
import type { Problem } from '../../words/problem'

/** What can be asked of the second worker, and what it answers. */
export interface Studies {
  readonly sweep: { readonly order: SweepOrder; readonly result: readonly Line[] }
  readonly solve: { readonly order: SolveOrder; readonly result: Solved }
  readonly intervals: { readonly order: UncertaintyOrder; readonly result: readonly Interval[] }
  readonly swings: { readonly order: SwingsOrder; readonly result: Swings }
}
export type Study = keyof Studies

export type StudyOrder = { [K in Study]: { readonly kind: K; readonly order: Studies[K]['order'] } }[Study]

/** The worksheets and rows of the notebook's own. */
export type OwnParts = Pick<Notebook, 'worksheets' | 'rows'>

export type StudyRequest =
  | {
      readonly ask: 'study'
      readonly id: number
      readonly study: StudyOrder
      readonly own: OwnParts
    }
  | { readonly ask: 'stop'; readonly id: number }

export type StudyMessage =
  | { readonly kind: 'done'; readonly id: number; readonly result: Studies[Study]['result'] }
  | { readonly kind: 'stopped'; readonly id: number }
  | { readonly kind: 'failed'; readonly id: number; readonly problem: Problem }
