import { hasValue, type Notice, type Outcome } from '../../engine/outcome'
import type { Row } from '../../worksheet/definition'

/** The engine's notices of a cell, and `unlikely:<name>` where an entry lies outside what is plausible. */
export function noticesOf(row: Row, outcome: Outcome | undefined): readonly Notice[] {
  const notices = outcome?.notices ?? []
  if (!isUnlikely(row, outcome)) return notices
  const notice = `unlikely:${row.name}`
  return notices.includes(notice) ? notices : [...notices, notice]
}

function isUnlikely(row: Row, outcome: Outcome | undefined): boolean {
  if (!('plausible' in row) || !row.plausible || !hasValue(outcome) || typeof outcome.value !== 'number') return false
  return outcome.value < row.plausible[0] || outcome.value > row.plausible[1]
}
