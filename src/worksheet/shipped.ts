import pool from '../../worksheets/pool.json'
import sample from '../../worksheets/sample.json'
import saturation from '../../worksheets/saturation.json'
import type { Definition } from './definition'
import type { Source } from './source'

/**
 * The worksheets that come with the app, in contract order. They are not read through the schema here, to keep it out
 * of the first load; a test reads every one of them through it.
 */
export const SHIPPED: readonly Source[] = [
  source('pool.json', pool),
  source('sample.json', sample),
  source('saturation.json', saturation),
]

function source(file: string, json: unknown): Source {
  return { definition: json as Definition, file, shipped: true }
}
