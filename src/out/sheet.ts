/** A worksheet as it goes out of the notebook: plain data, its words already in the reader's language. */
export interface Sheet {
  readonly title: string
  readonly scenarios: readonly SheetScenario[]
  readonly groups: readonly SheetGroup[]
}

export interface SheetScenario {
  readonly name: string
  /** the sample that it is tied to, with its date; empty where there is none */
  readonly sample: string
}

export interface SheetGroup {
  readonly label: string
  readonly rows: readonly SheetRow[]
}

export interface SheetRow {
  /** the contract name, by which formulas use it */
  readonly name: string
  readonly label: string
  /** as people read it; empty for pure numbers, choices and truths */
  readonly unit: string
  /** the unit's code; null where a value has none */
  readonly unitCode: string | null
  /** as text, never as something that is computed; empty for an input */
  readonly formula: string
  /** the locked functions behind it, each with its version: `LANGELIER_INDEX 2` */
  readonly functions: string
  /** one for each scenario */
  readonly cells: readonly SheetCell[]
}

export interface SheetCell {
  /** in the row's unit with all its digits; null where there is no value */
  readonly value: number | string | boolean | null
  /** as it stands on the page; why there is no value, where there is none */
  readonly shown: string
  /** the places after the decimal mark with which a figure stands there; 0 for everything else */
  readonly decimals: number
  /** something was typed over what the notebook works out */
  readonly assumed: boolean
  /** where an entry comes from, where that is more than the cell shows; else empty */
  readonly note: string
}

/** Headings and texts that the sheets themselves need. */
export interface SheetWords {
  readonly quantity: string
  readonly name: string
  readonly unit: string
  readonly formula: string
  readonly functions: string
  readonly sample: string
  /** title of the last sheet, which says where the numbers come from */
  readonly sources: string
}

/** All that goes into one spreadsheet. */
export interface SheetBook {
  readonly title: string
  /** BCP 47 */
  readonly language: string
  readonly sheets: readonly Sheet[]
  /** lines of the last sheet: each a heading, or a few texts side by side */
  readonly sources: readonly (readonly string[])[]
  readonly words: SheetWords
}
