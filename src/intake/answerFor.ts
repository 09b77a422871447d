import type { Answers, ColumnAnswer } from './understanding'

/** What was answered about a heading. A heading is a stranger's text: `constructor` has no answer unless one was given. */
export function answerFor({ columns }: Answers, heading: string): ColumnAnswer {
  return columns !== undefined && Object.hasOwn(columns, heading) ? (columns[heading] ?? {}) : {}
}
