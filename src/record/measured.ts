import type { Notebook, Sample } from '../notebook/notebook'
import { instant } from './instant'

/** A dated sample of the pool itself, its figures by quantity in canonical units. */
export interface Measured {
  readonly id: string
  readonly name: string
  readonly date: string
  readonly figures: ReadonlyMap<string, number>
}

const known = new WeakMap<Notebook['samples'], readonly Measured[]>()

/** The samples of this pool that have a date, the first first. A reading that is only a limit of its test is not in them. */
export function measuredOf({ samples }: Pick<Notebook, 'samples'>): readonly Measured[] {
  const before = known.get(samples)
  if (before !== undefined) return before
  const all = Object.values(samples)
    .filter(({ elsewhere, date }) => !elsewhere && date !== '')
    .map((sample) => ({ id: sample.id, name: sample.name, date: sample.date, figures: figuresOf(sample) }))
    .sort((a, b) => instant(a.date) - instant(b.date))
  known.set(samples, all)
  return all
}

function figuresOf({ readings }: Sample): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(readings).flatMap(([quantity, reading]) =>
      reading.kind === 'value' ? [[quantity, reading.canonical] as const] : [],
    ),
  )
}
