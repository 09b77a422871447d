import type { Problem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'
import { type OwnParts, withOwnWorksheets } from '../../worksheet/ownWorksheets'
import { shippedOutline } from '../../worksheet/shippedOutline'

const NONE: readonly Problem[] = []

/** The worksheets of a notebook as the page knows them, and why some of its own are not among them. */
export function catalogOf(parts: OwnParts): {
  readonly catalog: Outline
  readonly refused: readonly Problem[]
} {
  return withOwnWorksheets(parts) ?? { catalog: shippedOutline(), refused: NONE }
}
