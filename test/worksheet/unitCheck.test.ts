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
    // empirical: beside the logarithm of a concentration a constant accounts for its unit
    ['9.3 + (LOG10(tds) - 1) / 10 - 13.12 * LOG10(temperature + 273) + 34.55 - LOG10(calcium_hardness) + 0.4', 'pH'],
    ['LOG10(tds)', '1'],
    ['7.5 + LOG10(chlorine_split.ocl / chlorine_split.hocl)', 'pH'],
    ['total_alkalinity * LOG10(free_chlorine / total_chlorine)', 'mg/L as CaCO3'],
    // 10 to a pH is a number and moles in a litre
    ['10 ^ (0 - ph)', 'mol/L'],
    ['10 ^ -ph', 'mol/L'],
    ['10 ^ -ph', '1'],
    ['10 ^ (ph - 14)', 'mol/L'],
    ['1 / (1 + 10 ^ (7.54 - ph))', '1'],
    ['10 ^ -ph / (10 ^ -ph + 10 ^ -7.54)', '1'],
    ['10 ^ -ph * volume * 1000', 'mol'],
    ['-LOG10(10 ^ -ph)', 'pH'],
    ['total_alkalinity * 10 ^ (ph - 7)', 'mg/L as CaCO3'],
    ['total_alkalinity * 10 ^ lsi', 'mg/L as CaCO3'],
    // in an exponential a number that is written may carry the unit
    ['free_chlorine * EXP(-(free_chlorine / 10))', 'mg/L as Cl2'],
    ['free_chlorine * 0.5 ^ (shell_age / 7)', 'mg/L as Cl2'],
    ['evaporation * 1.07 ^ (temperature - 20)', 'L/day'],
    ['evaporation * 1.07 ^ (temperature - temperature_low)', 'L/day'],
    ['EXP(-5000 / (temperature + 273.15))', '1'],
    ['SIN(0.0172 * shell_age)', '1'],
    ['1 - EXP(-(free_chlorine / cyanuric_acid))', '1'],
    ['EXP(0.8 * LN(salt) - 2)', '1'],
    ['(0.5 * hocl_share) ^ hocl_share', '1'],
    ['salt ^ -1 * salt ^ 2', 'mg/L as NaCl'],
    ['1 - EXP(0 - rain_depth / water_depth_mean)', '1'],
    // a pH in a difference, a mean, a fit; temperatures in a mean, a difference, in kelvin
    ['total_alkalinity * (ph - 7)', 'mg/L as CaCO3'],
    ['total_alkalinity * (ph - baseline.ph)', 'mg/L as CaCO3'],
    ['drain_fraction * ph + (1 - drain_fraction) * baseline.ph', 'pH'],
    ['12 - 0.5 * ph', 'pH'],
    ['0.1 * ph ^ 2 - 0.5 * ph + 8', 'pH'],
    ['(temperature * volume + temperature_low * drain_volume) / (volume + drain_volume)', '°C'],
    [
      'salt / ((temperature * volume + temperature_low * drain_volume) / (volume + drain_volume) + 273.15) * (temperature + 273.15)',
      'mg/L as NaCl',
    ],
    ['salt / (temperature * volume - temperature_low * volume) * (temperature - 20) * volume', 'mg/L as NaCl'],
    ['salt * (temperature - 20) / (temperature_low - 20)', 'mg/L as NaCl'],
    ['salt * (temperature + 273.15) / (temperature_low + 273.15)', 'mg/L as NaCl'],
    // what is counted, through products, roots and ratios
    ['SQRT(salt * salt)', 'mg/L as NaCl'],
    ['SQRT(salt * target_salt)', 'mg/L as NaCl'],
    ['SQRT(SUMSQ(salt; target_salt))', 'mg/L as NaCl'],
    ['POWER(salt; 0.5) * POWER(target_salt; 0.5)', 'mg/L as NaCl'],
    ['total_alkalinity ^ 2 / calcium_hardness', 'mg/L as CaCO3'],
    ['salt * (total_alkalinity / salt)', 'mg/L as CaCO3'],
    ['total_alkalinity * (salt / target_salt)', 'mg/L as CaCO3'],
    ['GEOMEAN(total_alkalinity; calcium_hardness)', 'mg/L as CaCO3'],
    ['VAR(salt; target_salt) / salt', 'mg/L as NaCl'],
    ['free_chlorine / cyanuric_acid', '1'],
    ['free_chlorine / cyanuric_acid * 100', '%'],
    ['salt / total_alkalinity > free_chlorine / cyanuric_acid', 'truth'],
    ['salt_shortfall * volume', 'g'],
    ['salt_mass / volume', 'g/L as NaCl'],
    ['salt * salt_mass / bag_mass', 'mg/L as NaCl'],
    ['calcium_hardness * 0.4004 * calcium_hardness / total_alkalinity', 'mg/L as Ca'],
    ['SIGN(lsi) * salt', 'mg/L as NaCl'],
    ['ROUND(total_alkalinity; 0 - 1)', 'mg/L as CaCO3'],
    ['CHOOSE(2; total_alkalinity; calcium_hardness)', 'mg/L as CaCO3'],
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
    ['volume + acid_volume', 'm³', 'together_size | m³ | L | volume + acid_volume'],
    ['turnover_time + pump_hours', 'h', 'together | h | h/day | turnover_time + pump_hours'],
    ['shell + 1', null, 'together | choice | 1 | shell + 1'],
    ['shell%', null, 'together | choice | 1 | shell%'],
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
    // a basis is not lost in a product, a root or a ratio, and a part of one is none
    ['SQRT(salt * salt)', 'mg/L as CaCO3', 'row_basis | mg/L as NaCl | mg/L as CaCO3 | SQRT(salt * salt)'],
    ['SQRT(SUMSQ(salt; salt))', 'mg/L as CaCO3', 'row_basis | mg/L as NaCl | mg/L as CaCO3 | SQRT(SUMSQ(salt; salt))'],
    [
      'SQRT(salt * total_alkalinity)',
      'mg/L as CaCO3',
      'row_basis | ((mg/L as NaCl)·(mg/L as CaCO3))^0.5 | mg/L as CaCO3 | SQRT(salt * total_alkalinity)',
    ],
    [
      'SQRT(salt * total_alkalinity)',
      'mg/L',
      'row_basis | ((mg/L as NaCl)·(mg/L as CaCO3))^0.5 | mg/L | SQRT(salt * total_alkalinity)',
    ],
    [
      '2 * SQRT(salt * total_alkalinity)',
      'mg/L as CaCO3',
      'row_basis | ((mg/L as NaCl)·(mg/L as CaCO3))^0.5 | mg/L as CaCO3 | 2 * SQRT(salt * total_alkalinity)',
    ],
    [
      'SQRT(salt * total_alkalinity) * volume',
      'g',
      'row_basis | (((mg/L as NaCl)·(mg/L as CaCO3))^0.5)·m³ | g | SQRT(salt * total_alkalinity) * volume',
    ],
    [
      'POWER(salt; 0.5) * POWER(total_alkalinity; 0.5)',
      'mg/L as CaCO3',
      'row_basis | ((mg/L as NaCl)^0.5)·((mg/L as CaCO3)^0.5) | mg/L as CaCO3 | POWER(salt; 0.5) * POWER(total_alkalinity; 0.5)',
    ],
    [
      'total_alkalinity * total_alkalinity / salt',
      'mg/L as CaCO3',
      'row_basis | ((mg/L as CaCO3)·(mg/L as CaCO3))/(mg/L as NaCl) | mg/L as CaCO3 | total_alkalinity * total_alkalinity / salt',
    ],
    [
      'total_alkalinity * (salt / free_chlorine)',
      'mg/L as CaCO3',
      'row_basis | (mg/L as CaCO3)·((mg/L as NaCl)/(mg/L as Cl2)) | mg/L as CaCO3 | total_alkalinity * (salt / free_chlorine)',
    ],
    [
      'free_chlorine * (salt / free_chlorine + hocl_share)',
      'mg/L as NaCl',
      'row_basis | (mg/L as Cl2)·((mg/L as NaCl)/(mg/L as Cl2)) | mg/L as NaCl | free_chlorine * (salt / free_chlorine + hocl_share)',
    ],
    [
      'PRODUCT(salt; total_alkalinity) / total_alkalinity',
      'mg/L as CaCO3',
      'row_basis | mg/L as NaCl | mg/L as CaCO3 | PRODUCT(salt; total_alkalinity) / total_alkalinity',
    ],
    [
      'salt * salt_mass / bag_mass',
      'mg/L as CaCO3',
      'row_basis | mg/L as NaCl | mg/L as CaCO3 | salt * salt_mass / bag_mass',
    ],
    ['SIGN(lsi) * salt', 'mg/L as CaCO3', 'row_basis | mg/L as NaCl | mg/L as CaCO3 | SIGN(lsi) * salt'],
    ['-1 * salt', 'mg/L as CaCO3', 'row_basis | mg/L as NaCl | mg/L as CaCO3 | -1 * salt'],
    ['GCD(salt; total_alkalinity)', null, 'together_basis | mg/L as NaCl | mg/L as CaCO3 | total_alkalinity'],
    [
      'CONCENTRATION_AFTER_DILUTION(SQRT(salt * total_alkalinity); 0; 0.3)',
      'mg/L as CaCO3',
      'row_basis | ((mg/L as NaCl)·(mg/L as CaCO3))^0.5 | mg/L as CaCO3 | CONCENTRATION_AFTER_DILUTION(SQRT(salt * total_alkalinity); 0; 0.3)',
    ],
    // exponentials, angles and exponents take numbers, and give them
    ['EXP(salt)', 'mg/L as CaCO3', 'number | mg/L as NaCl | 1 | salt'],
    ['EXP(-free_chlorine)', '1', 'number | mg/L as Cl2 | 1 | -free_chlorine'],
    ['SIN(salt)', 'mg/L as CaCO3', 'number | mg/L as NaCl | 1 | salt'],
    ['2 ^ salt', 'mg/L as CaCO3', 'number | mg/L as NaCl | 1 | salt'],
    ['POWER(2; salt)', 'mg/L as CaCO3', 'number | mg/L as NaCl | 1 | salt'],
    ['1.07 ^ temperature', '1', 'number | °C | 1 | temperature'],
    ['0.5 ^ shell_age', '1', 'number | day | 1 | shell_age'],
    ['FACT(0.5 * salt)', '1', 'number | mg/L as NaCl | 1 | 0.5 * salt'],
    ['EXP(0.01 * salt)', 'mg/L as CaCO3', 'row | 1 | mg/L as CaCO3 | EXP(0.01 * salt)'],
    ['LN(salt)', 'mg/L as CaCO3', 'row | LN(mg/L as NaCl) | mg/L as CaCO3 | LN(salt)'],
    ['LOG10(shell)', null, 'number | choice | 1 | shell'],
    [
      'total_alkalinity * LN(salt)',
      'mg/L as CaCO3',
      'multiplied | mg/L as CaCO3 | LN(mg/L as NaCl) | total_alkalinity * LN(salt)',
    ],
    ['10 ^ (ph - 7)', 'mg/L as CaCO3', 'row | 1 | mg/L as CaCO3 | 10 ^ (ph - 7)'],
    ['EXP(LN(salt))', null, 'number | LN(mg/L as NaCl) | 1 | LN(salt)'],
    ['total_alkalinity / LN(ph)', null, 'divided | mg/L as CaCO3 | LN(pH) | total_alkalinity / LN(ph)'],
    [
      'total_alkalinity * EXP(salt / free_chlorine)',
      'mg/L as CaCO3',
      'row_basis | (mg/L as CaCO3)·(EXP((mg/L as NaCl)/(mg/L as Cl2))) | mg/L as CaCO3 | total_alkalinity * EXP(salt / free_chlorine)',
    ],
    // where 1.7 is in mg/L, the row says that its units are as said
    ['23.4 + 1.7 * LN(free_chlorine)', 'mg/L', 'row | LN(mg/L as Cl2) | mg/L | 23.4 + 1.7 * LN(free_chlorine)'],
    // a power that is not one number
    ['salt ^ hocl_share', null, 'power | mg/L as NaCl | 1 | salt ^ hocl_share'],
    ['ph ^ hocl_share', null, 'power | pH | 1 | ph ^ hocl_share'],
    ['salt ^ IF(ph > 7; 1; 2)', null, 'power | mg/L as NaCl | 1 | salt ^ IF(ph > 7; 1; 2)'],
    ['salt * IF(ph > 7; 1; 2)', 'kg', 'row | mg/L as NaCl | kg | salt * IF(ph > 7; 1; 2)'],
    // digits and places in a list
    ['ROUND(total_alkalinity; salt)', 'mg/L as CaCO3', 'number | mg/L as NaCl | 1 | salt'],
    ['ROUND(total_alkalinity; 0.01 * salt)', 'mg/L as CaCO3', 'number | mg/L as NaCl | 1 | 0.01 * salt'],
    ['TRUNC(total_alkalinity; ph)', 'mg/L as CaCO3', 'number | pH | 1 | ph'],
    ['CHOOSE(salt; 1; 2)', '1', 'number | mg/L as NaCl | 1 | salt'],
    ['LOG(2; salt)', '1', 'number | mg/L as NaCl | 1 | salt'],
    // a pH is a logarithm, and the zero of °C is agreed
    ['total_alkalinity * ph', 'mg/L as CaCO3', 'multiplied | mg/L as CaCO3 | pH | total_alkalinity * ph'],
    ['total_alkalinity * (1 + ph)', 'mg/L as CaCO3', 'multiplied | mg/L as CaCO3 | pH | total_alkalinity * (1 + ph)'],
    [
      'total_alkalinity * MAX(ph; 7)',
      'mg/L as CaCO3',
      'multiplied | mg/L as CaCO3 | pH | total_alkalinity * MAX(ph; 7)',
    ],
    ['total_alkalinity * (ph / 7)', 'mg/L as CaCO3', 'multiplied | mg/L as CaCO3 | pH | total_alkalinity * (ph / 7)'],
    [
      'total_alkalinity * (1 + (lsi + ph))',
      'mg/L as CaCO3',
      'multiplied | mg/L as CaCO3 | pH | total_alkalinity * (1 + (lsi + ph))',
    ],
    ['total_alkalinity * ph ^ 2', 'mg/L as CaCO3', 'multiplied | mg/L as CaCO3 | (pH)^2 | total_alkalinity * ph ^ 2'],
    ['ph / shell_age', null, 'multiplied | pH | day | ph / shell_age'],
    ['total_alkalinity / ph', 'mg/L as CaCO3', 'divided | mg/L as CaCO3 | pH | total_alkalinity / ph'],
    ['total_alkalinity * (7.5 / ph)', 'mg/L as CaCO3', 'divided | 1 | pH | 7.5 / ph'],
    [
      'total_alkalinity * (temperature / baseline.temperature)',
      'mg/L as CaCO3',
      'divided | °C | °C | temperature / baseline.temperature',
    ],
    ['QUOTIENT(temperature; temperature_low)', '1', 'divided | °C | °C | QUOTIENT(temperature; temperature_low)'],
    ['salt * temperature ^ -1', null, 'divided | 1 | °C | temperature ^ -1'],
    [
      'salt * (temperature * volume) / (temperature_low * volume)',
      'mg/L as NaCl',
      'divided | (mg/L as NaCl)·(°C·m³) | °C·m³ | salt * (temperature * volume) / (temperature_low * volume)',
    ],
    // no factor makes the one into the other
    ['AVERAGE(ph; temperature)', null, 'together | pH | °C | temperature'],
    ['ph > salt', 'truth', 'together | pH | mg/L as NaCl | ph > salt'],
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

  test('in sentences, with a factor advised only where one helps', () => {
    const said = (formula: string) => {
      const parsed = parseFormula(formula)
      if (isProblem(parsed)) throw new Error(sentence(parsed))
      return unitFlags(parsed.tree, scope, '1', ['My row']).map(({ problem }) => sentence(problem))
    }
    const formulas = [
      ...['salt + salt_mass', 'AVERAGE(ph; temperature)', 'ph > salt', 'salt + total_alkalinity'],
      ...[
        'volume + acid_volume',
        'EXP(salt)',
        'salt ^ hocl_share',
        'salt * ph',
        'salt / ph',
        'SQRT(salt * total_alkalinity)',
      ],
    ]
    expect(formulas.map((formula) => said(formula)[0])).toMatchInlineSnapshot(`
      [
        "My row: at character 1 mg/L as NaCl and kg meet; they cannot be added, compared or stand for each other, and no factor makes the one into the other.",
        "My row: at character 13 pH and °C meet; they cannot be added, compared or stand for each other, and no factor makes the one into the other.",
        "My row: at character 1 pH and mg/L as NaCl meet; they cannot be added, compared or stand for each other, and no factor makes the one into the other.",
        "My row: at character 1 mg/L as NaCl and mg/L as CaCO3 meet; they count different substances. Convert one of them with a factor.",
        "My row: at character 1 m³ and L meet; they are units of one kind, but not of one size. Convert one of them with a factor.",
        "My row: EXP takes a number without a unit; what stands at character 5 is in mg/L as NaCl. Divide it by something in the same unit.",
        "My row: at character 1 mg/L as NaCl is raised to a power (a plain number) that is not one number written in the formula, so no unit of the result can be told.",
        "My row: at character 1 mg/L as NaCl and pH are multiplied or divided. A logarithmic reading, such as a pH, is no amount of anything: take a difference of two, or 10 to its power.",
        "My row: at character 1 mg/L as NaCl is divided by a reading in pH, a scale whose zero is only agreed. Divide by a difference; temperatures also in kelvin.",
        "My row: the row’s unit is a plain number, and its formula gives ((mg/L as NaCl)·(mg/L as CaCO3))^0.5.",
      ]
    `)
  })
})

/** Products, quotients and powers of three concentrations: the result is a basis only where all others have gone. */
test('a substance is in the result with the exponent that it was multiplied in with', () => {
  const exponents = fc.array(
    fc.tuple(fc.constantFrom('salt', 'total_alkalinity', 'bromine'), fc.integer({ min: -4, max: 4 })),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  fc.assert(
    fc.property(exponents, fc.constantFrom(1, 2, 3), (parts, root) => {
      const sum = (of: string) => parts.reduce((all, [name, power]) => all + (name === of ? power : 0), 0)
      const alkalinity = root - sum('salt') - sum('total_alkalinity') - sum('bromine')
      const factors = parts.map(([name, power]) => `POWER(${name}; ${power / root})`)
      const formula = [...factors, `POWER(total_alkalinity; ${alkalinity / root})`].join(' * ')
      const isAlkalinity = sum('salt') === 0 && sum('bromine') === 0
      expect(flagged(formula, 'mg/L as CaCO3').map((flag) => flag.slice(0, 9))).toEqual(
        isAlkalinity ? [] : ['row_basis'],
      )
    }),
    { seed: 20260603, numRuns: 500 },
  )
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

test('all general functions have rules, and no others', () => {
  expect([...GENERAL_UNITS.keys()].sort()).toEqual([...GENERAL_FUNCTIONS.keys()].sort())
})
