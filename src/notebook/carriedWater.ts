/** What a worksheet foretells of a water, and what of the readings it leaves as they are. */
export interface CarriedWater {
  /** reading → the quantity that foretells it */
  readonly foretold: Readonly<Record<string, string>>
  /** readings that stay as they were read */
  readonly stays: readonly string[]
}

export type WaterName = 'dilution' | 'ph_alkalinity' | 'calcium' | 'salt'

const METHOD = ['temperature', 'alkalinity_bottle']
const TRACES = ['phosphate', 'copper', 'iron', 'manganese']

/**
 * The waters that can be carried forward, by the worksheet that foretells them. What is in neither list is not taken in the
 * new scenario: chlorine, bromine, redox, ammonia and turbidity, which do not last the work; chloride, conductivity,
 * dissolved solids and the cell's own display where something was dissolved; in dilution whatever the worksheet does not
 * reckon with. A dose by its own worksheet foretells itself alone; several together are the step plan's to foretell.
 */
export const CARRIED_WATERS: Readonly<Record<WaterName, CarriedWater>> = {
  dilution: {
    foretold: {
      ph: 'ph_after_dilution',
      total_alkalinity: 'total_alkalinity_after_dilution',
      calcium_hardness: 'calcium_hardness_after_dilution',
      cyanuric_acid: 'cyanuric_acid_after_dilution',
      borate: 'drain_borate',
      salt: 'salt_after_dilution',
      tds: 'tds_after_dilution',
      iron: 'iron_after_dilution',
    },
    stays: METHOD,
  },
  ph_alkalinity: {
    foretold: { ph: 'ph_after', total_alkalinity: 'total_alkalinity_after', borate: 'borate_after', salt: 'salt_used' },
    stays: [...METHOD, ...TRACES, 'calcium_hardness', 'total_hardness', 'cyanuric_acid', 'magnesium'],
  },
  calcium: {
    foretold: {
      ph: 'ph_after_calcium',
      calcium_hardness: 'calcium_hardness_after',
      salt: 'salt_after_calcium',
    },
    stays: [...METHOD, ...TRACES, 'total_alkalinity', 'cyanuric_acid', 'borate', 'magnesium', 'sulfate'],
  },
  salt: {
    foretold: { salt: 'salt_after_bags' },
    stays: [
      ...METHOD,
      ...TRACES,
      'ph',
      'total_alkalinity',
      'calcium_hardness',
      'total_hardness',
      'cyanuric_acid',
      'borate',
      'magnesium',
      'sulfate',
    ],
  },
}
