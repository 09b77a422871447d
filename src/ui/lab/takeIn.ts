import { type ImportedColumn, STATE, UNSAID } from '../../intake/columnar'
import { textAt } from '../../intake/texts'
import { addSamples } from '../../notebook/commands'
import { newId } from '../../notebook/create'
import type { Edit } from '../../notebook/edit'
import type { Notebook, Reading, Sample } from '../../notebook/notebook'
import { convert } from '../../units/convert'
import { say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'
import type { LabImport } from './labImport'

/**
 * What stands for a reading that is only known to be below or above what the test can tell: nothing that is worked with (in a
 * notebook it is kept as the limit that it is), the limit itself, or half of it.
 */
export type Censored = 'leave_out' | 'limit' | 'half'

/**
 * The edit that takes chosen samples of a lab file in, all one step of history: each a sample, and with `scenarios` a
 * scenario that is tied to it. `elsewhere`: they are of other waters and take nothing from this notebook's pool.
 */
export function takeIn(
  notebook: Notebook,
  source: LabImport,
  chosen: readonly number[],
  options: { elsewhere: boolean; censored: Censored; scenarios: boolean; catalog: Pick<Outline, 'quantities'> },
): Edit {
  const { head, columns } = source
  const samples = chosen.map((at): Sample => {
    const row = columns.rows[at] ?? 0
    return {
      id: newId(),
      name: textAt(columns.names, at) || say('page.lab.row_name', { row }),
      date: textAt(columns.dates, at),
      elsewhere: options.elsewhere,
      readings: readingsOf(source, at, options),
      origin: { file: head.name, row, import: head.id },
    }
  })
  if (options.scenarios) return addSamples(notebook, samples)
  return { type: 'together', edits: samples.map((sample) => ({ type: 'put_sample', sample })) }
}

function readingsOf(
  { head, columns }: LabImport,
  at: number,
  { censored, catalog }: { censored: Censored; catalog: Pick<Outline, 'quantities'> },
): Readonly<Record<string, Reading>> {
  const readings: Record<string, Reading> = {}
  for (const column of columns.quantities) {
    const unit = catalog.quantities.get(column.quantity)?.row.unit
    if (unit === undefined) continue
    const choices = head.choices[column.quantity]
    const reading = choices ? choiceOf(column, at, choices) : readingOf(column, at, unit, censored)
    if (reading) readings[column.quantity] = reading
  }
  return readings
}

function choiceOf({ states, values }: ImportedColumn, at: number, choices: readonly string[]): Reading | null {
  const id = states[at] === STATE.value ? choices[values[at] ?? -1] : undefined
  return id === undefined ? null : { kind: 'choice', id }
}

function readingOf(column: ImportedColumn, at: number, unit: string, censored: Censored): Reading | null {
  const state = column.states[at] ?? STATE.notTaken
  const canonical = column.values[at] ?? Number.NaN
  if (state === STATE.notTaken || Number.isNaN(canonical)) return null
  if (state !== STATE.below && state !== STATE.above) {
    return { kind: 'value', ...entered(column, at, unit, canonical), canonical }
  }
  // left out of what is worked out, and kept as what it is
  if (censored === 'leave_out') {
    const side = state === STATE.below ? 'below' : 'above'
    return { kind: 'limit', side, ...entered(column, at, unit, canonical), canonical }
  }
  // Half the limit speaks of what is too little to tell; of what is too much the limit is the least that it can be.
  const stands = censored === 'half' && state === STATE.below ? canonical / 2 : canonical
  const method = `${state === STATE.below ? '<' : '>'}${canonical}`
  return { kind: 'value', entered: String(stands), unit, canonical: stands, method }
}

/** The figure as the file has it, in its unit and with its places; else the canonical one. */
function entered(
  { unit, decimals }: ImportedColumn,
  at: number,
  canonicalUnit: string,
  canonical: number,
): { entered: string; unit: string } {
  const places = decimals[at] ?? UNSAID
  const inFile = places === UNSAID ? null : convert(canonical, canonicalUnit, unit)
  return typeof inFile === 'number'
    ? { entered: inFile.toFixed(Math.min(places, 20)), unit }
    : { entered: String(canonical), unit: canonicalUnit }
}
