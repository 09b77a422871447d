import { type Texts, textAt } from '../../intake/texts'
import { say } from '../../words/say'
import type { LabImport } from '../lab/labImport'
import type { TableColumn } from './tableColumn'

/** What names a sample, before its readings. */
export function sampleColumns({ columns }: LabImport): readonly TableColumn[] {
  const { rows, names, dates } = columns
  const row: TableColumn = {
    ...bare('row', say('page.results.row')),
    kind: 'figure',
    standing: () => 'value',
    number: (sample) => rows[sample] ?? Number.NaN,
    text: (sample) => String(rows[sample] ?? ''),
    written: (sample) => rows[sample] ?? '',
  }
  return [row, ofTexts('name', say('page.lab.role.sample'), names), ofTexts('date', say('page.lab.role.date'), dates)]
}

/** Columns of the file that are no quantity. */
export function noteColumns({ columns }: LabImport): readonly TableColumn[] {
  return columns.notes.map(({ heading, texts }) => ({
    ...ofTexts(`note:${heading}`, heading, texts),
    group: 'note' as const,
  }))
}

function ofTexts(key: string, label: string, texts: Texts): TableColumn {
  const text = (sample: number) => textAt(texts, sample)
  return {
    ...bare(key, label),
    standing: (sample) => (text(sample) === '' ? 'missing' : 'value'),
    text,
    written: text,
  }
}

function bare(key: string, label: string) {
  return {
    key,
    group: 'sample' as const,
    label,
    kind: 'text' as const,
    unit: '',
    number: () => Number.NaN,
    side: () => null,
  }
}
