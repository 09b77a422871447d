/** What the commands say on standard error. */
export const headless = {
  'headless.usage':
    'usage: evaluate (--worksheet ID | --only NAME,NAME) [--set NAME=VALUE] [--case ID|FILE] [--censored limit|half|zero] [--decimal .|,] [--delimiter D] FILE|-',
  'headless.columns_not_used': 'columns not used: {names}',

  'problem.usage_option': 'The command line was not understood: {why}',
  'problem.usage_no_file': 'No file was named. Name one, or “-” for standard input.',
  'problem.usage_many_files': 'One file at a time: {found}.',
  'problem.usage_nothing_asked':
    'Nothing was asked for. Name a worksheet (--worksheet saturation) or quantities (--only lsi).',
  'problem.usage_set': '“{found}” sets nothing. Write --set NAME=VALUE, for instance --set volume=56.8.',
  'problem.usage_case': 'There is no case “{found}”, nor a file of that name that can be read. There are {accepted}.',
  'problem.usage_choice': '--{flag} takes {accepted}, not “{found}”.',
  'problem.usage_worksheet': 'There is no worksheet “{found}”. There are {accepted}.',
  'problem.usage_plan_alone': 'The plan is asked for alone: --worksheet plan.',
  'problem.usage_quantity': 'There is no quantity “{found}”.',
  'problem.given_twice': '“{name}” is given twice. Give it once, on the command line or as a column.',
  'problem.input_empty': 'The input has no header: its first line must hold quantity names.',
  'problem.input_not_opened': '{path}: the file cannot be read: {why}',
  'problem.header_twice': 'The column “{name}” stands twice in the header. Take one out.',
  'problem.header_unknown': 'No column of the header is a quantity that we know: {found}.',
  'problem.header_unit': '“{heading}”: “{found}” is not a unit for this quantity; its own unit is {unit}.',
  'problem.decimal_mixed': 'Some numbers have a decimal point and some a decimal comma. Say which it is with {flag}.',
  'problem.decimal_ambiguous': '“{found}” can be read in two ways. Say which decimal mark the file has with {flag}.',
  'problem.row_quotes': '{path}: the quotes of this row do not pair up',
  'problem.row_too_long': '{path}: {found} cells under {expected} headings',
  'problem.cell_unreadable': '{path}: "{found}" is not a number',
  'problem.cell_censored': '{path}: "{found}" is a limit, not a number; say with --censored what is to stand in for it',
  'problem.cell_choice': '{path}: "{found}" is not one of {accepted}',
  'problem.cell_outside': '{path}: {found} is outside {low} to {high} {unit}',
} as const
