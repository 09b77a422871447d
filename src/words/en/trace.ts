/** What the page says that follows a number back to its readings and forward to what uses it. */
export const trace = {
  'trace.nothing_there': 'There is no such value in this notebook any more.',
  'trace.in': 'in “{scenario}”',
  'trace.to_plan': 'Show the plan, step by step.',
  'trace.plan_reads': 'It is made from all that is entered in its scenario:',
  'trace.to_cell': 'Show it in its worksheet',
  'trace.back': 'Where it comes from',
  'trace.forward': 'What uses it',
  'trace.units':
    'Under each formula stand the numbers that were put in, in the notebook’s own units, to six digits; it is worked out with all of them.',
  'trace.function': 'version {version}: {source}',
  'trace.nothing_uses': 'Nothing else in this notebook uses it.',
  'trace.entered': 'Written as {entered}.',
  'trace.method': 'By this test: {method}.',
  'trace.sample': 'From the sample “{name}”, whose date is not known.',
  'trace.sample_dated': 'From the sample “{name}” of {date}.',
  'trace.elsewhere': 'It is a sample of another water.',
  'trace.file': 'From the file {file}, row {row}.',
  'trace.column': 'Its column there is headed “{heading}”.',
  'trace.others':
    '{count|Another test read it too; its reading is kept beside this one|# other tests read it too; their readings are kept beside this one}.',
} as const
