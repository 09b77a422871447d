/** A worked-out row as its reader wrote it; the keys are those of a definition's rows. */
export interface OwnFormulaRow {
  readonly name: string
  readonly label?: string
  readonly help?: string
  readonly unit: string
  readonly decimals?: number
  readonly range?: readonly [number, number]
  readonly formula: string
  /** numbers in the formula carry units of their own: the row's unit is taken as said */
  readonly units_as_said?: true
}

/** A row that a reader added to a worksheet. */
export interface OwnRow {
  readonly id: string
  /** where it is shown: under the quantity `after` of this worksheet; at its end where there is none such */
  readonly worksheet: string
  readonly after: string
  /** fractional key, among the rows of one place */
  readonly order: string
  readonly row: OwnFormulaRow
}

/** Rows of a reader's own, by id. */
export type OwnRows = Readonly<Record<string, OwnRow>>

/** In the order in which they stand; keys compare by code unit. */
export function ownRowsInOrder(rows: OwnRows): readonly OwnRow[] {
  return Object.values(rows).sort((a, b) => (`${a.order} ${a.id}` < `${b.order} ${b.id}` ? -1 : 1))
}
