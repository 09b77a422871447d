import { knownQuantities } from '../../src/intake/known'
import { SHIPPED } from '../../src/worksheet/shipped'

/** The quantities of the shipped worksheets, as the page and the command give them to intake. */
export const known = knownQuantities(SHIPPED.map(({ definition }) => definition))
