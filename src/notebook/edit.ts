import type { OwnRow } from '../worksheet/ownRow'
import type { Cell, Chart, Notebook, Precision, Product, Profile, Sample, Scenario } from './notebook'
import type { Addition, Lesson, PlanRecord, Remark } from './record'

/** One change of one thing. Edits name ids, never positions. */
export type SimpleEdit =
  /** cell null: nothing typed here any more */
  | { readonly type: 'set_cell'; readonly scenario: string; readonly quantity: string; readonly cell: Cell | null }
  /** `cells` by quantity */
  | { readonly type: 'add_scenario'; readonly scenario: Scenario; readonly cells: Readonly<Record<string, Cell>> }
  | { readonly type: 'remove_scenario'; readonly scenario: string }
  | {
      readonly type: 'change_scenario'
      readonly scenario: string
      readonly set: Partial<Pick<Scenario, 'name' | 'note' | 'order' | 'sample' | 'cases'>>
    }
  | { readonly type: 'put_sample'; readonly sample: Sample }
  | { readonly type: 'remove_sample'; readonly sample: string }
  | {
      readonly type: 'change_notebook'
      readonly set: {
        readonly name?: string
        readonly place?: string
        readonly note?: string
        readonly profile?: Profile
      }
    }
  /** unit null: back to the profile's */
  | { readonly type: 'set_unit'; readonly quantity: string; readonly unit: string | null }
  | { readonly type: 'put_product'; readonly product: Product }
  | { readonly type: 'remove_product'; readonly product: string }
  | { readonly type: 'put_chart'; readonly chart: Chart }
  | { readonly type: 'remove_chart'; readonly chart: string }
  /** precision null: back to the usual test's */
  | { readonly type: 'set_precision'; readonly quantity: string; readonly precision: Precision | null }
  /** one that is there is replaced in its place; a new one stands before the worksheet `before`, else last */
  | { readonly type: 'put_worksheet'; readonly id: string; readonly definition: unknown; readonly before?: string }
  | { readonly type: 'remove_worksheet'; readonly id: string }
  /** one that is there is replaced; of its formula the other scenarios are named by id */
  | { readonly type: 'put_row'; readonly row: OwnRow }
  | { readonly type: 'remove_row'; readonly row: string }
  /** a plan that was given stays as it is: one that is there already is not replaced */
  | { readonly type: 'put_plan_record'; readonly plan: PlanRecord }
  | { readonly type: 'remove_plan_record'; readonly plan: string }
  | { readonly type: 'put_addition'; readonly addition: Addition }
  | { readonly type: 'remove_addition'; readonly addition: string }
  | { readonly type: 'put_remark'; readonly remark: Remark }
  | { readonly type: 'remove_remark'; readonly remark: string }
  | { readonly type: 'put_lesson'; readonly lesson: Lesson }
  | { readonly type: 'remove_lesson'; readonly lesson: string }
  | { readonly type: 'put_case'; readonly id: string; readonly definition: unknown }
  | { readonly type: 'remove_case'; readonly id: string }
  /** value null: as shipped again */
  | { readonly type: 'set_rule'; readonly rule: string; readonly value: number | null }
  | { readonly type: 'computed_with'; readonly versions: Readonly<Record<string, number>> }
  /** the whole content as it was at another time; the notebook stays the same one, by its id */
  | { readonly type: 'go_back'; readonly to: Notebook }

/** Every way in which a document can change. What comes from outside goes through `editSchema` first. */
export type Edit =
  | SimpleEdit
  /** several as one step of history; `of_itself`: what follows from an earlier edit, and is taken back with that one */
  | { readonly type: 'together'; readonly edits: readonly SimpleEdit[]; readonly of_itself?: true }

type Of<T extends SimpleEdit['type']> = Extract<SimpleEdit, { readonly type: T }>

export type SetCell = Of<'set_cell'>
export type AddScenario = Of<'add_scenario'>
export type RemoveScenario = Of<'remove_scenario'>
export type ChangeScenario = Of<'change_scenario'>
export type PutSample = Of<'put_sample'>
export type RemoveSample = Of<'remove_sample'>
export type ChangeNotebook = Of<'change_notebook'>
export type PutProduct = Of<'put_product'>
export type GoBack = Of<'go_back'>
export type PutCase = Of<'put_case'>
export type PutWorksheet = Of<'put_worksheet'>
export type PutRow = Of<'put_row'>
export type PutChart = Of<'put_chart'>
export type SetPrecision = Of<'set_precision'>
/** What changes the pool's record. */
export type RecordEdit = Extract<
  SimpleEdit,
  { readonly type: `${'put' | 'remove'}_${'plan_record' | 'addition' | 'remark' | 'lesson'}` }
>
