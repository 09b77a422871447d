import calcium from '../../worksheets/calcium.json'
import chlorine from '../../worksheets/chlorine.json'
import dilution from '../../worksheets/dilution.json'
import generator from '../../worksheets/generator.json'
import phAlkalinity from '../../worksheets/ph_alkalinity.json'
import plan from '../../worksheets/plan.json'
import pool from '../../worksheets/pool.json'
import salt from '../../worksheets/salt.json'
import sample from '../../worksheets/sample.json'
import saturation from '../../worksheets/saturation.json'
import stabilizer from '../../worksheets/stabilizer.json'
import type { Definition } from './definition'
import { SHIPPED_TARGETS } from './shippedTargets'
import type { Source } from './source'

/**
 * The worksheets that come with the app, in contract order. They are not read through the schema here, to keep it out
 * of the first load; a test reads every one of them through it. The sets of ranges go with the pool, which chooses one.
 */
export const SHIPPED: readonly Source[] = [
  source('pool.json', { ...pool, targets: SHIPPED_TARGETS }),
  source('sample.json', sample),
  source('saturation.json', saturation),
  source('stabilizer.json', stabilizer),
  source('salt.json', salt),
  source('dilution.json', dilution),
  source('ph_alkalinity.json', phAlkalinity),
  source('calcium.json', calcium),
  source('chlorine.json', chlorine),
  source('generator.json', generator),
  source('plan.json', plan),
]

function source(file: string, json: unknown): Source {
  return { definition: json as Definition, file, shipped: true }
}
