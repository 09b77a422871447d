import Papa from 'papaparse'

/** The fields of a table as spreadsheets put it on the clipboard: tab-separated; quotes that do not come in pairs are text. */
export function pastedTable(text: string): string[][] {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '')
  const { data, errors } = Papa.parse<string[]>(lines, { delimiter: '\t', newline: '\n' })
  return errors.some(({ type }) => type === 'Quotes') ? lines.split('\n').map((line) => line.split('\t')) : data
}
