import { matchColumn } from './columns'

/**
 * Matches an analyte of a long or transposed file. What was answered about its unit is for rows that state none, and for
 * what a stated one leaves open: 14 °dH stays 14 °dH in a file whose hardness without a unit was said to be in mg/L.
 */
export const matchAnalyte: typeof matchColumn = (index, heading, known, beside, answer = {}) => {
  const { unit, ...others } = answer
  const withUnit = (code: string) => matchColumn(index, heading, known, beside, { ...others, unit: code })
  if (unit === undefined) return matchColumn(index, heading, known, beside, answer)
  if (beside.unit === null) return withUnit(unit)
  // what only the other analytes of the file tell of a unit, the reader may say otherwise
  const { question } = matchColumn(index, heading, known, { ...beside, ions: false }, others)
  const choices = question?.code === 'which_unit' ? question.choices : []
  const said = choices.find((code) => code === unit) ?? choices.find((code) => basis(code) === basis(unit))
  if (said !== undefined) return withUnit(said)
  const stated = matchColumn(index, heading, known, beside, others)
  return stated.column.why.some(({ code }) => code === 'unit_unread_unit') ? withUnit(unit) : stated
}

/** What a unit counts; a unit that does not say is like no other. */
function basis(code: string): string {
  return / as (\S+)$/.exec(code)?.[1] ?? code
}
