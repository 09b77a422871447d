/** What a locked function says when it has no answer, or cannot take an argument. `{path}` is the cell. */
export const problemsFunctions = {
  'problem.out_of_range': '{path}: {quantity} is {value}; this is worked out from {min} to {max} only.',
  'problem.no_such_water': '{path}: no water has these readings together. Look at {quantity} again.',
  'problem.unreachable': '{path}: what is wanted cannot be reached, because of {quantity}.',
  'problem.no_convergence': '{path}: no answer was found for {quantity}. Please report this with its readings.',
  'problem.mixed_models':
    '{path}: {quantity} was derived with the model {wanted}, and {model} is in use. Use one model for both.',
  'problem.missing': '{path}: needs readings that were not taken: {names}.',
  'problem.argument_not_a_number': '{path}: {parameter} of {function} is “{found}”, which is no number.',
  'problem.argument_out_of_range':
    '{path}: {parameter} of {function} is {found}{unit}; it works from {min} to {max}{unit}.',
  'problem.not_a_choice': '{path}: {parameter} of {function} is “{found}”; it takes one of {accepted}.',
  'problem.not_a_truth': '{path}: {parameter} of {function} is “{found}”; it takes TRUE or FALSE.',
} as const
