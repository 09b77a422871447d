/** What the customer's sheet says, in sentences, before it is laid out. */
export interface Sheet {
  /** the large line */
  readonly swim: string
  readonly swimWhy: readonly string[]
  /** cases that are not routine and hold here, by their names */
  readonly cases: readonly string[]
  /** what tells that such a case is over */
  readonly done: readonly string[]
  /** at most four sentences, worst first */
  readonly found: readonly string[]
  /** what stood behind those four; on the second page */
  readonly foundMore: readonly string[]
  /** empty where there is nothing to leave alone */
  readonly alone: string
  readonly spared: readonly string[]
  /** what holds for every step, or for every day of them */
  readonly together: readonly string[]
  /** the steps of the first week */
  readonly days: readonly SheetDay[]
  /** what follows after it, on the second page */
  readonly later: readonly string[]
  readonly never: readonly string[]
  readonly retest: readonly string[]
  /** on the second page */
  readonly left: readonly string[]
}

export interface SheetDay {
  readonly title: string
  readonly steps: readonly SheetStep[]
}

export interface SheetStep {
  readonly number: number
  readonly when: string
  readonly says: string
  /** product and strength as on its label; empty where nothing is added */
  readonly label: string
  readonly how: readonly string[]
  /** pump and cell, on or off */
  readonly state: readonly string[]
  readonly wait: string
  readonly cautions: readonly string[]
  /** something is done: there is a box to tick */
  readonly tick: boolean
  /** nothing is done in it but to wait */
  readonly pause: boolean
}
