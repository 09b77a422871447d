import { describe, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { rate, report } from './report'
import { speciateAgain } from './speciateAgain'
import { waters } from './waters'

describe('columns a second', () => {
  const columns = waters(2_000)
  const catalog = shippedCatalog()
  const computedOf = (worksheet: string) =>
    [...catalog.quantities.values()].filter((q) => q.worksheet === worksheet && q.formula).map((q) => q.name)

  test('through the engine, against the chemistry alone', () => {
    const chemistry = rate(columns.length, () => speciateAgain(columns))
    const line = (what: string, wanted: readonly string[]) => {
      const batch = new Batch(catalog, wanted)
      const speed = rate(columns.length, () => void batch.evaluate(columns), 3)
      batch.close()
      report(what, `${speed.toFixed(0)} columns/s`, `solve alone ${chemistry.toFixed(0)} /s`, chemistry / speed)
    }
    line('lsi and calcite_si', ['lsi', 'calcite_si'])
    line('every quantity of saturation', computedOf('saturation'))
  })
})
