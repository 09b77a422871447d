import { type Problem, problem } from '../words/problem'
import type { Row } from './definition'
import type { Path } from './place'
import type { Source } from './source'

/** What is wrong with the charts of a worksheet: names that nothing gives, an input that is no number, an empty span. */
export function chartProblems({ definition, file }: Source, rowOf: (name: string) => Row | undefined): Problem[] {
  return (definition.charts ?? []).flatMap(({ input, from, to, outputs }, c) => {
    const path: Path = [file, 'charts', c]
    const problems: Problem[] = []
    const row = rowOf(input)
    if (!row) problems.push(problem('row_not_known', [...path, 'input'], { name: input }))
    else if (!('input' in row) || row.input !== 'number')
      problems.push(problem('chart_not_input', [...path, 'input'], { name: input }))
    if (!(from < to)) problems.push(problem('span_order', [...path, 'from'], { low: from, high: to }))
    outputs.forEach((name, o) => {
      const output = rowOf(name)
      if (!output) problems.push(problem('row_not_known', [...path, 'outputs', o], { name }))
      else if (output.unit === 'choice' || output.unit === 'truth')
        problems.push(problem('chart_not_number', [...path, 'outputs', o], { name }))
    })
    return problems
  })
}
