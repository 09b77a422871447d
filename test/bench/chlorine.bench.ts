import { describe, test } from 'vitest'
import { HOCL_MODELS } from '../../src/chemistry/cyanurateModels'
import { built } from './built'
import { rate, report } from './report'

const COUNT = 10_000

/** Pool waters spread over the usual span: pH 7 to 8, 10 to 35 °C, free chlorine 0.5 to 10, stabilizer 0 to 120 mg/L. */
const waters = Array.from({ length: COUNT }, (_, i) => {
  const share = ((4 * i + 1) * 0.618_033_988_75) % 1
  return {
    ph: 7 + share,
    T: 283.15 + 25 * share,
    chlorine: (0.5 + 9.5 * share) / 70_906,
    cyanurate: (120 * share) / 129_075,
  }
})

describe('chlorine, solves a second on one core', () => {
  test('against as many bare Math.exp', async () => {
    const entry = 'src/chemistry/chlorineEquilibrium.ts'
    const { chlorineEquilibrium } = await built<typeof import('../../src/chemistry/chlorineEquilibrium')>(entry)
    let sum = 0
    const exponentials = rate(COUNT, () => {
      for (const { ph } of waters) sum += Math.exp(-ph)
    })
    for (const model of HOCL_MODELS) {
      const speed = rate(COUNT, () => {
        for (const { ph, T, chlorine, cyanurate } of waters) {
          const water = chlorineEquilibrium(model, T, ph, chlorine, cyanurate)
          if ('hocl' in water) sum += water.hocl
        }
      })
      report(`HOCl by ${model}`, `${speed.toFixed(0)} /s`, 'bare Math.exp', exponentials / speed, 'aim 300 000 /s')
    }
    if (Number.isNaN(sum)) throw new Error('a solve gave no number')
  })
})
