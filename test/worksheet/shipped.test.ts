import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { isSolve } from '../../src/functions/define'
import { hasWords, sentence } from '../../src/words/say'
import { definitionSchema, type Row, targetSetSchema } from '../../src/worksheet/definition'
import { parseDefinitionText } from '../../src/worksheet/parseDefinitionText'
import { isDefinition } from '../../src/worksheet/readDefinition'
import { SHIPPED } from '../../src/worksheet/shipped'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { SHIPPED_TARGETS } from '../../src/worksheet/shippedTargets'
import { ADDED, CHOICES, CONTRACT, DEFAULTS, STAND_INS } from './contract'

function listed(text: string): [string, string][] {
  return text.split(',').map((part) => {
    const [name = '', ...unit] = part.trim().split(' ')
    return [name, unit.join(' ')]
  })
}

const catalog = shippedCatalog()
const rows = [...catalog.quantities.values()].map((q) => q.row)

describe('every shipped definition', () => {
  test.each(SHIPPED.map(({ file }) => file))('%s is read', (file) => {
    const read = parseDefinitionText(readFileSync(`worksheets/${file}`, 'utf8'), file)
    expect(isDefinition(read) ? [] : read.map(sentence)).toEqual([])
    const { targets: _, ...definition } = SHIPPED.find((source) => source.file === file)?.definition ?? {}
    expect(definition).toEqual(read)
  })

  test('stand in the order of the contract', () => {
    expect(SHIPPED.map(({ definition }) => definition.id)).toEqual(Object.keys(CONTRACT))
  })

  test.each(readdirSync('worksheets/targets'))('the set of ranges %s is read, and offered', (file) => {
    const set = targetSetSchema.parse(JSON.parse(readFileSync(`worksheets/targets/${file}`, 'utf8')))
    expect(`${set.id}.json`).toBe(file)
    expect(SHIPPED_TARGETS).toContainEqual(set)
    expect(CHOICES.target_set).toContain(set.id)
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
    const added = ADDED[worksheet] === undefined ? [] : listed(ADDED[worksheet])
    expect(Object.fromEntries(units)).toEqual(Object.fromEntries([...listed(inputs), ...added]))
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
        if (quantity === undefined || parameters[i]?.startsWith('step_')) return
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
    ...(row.cautions ?? []).map((caution) => `caution.${caution}`),
    ...refusalsIn(row).map((refused) => `problem.${refused.replace(':', '.')}`),
    ...('when_missing' in row && row.when_missing ? [`notice.assumed.${row.when_missing.of}`] : []),
  ]

  test('every row has its own', () => {
    expect(rows.flatMap(keys).filter((key) => !hasWords(key))).toEqual([])
  })

  test('every worksheet and group has its own', () => {
    const keysOfSheets = catalog.worksheets.flatMap(({ id, groups }) => [
      `worksheet.${id}.label`,
      `worksheet.${id}.help`,
      `worksheet.${id}.example`,
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

function refusalsIn(row: Row): string[] {
  const ofWorksheet =
    catalog.worksheets.find(({ id }) => id === catalog.quantities.get(row.name)?.worksheet)?.refuses ?? []
  return [...ofWorksheet, ...('refuses' in row ? (row.refuses ?? []) : [])].map(({ problem }) => problem)
}

function sides(row: Row): string[] {
  const bands = row.target ?? []
  if (bands.length === 0) return []
  return [
    'within',
    ...(bands.some((band) => band.low !== undefined) ? ['below'] : []),
    ...(bands.some((band) => band.high !== undefined) ? ['above'] : []),
  ]
}
