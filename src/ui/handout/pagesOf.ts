import type { Sheet, SheetDay, SheetStep } from './sheet'

/** Characters in a line of the printed sheet, set small, and lines on the shorter of the two usual papers (US letter). */
const LINE = 100
const PAGE = 60
/** lines of the head, and of what stands under the steps */
const HEAD = 8
const FOOT = 9
/** a heading of a day */
const TITLE = 1.5
/** so many lines may stand in large type */
const LARGE = 34

/** Whether the sheet needs its small type. */
export function isFull(sheet: Sheet): boolean {
  return linesOf(sheet) > LARGE
}

/**
 * The days by the printed pages that they stand on, a day that is cut being named again. One page, unless the steps fill more:
 * then the sheet itself can say what goes on over the page.
 */
export function pagesOf(sheet: Sheet): readonly (readonly SheetDay[])[] {
  if (linesOf(sheet) <= PAGE) return [sheet.days]
  const pages: SheetDay[][] = [[]]
  let left = PAGE - headOf(sheet) - 2
  for (const { title, steps } of sheet.days) {
    let on: SheetStep[] = []
    for (const step of steps) {
      const lines = linesOfStep(step) + (on.length === 0 ? TITLE : 0)
      if (lines > left && pages.at(-1)?.length) {
        on = []
        pages.push([])
        left = PAGE
      }
      if (on.length === 0) pages.at(-1)?.push({ title, steps: on })
      on.push(step)
      left -= lines
    }
  }
  return pages
}

function linesOf(sheet: Sheet): number {
  const days = sheet.days.map(({ steps }) => steps.reduce((sum, step) => sum + linesOfStep(step), TITLE))
  return headOf(sheet) + days.reduce((sum, lines) => sum + lines, 0) + FOOT + linesIn(sheet.done) + linesIn(sheet.never)
}

const headOf = ({ swimWhy, found, alone, spared, together }: Sheet) =>
  HEAD + linesIn(swimWhy) + linesIn([...found, alone, ...spared]) + linesIn(together)

/** The sentence that says what to do is set larger than the rest. */
function linesOfStep({ when, says, label, how, state, wait, cautions }: SheetStep): number {
  return linesIn([when, says, says.slice(0, says.length / 5), label, ...how, ...state, wait]) + linesIn(cautions) + 0.4
}

const linesIn = (sentences: readonly string[]) => Math.ceil(sentences.join(' ').length / LINE)
