import type { Edit, SimpleEdit } from './edit'
import type { Notebook } from './notebook'

/** How an edit enters history: as a step of its own, as part of the last step if that changed the same text, or not at all. */
export type Entering = 'step' | 'join' | 'none'

export interface Applied {
  readonly notebook: Notebook
  /** applied to `notebook`, it gives the document as it was */
  readonly inverse: Edit
  readonly history: Entering
}

/** An edit whose inverse is as simple as itself. */
export interface SimplyApplied extends Applied {
  readonly inverse: SimpleEdit
}
