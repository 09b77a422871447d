import type { Lesson } from '../../notebook/record'
import { say } from '../../words/say'
import type { RecordView } from './createRecord'

/** What was learned, in a sentence. */
export function lessonWords(view: RecordView, { kind, values }: Lesson): string {
  const figure = (name: string, quantity = name) => view.words(quantity, values[name] ?? Number.NaN)
  switch (kind) {
    case 'volume':
      return say('record.lesson.volume', { low: figure('volume_low'), high: figure('volume_high') })
    case 'night':
      return values.loss_in_the_dark === undefined
        ? say('record.lesson.night_on', { output: figure('cell_output_measured') })
        : say('record.lesson.night_off', { loss: figure('loss_in_the_dark', 'free_chlorine') })
    case 'salt_display':
      return say('record.lesson.salt_display', { by: figure('display_correction', 'salt') })
  }
}
