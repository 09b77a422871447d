/** A quantity, a solve's output (`water.calcite_si`), a worksheet: lower case, digits, underscores. */
export const QUANTITY_NAME = /^[a-z][a-z0-9_]{0,63}$/
