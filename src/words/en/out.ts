/** What the page for files and paper says, and what stands in what it makes. */
export const out = {
  'out.intro':
    'Worksheets for other programs and for paper. Files have every figure with all its digits, assumptions marked, formulas as text. Nothing in them is run by the program that opens them.',
  'out.worksheet': 'Worksheet',
  'out.all_worksheets': 'All worksheets',
  'out.scenarios': 'Scenarios',
  'out.no_scenario': 'Choose at least one scenario.',
  'out.csv': 'Save as CSV',
  'out.csv_says':
    'a line a scenario, names and units in the header, a last column that names what is assumed; the lab page and the commands read it again',
  'out.ods': 'Save as a spreadsheet',
  'out.ods_says': 'OpenDocument (.ods), a sheet a worksheet, and one that says where the numbers come from',
  'out.print_says': 'each worksheet on one page',
  'out.saved': '{name} was saved.',
  'out.small':
    '{count|One worksheet|# worksheets} will be printed smaller than {points} points to fit on one page. With fewer scenarios it is larger.',
  'out.preview': 'As it is printed',
  'out.assumed_mark': '† assumed: typed over what the notebook works out',
  'out.empty': 'No row of this worksheet has a value yet.',
  'out.col.formula': 'Formula, as text',
  'out.col.sample': 'Sample',
  'out.sources': 'Sources',
  'out.sources.assumptions': 'Assumptions',
  'out.sources.assumed': 'typed over what the notebook works out',
  'out.sources.samples': 'Samples',
  'out.sources.file': 'from the file {file}, row {row}',
  'out.sources.entered': 'entered by hand',
  'out.sources.elsewhere': 'of another water',
  'out.sources.functions': 'Locked functions',
  'out.sources.version': 'version {version}',
  'out.sources.worksheets': 'Worksheets',
  'out.sources.edition': 'edition {edition}',
} as const
