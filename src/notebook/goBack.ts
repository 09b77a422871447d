import type { GoBack } from './edit'
import type { Notebook } from './notebook'

/**
 * The edit that takes a notebook back to an earlier state of it. Plans that were given to somebody since then stay: they are
 * records of what was said, not of what the notebook was.
 */
export function goBack(now: Notebook, state: Notebook): GoBack {
  return { type: 'go_back', to: { ...state, id: now.id, plans: { ...state.plans, ...now.plans } } }
}
