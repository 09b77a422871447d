import { afterAll, bench, describe } from 'vitest'
import { chlorineEquilibrium } from '../../src/chemistry/chlorineEquilibrium'
import { HOCL_MODELS } from '../../src/chemistry/cyanurateModels'
import { isFailure } from '../../src/chemistry/failure'

const BATCH = 10_000

/** Pool waters spread over the usual span: pH 7 to 8, 10 to 35 °C, free chlorine 0.5 to 10, stabilizer 0 to 120 mg/L. */
const waters = Float64Array.from({ length: 4 * BATCH }, (_, i) => {
  const share = (i * 0.618_033_988_75) % 1
  return [7 + share, 283.15 + 25 * share, (0.5 + 9.5 * share) / 70_906, (120 * share) / 129_075][i % 4] ?? 0
})

/** Read at the end, so that no loop can be left out as useless. */
let sum = 0
let best = { solves: 0, exponentials: 0 }

/** Runs a batch and keeps the highest rate, a second. */
function timed(kind: 'solves' | 'exponentials', batch: () => void): void {
  const start = performance.now()
  batch()
  best = { ...best, [kind]: Math.max(best[kind], (1_000 * BATCH) / (performance.now() - start)) }
}

describe(`${BATCH} waters`, () => {
  for (const model of HOCL_MODELS) {
    bench(`HOCl by ${model}`, () =>
      timed('solves', () => {
        for (let i = 0; i < 4 * BATCH; i += 4) {
          const [ph = 0, T = 0, chlorine = 0, cyanurate = 0] = [waters[i], waters[i + 1], waters[i + 2], waters[i + 3]]
          const water = chlorineEquilibrium(model, T, ph, chlorine, cyanurate)
          if (!isFailure(water)) sum += water.hocl
        }
      }),
    )
  }

  bench('as many bare Math.exp', () =>
    timed('exponentials', () => {
      for (let i = 0; i < 4 * BATCH; i += 4) sum += Math.exp(-(waters[i] ?? 0))
    }),
  )
})

afterAll(() => {
  const { solves, exponentials } = best
  const ratio = (exponentials / solves).toFixed(0)
  console.log(`chlorine: ${Math.round(solves)} solves/s at best, a solve costs ${ratio} Math.exp; checksum ${sum > 0}`)
})
