import type { RowOutcome, SkipRule } from './outcome'

/** What became of all rows: `rows = samples + refused + skipped`, always. */
export interface Account {
  readonly rows: number
  readonly samples: number
  readonly refused: number
  readonly skipped: number
  readonly skippedBy: Readonly<Partial<Record<SkipRule, number>>>
  /** readings, not rows */
  readonly censored: number
  readonly unlikely: number
  readonly estimated: number
  /** samples that repeat an earlier one's name and date */
  readonly repeats: number
}

export interface Ledger {
  /** rows of data that were met in the file, counted where they are cut, not where they end up */
  met(rows: number): void
  add(outcome: RowOutcome): void
  account(): Account
}

export function createLedger(): Ledger {
  let rows = 0
  const count = { samples: 0, refused: 0, skipped: 0, censored: 0, unlikely: 0, estimated: 0, repeats: 0 }
  const skippedBy: Partial<Record<SkipRule, number>> = {}
  return {
    met(more) {
      rows += more
    },
    add(outcome) {
      if (outcome.kind === 'refused') count.refused++
      if (outcome.kind === 'skipped') {
        count.skipped++
        skippedBy[outcome.rule] = (skippedBy[outcome.rule] ?? 0) + 1
      }
      if (outcome.kind !== 'sample') return
      count.samples++
      if (outcome.sample.repeats !== undefined) count.repeats++
      for (const name in outcome.sample.readings) {
        const reading = outcome.sample.readings[name]
        if (reading?.kind === 'censored') count.censored++
        if (reading?.kind === 'value' && reading.mark === 'unlikely') count.unlikely++
        if (reading?.kind === 'value' && reading.mark === 'estimated') count.estimated++
      }
    },
    account: () => ({
      rows,
      ...count,
      skippedBy: { ...skippedBy },
    }),
  }
}
