import type { Given } from '../../src/engine/batch'
import { isSolve } from '../../src/functions/define'
import { lockedFunction } from '../../src/functions/registry'

/** The same waters through the WATER solve as a bare loop: what the chemistry costs without grid and engine. */
export function speciateAgain(columns: readonly Given[]): void {
  const water = lockedFunction('WATER')
  if (!water || !isSolve(water)) throw new Error('there is no WATER')
  for (const column of columns) {
    const args = water.parameters.map(({ name }) =>
      name === 'borate' ? 0 : name === 'alkalinity_bottle' ? 'plain' : column.get(name),
    )
    water.solve(...(args as never[]))
  }
}
