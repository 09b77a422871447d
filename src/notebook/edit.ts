import type { Cell, Profile, Sample, Scenario } from './notebook'

/** Every way in which a document can change. Edits name ids, never positions. */
export type Edit =
  /** cell null: nothing typed here any more */
  | { readonly type: 'set_cell'; readonly scenario: string; readonly quantity: string; readonly cell: Cell | null }
  | { readonly type: 'add_scenario'; readonly scenario: Scenario; readonly cells: Readonly<Record<string, Cell>> }
  | { readonly type: 'remove_scenario'; readonly scenario: string }
  | {
      readonly type: 'change_scenario'
      readonly scenario: string
      readonly set: Partial<Pick<Scenario, 'name' | 'note' | 'order' | 'sample'>>
    }
  | { readonly type: 'put_sample'; readonly sample: Sample }
  | { readonly type: 'remove_sample'; readonly sample: string }
  | {
      readonly type: 'change_notebook'
      readonly set: { readonly name?: string; readonly note?: string; readonly profile?: Profile }
    }
  /** unit null: back to the profile's */
  | { readonly type: 'set_unit'; readonly quantity: string; readonly unit: string | null }
  | { readonly type: 'put_worksheet'; readonly id: string; readonly definition: unknown }
  | { readonly type: 'remove_worksheet'; readonly id: string }
  | { readonly type: 'computed_with'; readonly versions: Readonly<Record<string, number>> }
  /** several as one step of history */
  | { readonly type: 'together'; readonly edits: readonly Edit[] }
