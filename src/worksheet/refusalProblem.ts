import { type Problem, problem } from '../words/problem'
import { hasWords } from '../words/say'

/** What a refusal of a definition says: `<code>:<name>` where the catalogue has a sentence for it, else its own words. */
export function refusalProblem(text: string): Problem {
  const [code = '', quantity = ''] = text.split(':')
  return hasWords(`problem.${code}.${quantity}`)
    ? problem(code, [], { quantity })
    : problem('refused', [], { why: text })
}
