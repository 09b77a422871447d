import type { Notebook, Sample } from '../notebook/notebook'
import { instant } from './instant'

/** A dated sample of the pool itself, its figures by quantity in canonical units. */
export interface Measured {
  readonly id: string
  readonly name: string
  readonly date: string
  readonly figures: ReadonlyMap<string, number>
  /** the tests that took them, where the sample names them */
  readonly methods: ReadonlyMap<string, string>
}

const known = new WeakMap<Notebook['samples'], readonly Measured[]>()

/** The samples of this pool that have a date, the first first. A reading that is only a limit of its test is not in them. */
export function measuredOf({ samples }: Pick<Notebook, 'samples'>): readonly Measured[] {
  const before = known.get(samples)
  if (before !== undefined) return before
  const all = Object.values(samples)
    .filter(({ elsewhere, date }) => !elsewhere && date !== '')
    .map((sample) => ({ id: sample.id, name: sample.name, date: sample.date, ...figuresOf(sample) }))
    .sort((a, b) => instant(a.date) - instant(b.date))
  known.set(samples, all)
  return all
}

function figuresOf({ readings }: Sample): Pick<Measured, 'figures' | 'methods'> {
  const figures = new Map<string, number>()
  const methods = new Map<string, string>()
  for (const [quantity, reading] of Object.entries(readings)) {
    if (reading.kind !== 'value') continue
    figures.set(quantity, reading.canonical)
    if (reading.method !== undefined) methods.set(quantity, reading.method)
  }
  return { figures, methods }
}
