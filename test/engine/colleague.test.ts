import { beforeAll, describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { Live } from '../../src/engine/live'
import { isSolve } from '../../src/functions/define'
import { LOCKED } from '../../src/functions/registry'
import { catalogWith } from '../../src/worksheet/catalogFor'
import type { OwnRows } from '../../src/worksheet/ownRow'
import { prepareOwnWorksheets } from '../../src/worksheet/ownWorksheets'
import { EMPTY } from '../notebook/samples'

beforeAll(prepareOwnWorksheets)

const sheet = (id: string, rows: readonly object[], more: object = {}) => ({
  format: 'basinbook-worksheet',
  version: 1,
  id,
  edition: 1,
  takes: ['ph', 'volume'],
  groups: [{ id: 'rows', rows }],
  ...more,
})
const row = (name: string, formula = '1', more: object = {}) => ({ name, unit: '1', formula, ...more })

/** What a colleague's files try: each wants to stand where a locked function or a shipped quantity stands. */
const HOSTILE: Readonly<Record<string, unknown>> = {
  shadow: sheet('shadow', [row('lsi'), row('salt_mass', '0', { unit: 'kg' })]),
  saturation: sheet('saturation', [row('my_own')]),
  as_function: sheet('as_function', [row('salt_mass'), row('sum'), row('ryznar_index')]),
  solve_taken: sheet('solve_taken', [row('my_index', 'water.lsi')], {
    solves: [{ id: 'water', function: 'WATER', inputs: { ph: 'volume' } }],
  }),
  new_keys: sheet('new_keys', [row('my_two')], { functions: { LANGELIER_INDEX: '0' } }),
  proto: JSON.parse(
    '{"format":"basinbook-worksheet","version":1,"id":"proto","edition":1,"takes":[],"__proto__":{"functions":[]},"groups":[{"id":"rows","rows":[{"name":"constructor","unit":"1","formula":"1"}]}]}',
  ),
  redefine: sheet('redefine', [row('my_three', 'SALT_MASS = 3')]),
  call: sheet('call', [row('my_four', 'salt_mass(1; 2; 3; 4)')]),
}

const HOSTILE_ROWS: OwnRows = Object.fromEntries(
  ['lsi', 'sqrt', 'salt_mass', 'water', 'true', 'baseline'].map((name, i) => [
    `r${i}`,
    { id: `r${i}`, worksheet: 'salt', after: 'salt_mass', order: `a${i}`, row: { name, unit: '1', formula: '0' } },
  ]),
)

describe('a colleague’s file cannot change what a locked function returns', () => {
  const { catalog } = catalogWith(HOSTILE, HOSTILE_ROWS)

  test('every locked function is the registry’s own', () => {
    for (const f of LOCKED) expect(catalog.functions.get(f.name)).toBe(f)
    expect(catalog.functions.size).toBe(LOCKED.length)
  })

  test('and answers its checks as before', () => {
    for (const f of LOCKED) {
      for (const { args, expect: wanted, output, tolerance } of f.checks) {
        const found = isSolve(f)
          ? [f.solve(...(args as never[]))].flat()[f.outputs.findIndex(({ name }) => name === output)]
          : f.evaluate(...(args as never[]))
        if (typeof wanted === 'number') expect(Math.abs(Number(found) - wanted), f.name).toBeLessThanOrEqual(tolerance)
        else expect(found).toBe(wanted)
      }
    }
  })

  test('shipped quantities keep their formulas and their numbers', () => {
    const clean = catalogWith({}, {}).catalog
    for (const [name, quantity] of clean.quantities) {
      expect(catalog.quantities.get(name)?.formula?.text, name).toBe(quantity.formula?.text)
      expect(catalog.quantities.get(name)?.worksheet, name).toBe(quantity.worksheet)
    }
    const given = new Map<string, number>([
      ['ph', 7.6],
      ['temperature', 26],
      ['total_alkalinity', 90],
      ['calcium_hardness', 250],
      ['cyanuric_acid', 40],
      ['salt', 3200],
      ['measured_volume', 50],
      ['target_salt', 3400],
    ])
    const wanted = ['lsi', 'salt_mass', 'ryznar', 'carbonate_alkalinity']
    const answers = [clean, catalog].map((one) => {
      const batch = new Batch(one, wanted)
      const [outcomes] = batch.evaluate([given])
      batch.close()
      return outcomes
    })
    expect(answers[0]?.every((outcome) => 'value' in outcome)).toBe(true)
    expect(answers[1]).toEqual(answers[0])
  })

  test('nor in a notebook that holds such worksheets and rows', () => {
    const live = new Live({ ...EMPTY, worksheets: HOSTILE, rows: HOSTILE_ROWS })
    const plain = new Live(EMPTY)
    const all = (of: Live) => new Map(of.all().map(({ quantity, outcome }) => [quantity, outcome]))
    const [hostile, ours] = [all(live), all(plain)]
    for (const [name, outcome] of ours) expect(hostile.get(name), name).toEqual(outcome)
    live.close()
    plain.close()
  })
})
