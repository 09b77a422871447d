import newSouthWales from '../../worksheets/targets/au_new_south_wales.json'
import westernHomes from '../../worksheets/targets/au_western_homes.json'
import din from '../../worksheets/targets/de_din_19643.json'
import france from '../../worksheets/targets/fr_2021.json'
import saltCell from '../../worksheets/targets/salt_cell_private.json'
import council from '../../worksheets/targets/uk_council.json'
import standard from '../../worksheets/targets/us_apsp_11.json'
import healthCode from '../../worksheets/targets/us_mahc.json'
import newYork from '../../worksheets/targets/us_new_york.json'
import who from '../../worksheets/targets/who_2006.json'
import type { TargetSet } from './definition'

/** The sets of ranges that come with the app, practice before codes. A test reads every one of them through the schema. */
export const SHIPPED_TARGETS: readonly TargetSet[] = [
  saltCell,
  healthCode,
  standard,
  newYork,
  who,
  din,
  france,
  council,
  newSouthWales,
  westernHomes,
]
