import { newId } from '../../notebook/create'
import type { Edit, SimpleEdit } from '../../notebook/edit'
import type { Cell } from '../../notebook/notebook'
import type { Interval } from '../../record/interval'
import type { VolumeEvidence } from '../../record/volumeEvidence'

/**
 * A narrowed volume as the edit that takes it over: the ends that moved stand in the baseline as assumptions with their provenance, the volume
 * itself too where it lies outside them, and the record says what it follows from.
 * @param volume what the worksheet has now, m³
 */
export function acceptedVolume(
  baseline: string,
  interval: Interval,
  known: Interval | null,
  by: readonly VolumeEvidence[],
  volume: number | undefined,
  date: string,
  provenance: string,
  note: string,
): Edit {
  const low = outward(interval.low, Math.floor)
  const high = outward(interval.high, Math.ceil)
  const set = (quantity: string, figure: number): SimpleEdit => {
    const cell: Cell = { kind: 'value', entered: String(figure), unit: 'm³', canonical: figure, method: provenance }
    return { type: 'set_cell', scenario: baseline, quantity, cell }
  }
  const outside = volume === undefined || volume < low || volume > high
  const from = by.flatMap(({ before, after, additions }) => [before.id, after.id, ...additions.map(({ id }) => id)])
  return {
    type: 'together',
    edits: [
      ...(interval.low === known?.low ? [] : [set('volume_low', low)]),
      ...(interval.high === known?.high ? [] : [set('volume_high', high)]),
      ...(outside ? [set('volume', Number(((low + high) / 2).toPrecision(4)))] : []),
      {
        type: 'put_lesson',
        lesson: {
          id: newId(),
          date,
          kind: 'volume',
          values: { volume_low: low, volume_high: high },
          from: [...new Set(from)].slice(0, 500),
          note,
        },
      },
    ],
  }
}

/** To four figures, away from the middle: a rounded end must not leave out what the record allows. */
function outward(figure: number, round: (value: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(figure)) - 3)
  return Number((round(figure / step) * step).toPrecision(6))
}
