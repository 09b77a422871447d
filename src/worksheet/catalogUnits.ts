import { isSolve } from '../functions/define'
import type { Catalog, Outline } from './catalog'
import type { UnitScope } from './unitCheck'

/** The units of all quantities and solves' outputs of a catalog, for the unit checker. */
export function catalogUnits({
  quantities,
  solves,
  functions,
}: Pick<Outline, 'quantities' | 'solves'> & Pick<Catalog, 'functions'>): UnitScope {
  return {
    functions,
    unitOf(key) {
      const row = quantities.get(key)?.row
      if (row) return row.unit
      const [id = '', output] = key.split('.')
      const f = functions.get(solves.get(id)?.function ?? '')
      return f && isSolve(f) ? f.outputs.find(({ name }) => name === output)?.unit : undefined
    },
  }
}
