import type { Edit, SimpleEdit } from './edit'
import { type Cell, cellKey, type Notebook, type Reading, type Sample } from './notebook'
import { baselineOf } from './order'
import { own, withEntry, withoutEntry } from './own'
import { alone } from './planLink'
import { together } from './together'

/** The sample whose readings stand in the baseline. */
export function presentSample(notebook: Notebook): Sample | null {
  const { sample } = baselineOf(notebook)
  return sample === null ? null : (own(notebook.samples, sample) ?? null)
}

/**
 * A new bottle: its sample takes the baseline over. What was typed there in quantities of a sample would stand over the new
 * readings, so it goes into the sample that it was typed over, or into one of its own, `before`; nothing of it is lost. A
 * formula is no reading and stays.
 *
 * @param quantities names of the quantities that a sample has
 */
export function startSample(
  notebook: Notebook,
  sample: Sample,
  quantities: ReadonlySet<string>,
  before: Pick<Sample, 'id' | 'name'>,
): Edit {
  const { id: scenario } = baselineOf(notebook)
  const typed = [...quantities].flatMap((quantity) => {
    const cell = own(notebook.cells, cellKey(scenario, quantity))
    return cell === undefined || cell.kind === 'formula' ? [] : [[quantity, alone(cell)] as const]
  })
  const edits: SimpleEdit[] = [
    { type: 'put_sample', sample },
    { type: 'change_scenario', scenario, set: { sample: sample.id } },
    ...typed.map(([quantity]): SimpleEdit => ({ type: 'set_cell', scenario, quantity, cell: null })),
  ]
  const old = typed.length === 0 ? null : withTyped(notebook, typed, before)
  return together(...(old === null ? [] : [old]), ...edits)
}

function withTyped(
  notebook: Notebook,
  typed: readonly (readonly [quantity: string, cell: Exclude<Cell, { kind: 'formula' }>])[],
  before: Pick<Sample, 'id' | 'name'>,
): SimpleEdit | null {
  const present = presentSample(notebook)
  const shared = Object.values(notebook.scenarios).filter(({ sample }) => sample === present?.id).length > 1
  const base: Sample =
    present && !shared ? present : { date: '', elsewhere: false, readings: {}, ...present, ...before }
  const readings = typed.reduce(
    (now, [quantity, cell]) =>
      cell.kind === 'not_taken' ? withoutEntry(now, quantity) : withEntry(now, quantity, cell),
    base.readings,
  )
  return Object.keys(readings).length === 0 ? null : { type: 'put_sample', sample: { ...base, readings } }
}

/** A reading of the baseline's sample; `not_taken` takes it out, null leaves the cell to what comes next. */
export function setReading(
  notebook: Notebook,
  sample: Sample,
  quantity: string,
  reading: Reading | 'not_taken' | null,
): Edit {
  const { id: scenario } = baselineOf(notebook)
  const taken = reading !== null && reading !== 'not_taken'
  const readings = taken ? withEntry(sample.readings, quantity, reading) : withoutEntry(sample.readings, quantity)
  const typed = own(notebook.cells, cellKey(scenario, quantity))
  const cell: Cell | null = reading === 'not_taken' ? { kind: 'not_taken' } : null
  return together(
    { type: 'put_sample', sample: { ...sample, readings } },
    ...(typed === undefined && cell === null ? [] : [{ type: 'set_cell', scenario, quantity, cell } as const]),
  )
}

/** All readings of one quantity in a sample: first the one that is believed. */
export function readingsOf(sample: Sample, quantity: string): readonly Reading[] {
  const believed = own(sample.readings, quantity)
  return [...(believed === undefined ? [] : [believed]), ...(own(sample.others ?? {}, quantity) ?? [])]
}

/** The sample with these readings of one quantity, the first of them believed. */
export function withReadings(sample: Sample, quantity: string, all: readonly Reading[]): Sample {
  const [believed, ...rest] = all
  const { others = {}, ...bare } = sample
  const left = rest.length > 0 ? withEntry(others, quantity, rest) : withoutEntry(others, quantity)
  return {
    ...bare,
    readings: believed ? withEntry(sample.readings, quantity, believed) : withoutEntry(sample.readings, quantity),
    ...(Object.keys(left).length > 0 ? { others: left } : {}),
  }
}
