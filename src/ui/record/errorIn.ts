import type { Notebook } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import type { ErrorOf } from '../../record/errorOf'
import { exactnessOf } from '../../study/doubtsOf'

/** How exact the readings of a notebook are taken to be: by the test that took each, or as its reader says. */
export function errorIn({ precisions }: Pick<Notebook, 'precisions'>): ErrorOf {
  return (quantity, value, method) => exactnessOf(quantity, value, own(precisions, quantity), method)?.half
}
