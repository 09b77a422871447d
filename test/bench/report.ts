/** One line of the bench's table: what was measured, against what, and what was aimed at. */
export function report(what: string, figure: string, reference: string, ratio: number | null, aim = ''): void {
  const cells = [
    what.padEnd(58),
    figure.padStart(18),
    reference.padStart(30),
    ratio === null ? '' : `× ${ratio.toPrecision(3)}`,
    aim,
  ]
  console.log(`| ${cells.join(' | ')} |`)
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}

/** Runs a batch a few times and gives the best rate, in runs a second: the least disturbed one. */
export function rate(runs: number, batch: () => void, rounds = 5): number {
  let best = 0
  for (let round = 0; round < rounds; round++) {
    const start = performance.now()
    batch()
    best = Math.max(best, (1000 * runs) / (performance.now() - start))
  }
  return best
}
