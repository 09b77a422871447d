import { hasWords, say } from '../words/say'
import type { Row } from '../worksheet/definition'

/** The row of a quantity in the notebook that is open. */
let rowOf: (quantity: string) => Row | undefined = () => undefined

/** From here on a row of the reader's own is called by its label also where only its name is at hand: in a notice, among readings that are missing. */
export function labelsOfRows(by: (quantity: string) => Row | undefined): void {
  rowOf = by
}

/** A quantity's name in words; a row of the reader's own may bring its label, else its name has to do. */
export function labelOf(quantity: string, row: Row | undefined = rowOf(quantity)): string {
  if (row?.label !== undefined) return row.label
  const key = `quantity.${quantity}.label`
  return hasWords(key) ? say(key) : quantity.replaceAll('_', ' ')
}

export function helpOf(quantity: string, row?: Row): string {
  if (row?.help !== undefined) return row.help
  const key = `quantity.${quantity}.help`
  return hasWords(key) ? say(key) : ''
}

/** The label inside a sentence: `Pump flow` becomes `pump flow`, `pH` and `ORP` stay. */
export function labelInside(quantity: string, row?: Row): string {
  const label = labelOf(quantity, row)
  return /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label
}
