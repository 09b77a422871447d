import type { Sample } from '../../notebook/notebook'
import { say } from '../../words/say'
import { limitText } from '../grid/limitText'
import { unitWords } from '../unitWords'
import type { RecordView } from './createRecord'

/** The readings of a sample in one line, in the order of the test bench. */
export function sampleLine(view: RecordView, { readings }: Sample): string {
  const order = [...view.book.catalog().quantities.keys()]
  const parts = Object.entries(readings)
    .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
    .flatMap(([quantity, reading]) => {
      if (reading.kind === 'choice') return []
      const row = view.book.catalog().quantities.get(quantity)?.row
      const unit = view.book.unit(quantity)
      const words =
        reading.kind === 'limit' && row
          ? `${limitText(reading, row, unit)} ${unitWords(unit)}`.trim()
          : view.words(quantity, reading.canonical)
      return [`${view.label(quantity)} ${words}`]
    })
  return parts.length > 0 ? parts.join(' · ') : say('record.sample.no_figures')
}
