/** A cell: a quantity in a scenario, by id and name. */
export interface CellPlace {
  readonly scenario: string
  readonly quantity: string
}
