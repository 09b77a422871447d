import { describe, expect, test } from 'vitest'
import { newNotebook } from '../../src/notebook/create'
import { callAt } from '../../src/ui/formula/callAt'
import { candidates } from '../../src/ui/formula/candidates'
import { complete } from '../../src/ui/formula/complete'
import { faultsIn } from '../../src/ui/formula/faultsIn'
import { sentence } from '../../src/words/say'
import { GENERAL_FUNCTIONS } from '../../src/worksheet/generalFunctions'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { edited, scenario } from '../notebook/samples'

const catalog = shippedCatalog()
const notebook = edited(
  newNotebook('Invented pool', 'As tested', 'metric'),
  scenario('second', 'a9', 'O’Hara’s, drained'),
)
const all = candidates(notebook, catalog)

/** The names offered at the bar `|`, and what of the text they would replace. */
function offered(marked: string, asked = false): { names: string[]; replaced: string } | null {
  const at = marked.indexOf('|')
  const text = marked.replace('|', '')
  const found = complete(text, at, all, asked)
  return found && { names: found.options.map(({ name }) => name), replaced: text.slice(found.from, at) }
}

describe('completion', () => {
  test.each([
    ['salt|', 'salt', 'salt'],
    ['2 * alkal|', 'total_alkalinity', 'alkal'],
    ['SQ|', 'SQRT', 'SQ'],
    ['salt_m|', 'salt_mass', 'salt_m'],
    ['acidity + hardn|', 'calcium_hardness', 'hardn'],
    ['MAX(0; targ|)', 'target_free_chlorine', 'targ'],
    ['base|', 'baseline.', 'base'],
    ['equilibria.ccp|', 'ccpp', 'ccp'],
  ])('%s offers %s', (marked, name, replaced) => {
    const found = offered(marked)
    expect(found?.names).toContain(name)
    expect(found?.replaced).toBe(replaced)
  })

  test('what is written out stands first', () => {
    expect(offered('salt|')?.names[0]).toBe('salt')
    expect(offered('ph|')?.names[0]).toBe('ph')
  })

  test('a quantity is found by what it is called', () => {
    expect(offered('langel|')?.names).toContain('lsi')
  })

  test('after another scenario only quantities follow', () => {
    const names = offered('baseline.sa|')?.names ?? []
    expect(names).toContain('salt')
    expect(names.some((name) => name === name.toUpperCase() || name.includes('.'))).toBe(false)
    expect(offered("'O’Hara’s, drained'.p|")?.names).toContain('ph')
  })

  test('a quotation mark offers the other scenarios', () => {
    expect(offered("ph - '|")).toEqual({ names: ["'O’Hara’s, drained'."], replaced: "'" })
  })

  test('numbers and empty places offer nothing, unless it is asked for', () => {
    expect(offered('12|')).toBeNull()
    expect(offered('ph + |')).toBeNull()
    expect(offered('ph + |', true)?.names.length).toBeGreaterThan(20)
  })

  test('every general function says what it takes and gives', () => {
    const known = new Map(all.map((one) => [one.name, one]))
    for (const name of GENERAL_FUNCTIONS.keys()) expect(known.get(name)?.says, name).not.toBe('')
  })
})

describe('the function that is being called', () => {
  test.each([
    ['SALT_MASS(volume; sal|', 'SALT_MASS', 1],
    ['MAX(0; SQRT(vol|', 'SQRT', 0],
    ['MAX(0; SQRT(volume); |', 'MAX', 2],
    ['IF(shell = "a;b("; |', 'IF', 1],
    ['2 * (ph + ROUND(ph; 1) + |', null, 0],
    ["ROUND('a;(b'.ph; |", 'ROUND', 1],
  ])('%s', (marked, name, current) => {
    const call = callAt(marked.replace('|', ''), marked.indexOf('|'))
    expect(call?.name ?? null).toBe(name)
    if (call && call.parameters.length > 2) expect(call.current).toBe(current)
  })

  test('says its parameters with their units and what it gives', () => {
    expect(callAt('SALT_MASS(', 10)).toMatchObject({ parameters: expect.arrayContaining(['volume m³']), gives: 'kg' })
  })
})

describe('what is wrong stands at its place', () => {
  const wrong = (text: string, unit: string | null = null) =>
    faultsIn(text, { notebook, catalog, unit }).map(({ problem, from, to, ofUnits }) => [
      text.slice(from, to),
      ofUnits ? 'units' : problem.code,
    ])
  test.each([
    ['ph + sallt', null, [['sallt', 'formula_unknown_name']]],
    ['sqroot(ph)', null, [['sqroot', 'formula_unknown_function']]],
    ['ph + , 2', null, [[',', 'formula_comma']]],
    ["'Gone'.ph + 1", null, [["'Gone'.ph", 'formula_no_such_scenario']]],
    ["'O’Hara’s, drained'.ph + 0.1", 'pH', []],
    ['(ph + 1', null, [['(', 'formula_not_closed']]],
    ['salt_mass + volume', 'kg', [['salt_mass + volume', 'units']]],
    ['2 * volume', 'kg', [['2 * volume', 'units']]],
    ['LSI', null, [['LSI', 'formula_name_in_capitals']]],
    ['ROUND(ph; 1; 2)', null, [['ROUND', 'formula_argument_count']]],
  ])('%s', (text, unit, expected) => {
    expect(wrong(text, unit)).toEqual(expected)
  })

  test('in words', () => {
    const [fault] = faultsIn('ph + sallt', { notebook, catalog, unit: null })
    expect(fault && sentence(fault.problem)).toBe('“sallt” at character 6 is no quantity.')
  })
})
