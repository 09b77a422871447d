import type { Given } from '../../src/engine/batch'
import { waters } from './waters'

/** Invented waters in which every ion is known. */
export function labWaters(count: number): Given[] {
  return waters(count).map(
    (water, i) =>
      new Map([...water, ['borate', 1 + (i % 10)], ['sulfate', 20 + (i % 90)], ['magnesium', 2 + (i % 15)]]),
  )
}

/** The same as a lab file of twelve columns under contract names. */
export function labText(count: number): string {
  const lines = labWaters(count).map((water, i) => {
    const date = `2026-${String(1 + (i % 12)).padStart(2, '0')}-${String(1 + (i % 28)).padStart(2, '0')}`
    return [`S-${i + 1}`, date, ...[...water.values()].map((value) => Number(value).toFixed(2))].join(',')
  })
  return [['sample', 'date', ...(labWaters(1)[0]?.keys() ?? [])].join(','), ...lines, ''].join('\n')
}
