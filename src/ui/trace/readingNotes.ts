import type { Sample } from '../../notebook/notebook'
import { own } from '../../notebook/own'
import { planOf } from '../../notebook/planLink'
import type { Source } from '../../notebook/resolve'
import { say } from '../../words/say'
import { unitWords } from '../unitWords'

/** Where an entry or a reading came from, a sentence each: as it was written, by what test, of which sample, out of which file. */
export function readingNotes({ cell, from }: Source, quantity: string, sample: Sample | undefined): readonly string[] {
  const notes: string[] = []
  if (from === 'sample' && sample)
    notes.push(
      sample.date === ''
        ? say('trace.sample', { name: sample.name })
        : say('trace.sample_dated', { name: sample.name, date: sample.date }),
    )
  // what follows a plan was written by nobody
  if ((cell?.kind === 'value' || cell?.kind === 'limit') && planOf(cell) === null) {
    notes.push(say('trace.entered', { entered: `${cell.entered} ${unitWords(cell.unit)}`.trim() }))
    if (cell.method !== undefined) notes.push(say('trace.method', { method: cell.method }))
  }
  if (from !== 'sample' || !sample) return notes
  if (sample.elsewhere) notes.push(say('trace.elsewhere'))
  const { origin } = sample
  if (origin) notes.push(say('trace.file', { file: origin.file, row: origin.row }))
  const others = own(sample.others ?? {}, quantity) ?? []
  if (others.length > 0) notes.push(say('trace.others', { count: others.length }))
  return notes
}
