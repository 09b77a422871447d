import { instant } from '../../record/instant'
import { say } from '../../words/say'
import { timeText } from '../../words/written'

/** A date of the record as the reader writes dates; with the time where it has one. */
export function dateWords(date: string): string {
  const time = instant(date)
  return Number.isNaN(time) ? say('record.no_date') : timeText(time, date.includes('T') ? 'minute' : 'day')
}
