/** One sentence a problem code: where, what was found, what is accepted, what to do. */
export const problems = {
  'problem.not_a_number': '{path}: “{found}” is not a number.',
} as const
