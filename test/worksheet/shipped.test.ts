import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { isSolve } from '../../src/functions/define'
import { hasWords, sentence } from '../../src/words/say'
import { definitionSchema, type Row } from '../../src/worksheet/definition'
import { parseDefinitionText } from '../../src/worksheet/parseDefinitionText'
import { isDefinition } from '../../src/worksheet/readDefinition'
import { SHIPPED } from '../../src/worksheet/shipped'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

/** The contract's quantities with their units: inputs, then computed ones in the order of its columns. */
const CONTRACT: Readonly<Record<string, readonly [inputs: string, computed: string]>> = {
  pool: [
    `water_body choice, shell choice, shell_age day, setting choice, use choice, sanitizer choice, shape choice, length m,
     width m, diameter m, depth_shallow m, depth_deep m, hopper_length m, hopper_width m, hopper_depth m, surface_area m²,
     measured_volume m³, salt_mass_added kg, salt_before mg/L as NaCl, pump_flow m³/h, pump_hours h/day, air_temperature °C,
     relative_humidity 1, wind_speed m/s`,
    `volume m³, volume_low m³, volume_high m³, volume_from_salt_rise m³, water_depth_mean m, turnover_time h,
     turnovers_per_day 1/day, evaporation L/day`,
  ],
  sample: [
    `ph pH, temperature °C, free_chlorine mg/L as Cl2, total_chlorine mg/L as Cl2, total_alkalinity mg/L as CaCO3,
     calcium_hardness mg/L as CaCO3, total_hardness mg/L as CaCO3, cyanuric_acid mg/L, borate mg/L as B, magnesium mg/L,
     sulfate mg/L, chloride mg/L, salt mg/L as NaCl, cell_salt_reading mg/L as NaCl, conductivity µS/cm, tds mg/L,
     phosphate mg/L as PO4, copper mg/L, iron mg/L, manganese mg/L, ammonia mg/L as N, bromine mg/L as Br2, orp mV,
     turbidity NTU, sample_age h, bottle_temperature °C, chlorine_sample_dilution 1, alkalinity_bottle choice`,
    `combined_chlorine mg/L as Cl2, salt_from_conductivity mg/L as NaCl, salt_from_chloride mg/L as NaCl,
     salt_disagreement mg/L as NaCl, salt_used mg/L as NaCl, tds_used mg/L, borate_used mg/L as B`,
  ],
  saturation: [
    'target_lsi 1, temperature_low °C, air_co2 ppm (air)',
    `cyanuric_acid_used mg/L, carbonate_alkalinity mg/L as CaCO3, ionic_strength mol/L, ph_saturation pH, lsi 1,
     table_index 1, ryznar 1, calcite_si 1, ccpp mg/L as CaCO3, ph_for_target_lsi pH, ph_against_air pH, lsi_cold 1,
     lsi_at_cell 1`,
  ],
}

const CHOICES = {
  water_body: ['pool', 'spa', 'wading', 'plunge'],
  shell: ['vinyl', 'fibreglass', 'painted', 'plaster', 'tile'],
  setting: ['indoor', 'outdoor'],
  use: ['private', 'public'],
  sanitizer: ['chlorine', 'bromine', 'biguanide'],
  shape: ['rectangle', 'round', 'oval', 'stadium', 'freeform'],
  alkalinity_bottle: ['plain', 'chlorine_counted', 'thiosulfate'],
}

/** Declared defaults are few: the contract lists all that there are. */
const DEFAULTS = { alkalinity_bottle: 'plain', target_lsi: 0 }
const STAND_INS = { borate_used: 0, cyanuric_acid_used: 0 }

function listed(text: string): [string, string][] {
  return text.split(',').map((part) => {
    const [name = '', ...unit] = part.trim().split(' ')
    return [name, unit.join(' ')]
  })
}

const catalog = shippedCatalog()
const rows = [...catalog.quantities.values()].map((q) => q.row)

describe('every shipped definition', () => {
  test.each(readdirSync('worksheets').filter((file) => file !== 'worksheet.schema.json'))('%s is read', (file) => {
    const read = parseDefinitionText(readFileSync(`worksheets/${file}`, 'utf8'), file)
    expect(isDefinition(read) ? [] : read.map(sentence)).toEqual([])
    expect(SHIPPED.find((source) => source.file === file)?.definition).toEqual(isDefinition(read) ? read : null)
  })

  test('the schema for editors is the one that is checked by (WRITE_SCHEMA=1 writes it anew)', () => {
    const schema = z.toJSONSchema(definitionSchema, { io: 'input' })
    const file = 'worksheets/worksheet.schema.json'
    if (process.env.WRITE_SCHEMA) writeFileSync(file, JSON.stringify(schema, null, 2))
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(schema)
  })
})

describe('the contract', () => {
  test.each(Object.entries(CONTRACT))('%s has its inputs, with their units', (worksheet, [inputs]) => {
    const found = rows.filter((row) => 'input' in row && catalog.quantities.get(row.name)?.worksheet === worksheet)
    const units = found.map((row): [string, string] => [row.name, row.unit])
    expect(Object.fromEntries(units)).toEqual(Object.fromEntries(listed(inputs)))
  })

  test.each(Object.entries(CONTRACT))('%s has its computed quantities, in order', (worksheet, [, computed]) => {
    const wanted = listed(computed)
    const names = new Set(wanted.map(([name]) => name))
    const found = rows.filter((row) => names.has(row.name) && catalog.quantities.get(row.name)?.worksheet === worksheet)
    expect(found.map((row) => [row.name, row.unit])).toEqual(wanted)
    expect(found.every((row) => 'formula' in row)).toBe(true)
  })

  test('the choices are its ids', () => {
    expect(Object.fromEntries(rows.flatMap((row) => ('choices' in row ? [[row.name, row.choices]] : [])))).toEqual(
      CHOICES,
    )
  })

  test('no other defaults than it declares', () => {
    const defaults = rows.flatMap((row) =>
      'input' in row && row.default !== undefined ? [[row.name, row.default]] : [],
    )
    expect(Object.fromEntries(defaults)).toEqual(DEFAULTS)
    const standIns = rows.flatMap((row) =>
      'when_missing' in row && row.when_missing ? [[row.name, row.when_missing.value]] : [],
    )
    expect(Object.fromEntries(standIns)).toEqual(STAND_INS)
  })

  test('a solve reads each quantity under the name of its parameter, or what is used for it', () => {
    for (const solve of catalog.solves.values()) {
      const f = catalog.functions.get(solve.function)
      const parameters = f && isSolve(f) ? f.parameters.map((parameter) => parameter.name) : []
      expect(parameters.length).toBeGreaterThan(0)
      solve.inputs.forEach((quantity, i) => {
        expect([parameters[i], `${parameters[i]}_used`]).toContain(quantity)
      })
    }
  })
})

describe('words', () => {
  const keys = (row: Row) => [
    `quantity.${row.name}.label`,
    `quantity.${row.name}.help`,
    ...('choices' in row ? row.choices.map((id) => `choice.${row.name}.${id}`) : []),
    ...sides(row).map((side) => `verdict.${row.name}.${side}`),
    ...('checks' in row ? (row.checks ?? []).map(({ notice }) => `notice.${notice.replace(':', '.')}`) : []),
    ...('when_missing' in row && row.when_missing ? [`notice.assumed.${row.when_missing.of}`] : []),
  ]

  test('every row has its own', () => {
    expect(rows.flatMap(keys).filter((key) => !hasWords(key))).toEqual([])
  })

  test('every worksheet and group has its own', () => {
    const keysOfSheets = catalog.worksheets.flatMap(({ id, groups }) => [
      `worksheet.${id}.label`,
      `worksheet.${id}.help`,
      ...groups.map((group) => `group.${id}.${group.id}`),
    ])
    expect(keysOfSheets.filter((key) => !hasWords(key))).toEqual([])
  })

  test('shipped definitions hold none themselves', () => {
    expect(rows.filter((row) => row.label !== undefined || row.help !== undefined)).toEqual([])
  })
})

test('every band lies inside its range bar', () => {
  const wrong = rows.filter(({ range, target }) =>
    (target ?? []).some(
      ({ low, high }) => range === undefined || (low ?? range[0]) < range[0] || (high ?? range[1]) > range[1],
    ),
  )
  expect(wrong.map((row) => row.name)).toEqual([])
})

function sides(row: Row): string[] {
  const bands = row.target ?? []
  if (bands.length === 0) return []
  return [
    'within',
    ...(bands.some((band) => band.low !== undefined) ? ['below'] : []),
    ...(bands.some((band) => band.high !== undefined) ? ['above'] : []),
  ]
}
