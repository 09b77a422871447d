/** What the page of functions says around them. */
export const pageFunctions = {
  'page.functions.intro':
    'The functions that worksheets and your own formulas use. They are locked: no worksheet, notebook or formula can change what they answer. Arguments are separated by “;”.',
  'page.functions.find': 'Find a function',
  'page.functions.count': '{count|one function|# functions}',
  'page.functions.all': 'Show all',
  'page.functions.none': 'No function has that in its name, its words or its source.',
  'page.functions.parameters': 'Takes',
  'page.functions.gives': 'Gives',
  'page.functions.optional': 'may be left out',
  'page.functions.fitted': 'fitted for {span}',
  'page.functions.source': 'Source',
  'page.functions.checks': 'Checked against',
  'page.functions.check': '{call} = {expect} within {tolerance}',
  'page.functions.version': 'version {version}',
  'page.functions.limits': 'takes {span}',
} as const
