import type { OwnRows } from '../worksheet/ownRow'
import type { Addition, Lesson, PlanRecord, Remark } from './record'

/** What ties a cell to a step plan. */
interface OfPlan {
  /** the scenario at the end of whose plan this stands: the cell follows that plan whenever it is made again */
  readonly plan?: string
}

/** What a cell holds in a scenario. Nothing at all is the absence of an entry. */
export type Cell =
  /** what was typed is kept: 59 °F reopens as 59 °F; `canonical` is in the quantity's canonical unit */
  | (OfPlan & {
      readonly kind: 'value'
      readonly entered: string
      readonly unit: string
      readonly canonical: number
      readonly method?: string
    })
  | (OfPlan & { readonly kind: 'choice'; readonly id: string })
  /** more than, or less than, what the test can tell: `>100` is never 100, and nothing is worked out from it */
  | {
      readonly kind: 'limit'
      readonly side: 'above' | 'below'
      readonly entered: string
      readonly unit: string
      readonly canonical: number
      readonly method?: string
    }
  | { readonly kind: 'formula'; readonly text: string }
  /** a reading that was not taken: never zero */
  | (OfPlan & { readonly kind: 'not_taken' })

/** A reading of a sample is a value, a choice or a limit; a missing one has no entry. */
export type Reading = Extract<Cell, { kind: 'value' | 'choice' | 'limit' }>

export interface Sample {
  readonly id: string
  readonly name: string
  /** ISO date, or date and time; empty when not known */
  readonly date: string
  /** a sample of another place inherits nothing of `pool` */
  readonly elsewhere: boolean
  readonly readings: Readonly<Record<string, Reading>>
  /** further readings of the same quantities by other tests, kept beside the one that is believed */
  readonly others?: Readonly<Record<string, readonly Reading[]>>
  /** where it came from: file name, row as a spreadsheet counts it, and the id under which this browser keeps the file */
  readonly origin?: { readonly file: string; readonly row: number; readonly import?: string }
}

export interface Scenario {
  readonly id: string
  readonly name: string
  readonly note: string
  /** fractional key; the first in order is the baseline */
  readonly order: string
  readonly sample: string | null
  /** its water was worked out from another scenario's and tested by nobody, as long as it is tied to no sample */
  readonly foretold?: true
  /** cases that are not routine, by id, whose steps its plan follows because the reader chose them */
  readonly cases?: readonly string[]
}

export type Profile = 'metric' | 'us'

/** A product on hand, by its label; what it is used for decides where a plan may choose it. */
export interface Product {
  readonly id: string
  readonly role: string
  readonly product: string
  readonly strength?: number
  /** what the strength counts: mass_percent, trade_percent ... */
  readonly basis?: string
  /** size of a pack in kg, or in L for a liquid */
  readonly pack?: number
  /** price of a pack, in whatever money */
  readonly price?: number
}

/** What a chart shows; a scenario or quantity that is gone is left out when it is drawn. */
interface Charted {
  readonly id: string
  readonly name: string
  /** quantities, one panel each */
  readonly outputs: readonly string[]
  /** ids; none: every scenario of the notebook */
  readonly scenarios: readonly string[]
}

/** A chart of the reader's own. What it draws is worked out anew whenever it is looked at. */
export type Chart =
  /** outputs against one input, which goes through a span in so many points; in the input's canonical unit */
  | (Charted & {
      readonly kind: 'sweep'
      readonly input: string
      readonly from: number
      readonly to: number
      readonly points: number
    })
  /** the scenarios beside each other as they are */
  | (Charted & { readonly kind: 'comparison' })

/** How exact the readings of a quantity are, where it is not the usual test: the test that takes them, or a half width. */
export type Precision =
  | { readonly kind: 'method'; readonly method: string }
  | { readonly kind: 'value'; readonly entered: string; readonly unit: string; readonly canonical: number }

/** One document, one pool. It changes only by edits. */
export interface Notebook {
  readonly format: 'basinbook-notebook'
  readonly version: 3
  readonly id: string
  readonly name: string
  /** where the pool stands, or whose it is: what it is found by beside its name */
  readonly place: string
  readonly note: string
  readonly profile: Profile
  /** units chosen row by row, over the profile's: quantity → unit code */
  readonly units: Readonly<Record<string, string>>
  readonly scenarios: Readonly<Record<string, Scenario>>
  readonly samples: Readonly<Record<string, Sample>>
  /** by `cellKey(scenario, quantity)` */
  readonly cells: Readonly<Record<string, Cell>>
  /** products on hand, by id */
  readonly shelf: Readonly<Record<string, Product>>
  /** by id */
  readonly charts: Readonly<Record<string, Chart>>
  /** by quantity */
  readonly precisions: Readonly<Record<string, Precision>>
  /** worksheet definitions of the reader's own, by id, in the order they were added */
  readonly worksheets: Readonly<Record<string, unknown>>
  /** rows that the reader added to worksheets, by id; a formula names other scenarios by id */
  readonly rows: OwnRows
  /** plans as they were given, additions as they were made, what was written down and what was learned; each by id */
  readonly plans: Readonly<Record<string, PlanRecord>>
  readonly additions: Readonly<Record<string, Addition>>
  readonly remarks: Readonly<Record<string, Remark>>
  readonly lessons: Readonly<Record<string, Lesson>>
  /** case files of the reader's own, by id */
  readonly cases: Readonly<Record<string, unknown>>
  /** values of the plan's rules that the reader changed: `<rule>.<value>` or `test_errors.<quantity>` */
  readonly rules: Readonly<Record<string, number>>
  /** function and worksheet versions that it was last computed with */
  readonly computedWith: Readonly<Record<string, number>>
}

export function cellKey(scenario: string, quantity: string): string {
  return `${scenario}/${quantity}`
}
