import alkalineFill from '../../../worksheets/cases/alkaline_fill.json'
import borate from '../../../worksheets/cases/borate.json'
import cellSaysLow from '../../../worksheets/cases/cell_says_low.json'
import cellScale from '../../../worksheets/cases/cell_scale.json'
import closing from '../../../worksheets/cases/closing.json'
import combinedIndoors from '../../../worksheets/cases/combined_indoors.json'
import faecalAccident from '../../../worksheets/cases/faecal_accident.json'
import firstFill from '../../../worksheets/cases/first_fill.json'
import greenWater from '../../../worksheets/cases/green_water.json'
import leak from '../../../worksheets/cases/leak.json'
import metalStain from '../../../worksheets/cases/metal_stain.json'
import oldBottle from '../../../worksheets/cases/old_bottle.json'
import opening from '../../../worksheets/cases/opening.json'
import overSalted from '../../../worksheets/cases/over_salted.json'
import phRises from '../../../worksheets/cases/ph_rises.json'
import plasterStartUp from '../../../worksheets/cases/plaster_start_up.json'
import rainOverflow from '../../../worksheets/cases/rain_overflow.json'
import spa from '../../../worksheets/cases/spa.json'
import stabilizerHigh from '../../../worksheets/cases/stabilizer_high.json'
import underSalted from '../../../worksheets/cases/under_salted.json'
import volumeUnknown from '../../../worksheets/cases/volume_unknown.json'
import type { CaseDefinition, CaseSource } from './caseDefinition'

/** The cases that come with the app. A test reads every one of them through the schema. */
export const SHIPPED_CASES: readonly CaseSource[] = [
  source(greenWater),
  source(firstFill),
  source(cellSaysLow),
  source(overSalted),
  source(underSalted),
  source(stabilizerHigh),
  source(phRises),
  source(alkalineFill),
  source(combinedIndoors),
  source(spa),
  source(plasterStartUp),
  source(leak),
  source(cellScale),
  source(metalStain),
  source(closing),
  source(opening),
  source(rainOverflow),
  source(faecalAccident),
  source(borate),
  source(volumeUnknown),
  source(oldBottle),
]

function source(json: unknown): CaseSource {
  const definition = json as CaseDefinition
  return { definition, file: `${definition.id}.json`, shipped: true }
}
