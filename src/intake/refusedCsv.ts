import { problemsIntake } from '../words/en/problems-intake'
import { addWords, sentence } from '../words/say'
import { quoted } from './contractCsv'
import type { RowOutcome } from './outcome'

addWords(problemsIntake)

/** First line of the file of refused rows. */
export const REFUSED_HEADER = 'row,column,found,why,cells\n'

/** A refused row as lines of that file, one for each thing that is wrong with it. */
export function refusedLines({ row, problems, cells }: Extract<RowOutcome, { kind: 'refused' }>): string {
  const whole = cells.join(' | ')
  return problems
    .map((problem) => {
      const { column = '', found = '' } = problem.facts
      return `${[String(row), String(column), String(found), sentence(problem), whole].map(quoted).join(',')}\n`
    })
    .join('')
}
