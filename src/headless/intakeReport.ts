import type { Account } from '../intake/account'
import type { Column, Understanding } from '../intake/understanding'
import { say } from '../words/say'

/** The command's last line: what became of all rows, and how each column was understood, as one line of JSON. */
export function intakeReport(understanding: Understanding, account: Account): string {
  const { encoding, delimiter, shape, headerRow, unitsRow, decimal, dates, questions, doubts } = understanding
  return JSON.stringify({
    ...account,
    encoding,
    delimiter,
    shape,
    headerRow,
    unitsRow,
    decimal,
    dates,
    columns: [...understanding.columns, ...understanding.analytes].map(told),
    doubts: doubts.map(({ facts }) => facts),
    questions: questions.map(({ code, heading, choices }) => ({ code, heading, choices })),
  })
}

function told({ heading, role, quantity, unit, confidence, why }: Column) {
  const reasons = why.map(({ code, facts }) => say(`intake.why.${code}`, facts))
  return { column: heading, quantity, role, unit: unit?.code ?? null, confidence, why: reasons.join('; ') }
}
