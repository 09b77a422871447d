/**
 * How large a notebook may be. `apply` and the file reader keep to the same figures, so that what can be made can be
 * saved, and what was saved can be opened. They are far over a day's work at a desk; they keep a hostile file from
 * filling the memory.
 */
export const LIMITS = {
  /** characters of a notebook file */
  file: 128_000_000,
  /** nesting of its JSON */
  depth: 32,
  scenarios: 1_000,
  samples: 5_000,
  cells: 200_000,
  worksheets: 100,
  /** that the reader added to worksheets */
  rows: 500,
  products: 200,
  charts: 200,
  /** quantities of one chart */
  outputs: 12,
  /** points along the span of one chart */
  points: 1_000,
  plans: 2_000,
  /** additions that were made, and remarks */
  additions: 10_000,
  /** steps of a plan that was given, and sentences of one of them */
  steps: 500,
  /** case files of the reader's own, and cases chosen in one scenario */
  cases: 50,
  /** readings of one sample, and units or versions of one notebook */
  entries: 2_000,
  /** readings of one quantity in one sample, beside the one that is believed */
  replicates: 20,
  /** edits in one step */
  together: 10_000,
  /** characters */
  name: 200,
  note: 10_000,
  entered: 200,
  /** that a formula gives: texts put together out of one another double from row to row */
  text: 1_000,
  formula: 4_000,
  id: 64,
  order: 1_000,
} as const
