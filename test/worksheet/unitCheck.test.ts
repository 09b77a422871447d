import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { FUNCTIONS } from '../../src/functions/registry'
import { isProblem } from '../../src/words/problem'
import { sentence } from '../../src/words/say'
import { catalogUnits } from '../../src/worksheet/catalogUnits'
import { GENERAL_FUNCTIONS } from '../../src/worksheet/generalFunctions'
import { GENERAL_UNITS } from '../../src/worksheet/generalUnits'
import { disagreement, measureOf } from '../../src/worksheet/measure'
import { parseFormula } from '../../src/worksheet/parse'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { unitFlags } from '../../src/worksheet/unitCheck'
import { expressions } from './expressions'
import { print } from './print'

const catalog = shippedCatalog()
const scope = catalogUnits(catalog)

/** What is flagged: code, the two units, and the place in the text. */
function flagged(formula: string, declared: string | null): string[] {
  const parsed = parseFormula(formula)
  if (isProblem(parsed)) throw new Error(sentence(parsed))
  return unitFlags(parsed.tree, scope, declared).map(({ problem: { code, facts }, from, to }) => {
    const units = [facts.left_unit, facts.right_unit, facts.found_unit, facts.wanted_unit].filter(Boolean)
    return `${code.slice('units_'.length)} | ${units.join(' | ')} | ${formula.slice(from, to)}`
  })
}

describe('every shipped formula agrees with itself and its row', () => {
  const computed = [...catalog.quantities.values()].filter(({ formula }) => formula !== null)

  test.each(computed.map((quantity) => [quantity.name, quantity] as const))('%s', (_, quantity) => {
    const { formula, row, checks, refusals } = quantity
    const said = 'units_as_said' in row && row.units_as_said === true
    const own = formula && !said ? unitFlags(formula.tree, scope, row.unit) : []
    const others = [...checks, ...refusals].flatMap(({ when }) => unitFlags(when.tree, scope, 'truth'))
    expect([...own, ...others].map(({ problem }) => sentence(problem))).toEqual([])
  })

  test.each([...catalog.solves.values()])('the inputs of $id', ({ function: name, inputs }) => {
    const apart = (FUNCTIONS.get(name)?.parameters ?? []).flatMap((parameter, i) => {
      const unit = scope.unitOf(inputs[i] ?? '')
      return unit !== undefined && disagreement(measureOf(unit), measureOf(parameter.unit)) ? [parameter.name] : []
    })
    expect(apart).toEqual([])
  })

  test('but where a number means 7 days', () => {
    const said = computed.filter(({ row }) => 'units_as_said' in row).map(({ name }) => name)
    expect(said).toEqual(['cyanuric_acid_from_dichlor', 'cyanuric_acid_from_trichlor'])
  })
})

describe('formulas that are right', () => {
  test.each([
    // one unit, and numbers that stand for it
    ['salt + salt_used', 'mg/L as NaCl'],
    ['total_chlorine - free_chlorine', 'mg/L as Cl2'],
    ['MAX(0; target_salt - salt_used)', 'mg/L as NaCl'],
    ['iron + copper + manganese', 'mg/L'],
    ['0.7 * total_hardness', 'mg/L as CaCO3'],
    ['IF(salt > 3000; salt; 3000)', 'mg/L as NaCl'],
    ['DEFAULT(salt; 3200)', 'mg/L as NaCl'],
    ['ROUND(salt_mass; 1)', 'kg'],
    ['SUM(salt_mass; soda_ash_mass; 0.5)', 'kg'],
    ['AVERAGE(salt; salt_from_chloride)', 'mg/L as NaCl'],
    ['STDEV(salt; salt_from_chloride)', 'mg/L as NaCl'],
    ['baseline.salt - salt', 'mg/L as NaCl'],
    ["'Drain a third'.volume / volume", '1'],
    // units made of others
    ['drain_volume / drain_flow', 'h'],
    ['volume / pump_flow', 'h'],
    ['length * width', 'm²'],
    ['length * width * depth_shallow', 'm³'],
    ['PI() * diameter ^ 2 / 4', 'm²'],
    ['SQRT(surface_area)', 'm'],
    ['POWER(length; 3)', 'm³'],
    ['salt_bags_whole * bag_mass', 'kg'],
    ['pump_hours / turnover_time', '1/day'],
    ['cell_output * dark_hours', 'g'],
    ['chlorine_demand * shell_age', 'mg/L'],
    ['free_chlorine - chlorine_demand * stabilizer_days', 'mg/L as Cl2'],
    ['free_chlorine * hocl_share', 'mg/L as Cl2'],
    // conversions: a plain factor changes the size of the unit, or what is counted
    ['(target_salt - salt_used) * volume / 1000', 'kg'],
    ['chlorine_rise * volume', 'g'],
    ['calcium_hardness * 0.4004', 'mg/L as Ca'],
    ['calcium_hardness * 0.4004 + magnesium', 'mg/L'],
    ['volume * 1000', 'L'],
    ['hocl_share * 100', '%'],
    ['hocl_share', '1'],
    ['salt_purity * 100 + 5', '%'],
    ['temperature * 1.8 + 32', '°F'],
    ['temperature + 273.15', 'K'],
    // readings with a zero of their own, and differences
    ['ph - 0.2', 'pH'],
    ['ph + lsi', 'pH'],
    ['ph - ph_saturation', '1'],
    ['2 * ph_saturation - ph', '1'],
    ['(temperature + temperature_low) / 2', '°C'],
    ['AVERAGE(temperature; temperature_low)', '°C'],
    ['temperature - temperature_low', 'K'],
    ['temperature_low + (temperature - temperature_low) / 2', '°C'],
    ['IF(temperature > temperature_low + 5; 1; 0)', '1'],
    // words and yes or no
    ['IF(shell = "plaster"; 200; 150)', 'mg/L as CaCO3'],
    ['SWITCH(shell; "plaster"; calcium_hardness; "tile"; 200; 0)', 'mg/L as CaCO3'],
    ['AND(ph > 7.8; NOT(MISSING(lsi)))', 'truth'],
    // empirical: a logarithm may stand for anything
    ['9.3 + (LOG10(tds) - 1) / 10 - 13.12 * LOG10(temperature + 273) + 34.55 - LOG10(calcium_hardness) + 0.4', 'pH'],
    ['23.4 + 1.7 * LN(free_chlorine)', 'mg/L'],
    ['10 ^ (0 - ph)', 'mol/L'],
    // locked functions
    ['SALT_MASS(volume; salt_used; target_salt; 0.99)', 'kg'],
    ['CONCENTRATION_AFTER_DILUTION(salt_used; fill_salt; 0.3)', 'mg/L as NaCl'],
    ['CONCENTRATION_AFTER_DILUTION(calcium_hardness; 0; drain_fraction)', 'mg/L as CaCO3'],
    ['water.lsi + 0.1', '1'],
  ])('%s in %s', (formula, declared) => {
    expect(flagged(formula, declared)).toEqual([])
  })
})

describe('formulas that are wrong are flagged with the two units, and where', () => {
  test.each([
    ['salt + salt_mass', null, 'together | mg/L as NaCl | kg | salt + salt_mass'],
    ['salt_mass + volume', 'kg', 'together | kg | m³ | salt_mass + volume'],
    [
      '0.4004 * calcium_hardness * volume + ph',
      null,
      'together | (mg/L as CaCO3)·m³ | pH | 0.4004 * calcium_hardness * volume + ph',
    ],
    ['magnesium + total_hardness', 'mg/L', 'together_basis | mg/L | mg/L as CaCO3 | magnesium + total_hardness'],
    ['free_chlorine + bromine', 'mg/L as Cl2', 'together_basis | mg/L as Cl2 | mg/L as Br2 | free_chlorine + bromine'],
    ['tds - salt_used', 'mg/L', 'together_basis | mg/L | mg/L as NaCl | tds - salt_used'],
    ['MAX(salt; total_alkalinity)', 'mg/L as NaCl', 'together_basis | mg/L as NaCl | mg/L as CaCO3 | total_alkalinity'],
    ['free_chlorine > temperature', 'truth', 'together | mg/L as Cl2 | °C | free_chlorine > temperature'],
    ['IF(ph > 7.8; salt_mass; volume)', 'kg', 'together | kg | m³ | volume'],
    [
      'DEFAULT(salt; calcium_hardness)',
      'mg/L as NaCl',
      'together_basis | mg/L as NaCl | mg/L as CaCO3 | calcium_hardness',
    ],
    ['SWITCH(shell; "vinyl"; salt_mass; ph)', 'kg', 'together | kg | pH | ph'],
    ['SUM(salt_mass; acid_volume)', 'kg', 'together | kg | L | acid_volume'],
    ['volume + acid_volume', 'm³', 'together | m³ | L | volume + acid_volume'],
    ['turnover_time + pump_hours', 'h', 'together | h | h/day | turnover_time + pump_hours'],
    ['shell + 1', null, 'together | choice | 1 | shell + 1'],
    ['(ph > 7) * 2', null, 'together | truth | 1 | (ph > 7) * 2'],
    ['ph = "high"', 'truth', 'together | pH | choice | ph = "high"'],
    ['MIN(ph; lsi)', null, 'together_difference | pH | 1 | lsi'],
    // the row
    ['salt_shortfall * volume', 'kg', 'row | g | kg | salt_shortfall * volume'],
    ['drain_volume / drain_flow', 'day', 'row | h | day | drain_volume / drain_flow'],
    ['pump_hours', '1', 'row | h/day | 1 | pump_hours'],
    ['hocl_share', '%', 'row | 1 | % | hocl_share'],
    ['salt_used', 'mg/L', 'row_basis | mg/L as NaCl | mg/L | salt_used'],
    ['2 * salt_mass', 'm³', 'row | kg | m³ | 2 * salt_mass'],
    ['temperature', 'K', 'row | °C | K | temperature'],
    ['temperature - temperature_low', '°C', 'row_difference | °C | °C | temperature - temperature_low'],
    ['temperature + temperature_low', '°C', 'row_difference | °C | °C | temperature + temperature_low'],
    ['lsi', 'pH', 'row_difference | 1 | pH | lsi'],
    ['ph > 7', '1', 'row | truth | 1 | ph > 7'],
    // arguments of locked functions
    ['SALT_FROM_CHLORIDE(temperature)', null, 'argument | °C | mg/L | temperature'],
    ['SALT_FROM_CHLORIDE(salt)', null, 'argument_basis | mg/L as NaCl | mg/L | salt'],
    ['SALT_MASS(salt_mass; salt; target_salt)', 'kg', 'argument | kg | m³ | salt_mass'],
    ['RYZNAR_INDEX(ph_saturation; lsi)', '1', 'argument_difference | 1 | pH | lsi'],
    [
      'DRAIN_DEPTH(0.3; water_depth_mean; temperature - temperature_low)',
      'm',
      'argument | °C | m | temperature - temperature_low',
    ],
    [
      'CONCENTRATION_AFTER_DILUTION(salt_used; fill_calcium_hardness; 0.3)',
      null,
      'together_basis | mg/L as NaCl | mg/L as CaCO3 | fill_calcium_hardness',
    ],
    ['CONCENTRATION_AFTER_DILUTION(volume; 0; 0.3)', null, 'argument | m³ | mg/L | volume'],
  ])('%s in %s', (formula, declared, wanted) => {
    expect(flagged(formula, declared)).toEqual([wanted])
  })

  test('each once, where it is', () => {
    expect(flagged('(salt + ph) * (volume - length) + kg', 'kg')).toEqual([
      'together | mg/L as NaCl | pH | salt + ph',
      'together | m³ | m | volume - length',
    ])
  })

  test('in sentences', () => {
    const parsed = parseFormula('salt + salt_mass')
    if (isProblem(parsed)) throw new Error(sentence(parsed))
    expect(unitFlags(parsed.tree, scope, null, ['My row']).map(({ problem }) => sentence(problem))).toEqual([
      'My row: at character 1 mg/L as NaCl and kg meet; they cannot be added, compared or stand for each other. Convert one of them with a factor.',
    ])
  })
})

test('no formula, however odd, breaks the check, and every flag stands in it', () => {
  const declared = fc.constantFrom(null, 'kg', 'pH', '°C', 'mg/L as CaCO3', 'truth', '1', 'no unit')
  fc.assert(
    fc.property(expressions, declared, (tree, unit) => {
      const text = print(tree)
      const parsed = parseFormula(text)
      if (isProblem(parsed)) return
      for (const { problem, from, to } of unitFlags(parsed.tree, scope, unit)) {
        expect(problem.code).toMatch(/^units_/)
        expect(sentence(problem)).not.toMatch(/undefined|NaN|\{/)
        expect(from >= 0 && from < to && to <= text.length).toBe(true)
      }
    }),
    { seed: 20260601, numRuns: process.env.LONG ? 20_000 : 1_000 },
  )
})

/** The number in another unit of its kind, or as much of it, is as right or wrong as before. */
test('a plain factor never turns what agrees into what does not', () => {
  const names = [...catalog.quantities.values()].filter(({ row }) => row.unit !== 'choice' && row.unit !== 'truth')
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.double({ min: 0.01, max: 1000, noNaN: true }),
      ({ name, row }, factor) => {
        expect(flagged(`1 * ${name}`, row.unit)).toEqual([])
        if (row.unit !== 'pH' && row.unit !== '°C') expect(flagged(`${factor} * ${name}`, row.unit)).toEqual([])
        expect(flagged(`${name} + (${name} - ${name})`, row.unit)).toEqual([])
      },
    ),
    { seed: 20260602, numRuns: 300 },
  )
})

test('only general functions have rules', () => {
  expect([...GENERAL_UNITS.keys()].filter((name) => !GENERAL_FUNCTIONS.has(name))).toEqual([])
})
