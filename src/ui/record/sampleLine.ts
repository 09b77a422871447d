import type { Sample } from '../../notebook/notebook'
import { say } from '../../words/say'
import type { RecordView } from './createRecord'

/** The readings of a sample in one line, in the order of the test bench. */
export function sampleLine(view: RecordView, { readings }: Sample): string {
  const order = [...view.book.catalog().quantities.keys()]
  const parts = Object.entries(readings)
    .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
    .flatMap(([quantity, reading]) => {
      if (reading.kind === 'choice') return []
      const limit = reading.kind === 'limit' ? { above: '>', below: '<' }[reading.side] : ''
      return [`${view.label(quantity)} ${limit}${view.words(quantity, reading.canonical)}`]
    })
  return parts.length > 0 ? parts.join(' · ') : say('record.sample.no_figures')
}
