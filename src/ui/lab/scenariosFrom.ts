import type { LabSample } from '../../intake/outcome'
import { addSamples } from '../../notebook/commands'
import { newId } from '../../notebook/create'
import type { Edit } from '../../notebook/edit'
import type { Notebook, Reading, Sample } from '../../notebook/notebook'
import { say } from '../../words/say'
import type { Outline } from '../../worksheet/catalog'

/** What stands for a reading that is only known to be below or above what the test can tell. */
export type Censored = 'leave_out' | 'limit' | 'half'

export interface Chosen {
  readonly row: number
  readonly sample: LabSample
}

/**
 * The edit that takes chosen rows of a lab file in: each a sample and a scenario that is tied to it, all one step of
 * history. `elsewhere`: they are of other waters and take nothing from this notebook's pool.
 */
export function scenariosFrom(
  notebook: Notebook,
  chosen: readonly Chosen[],
  file: string,
  { elsewhere, censored, catalog }: { elsewhere: boolean; censored: Censored; catalog: Pick<Outline, 'quantities'> },
): Edit {
  const samples = chosen.map(
    ({ row, sample }): Sample => ({
      id: newId(),
      name: sample.name || say('page.lab.row_name', { row }),
      date: sample.date,
      elsewhere,
      readings: readingsOf(sample, censored, catalog),
      origin: { file, row },
    }),
  )
  return addSamples(notebook, samples)
}

function readingsOf(
  sample: LabSample,
  censored: Censored,
  { quantities }: Pick<Outline, 'quantities'>,
): Readonly<Record<string, Reading>> {
  const readings: Record<string, Reading> = {}
  for (const [quantity, reading] of Object.entries(sample.readings)) {
    if (reading.kind === 'choice') readings[quantity] = { kind: 'choice', id: reading.id }
    else if (reading.kind === 'value') {
      const { entered, unit, canonical } = reading
      readings[quantity] = { kind: 'value', entered, unit, canonical }
    } else if (censored !== 'leave_out' && reading.limit !== null) {
      // Half the limit speaks of what is too little to tell; of what is too much the limit is the least that it can be.
      const half = censored === 'half' && reading.sign === '<'
      const canonical = half ? reading.limit / 2 : reading.limit
      const unit = quantities.get(quantity)?.row.unit ?? '1'
      readings[quantity] = { kind: 'value', entered: String(canonical), unit, canonical, method: reading.entered }
    }
  }
  return readings
}
