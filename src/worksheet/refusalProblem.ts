import { type Problem, problem } from '../words/problem'

/** Reasons that the catalogue has a sentence for, `problem.<code>.<name>`; shipped definitions refuse with no others. */
export const REASONS: ReadonlySet<string> = new Set([
  'disagree:salt',
  'dry:acid_product',
  'not_for:sanitizer',
  'outside_window:target_salt',
  'upside_down:cell_flow',
  'upside_down:cell_salt',
  'wide_error:salt_test_error',
])

/** What a refusal of a definition says: one of the known reasons, as `<code>:<name>`, else its own words. */
export function refusalProblem(text: string): Problem {
  const [code = '', quantity = ''] = text.split(':')
  return REASONS.has(text) ? problem(code, [], { quantity }) : problem('refused', [], { why: text })
}
