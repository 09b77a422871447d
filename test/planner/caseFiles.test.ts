import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { type CaseDefinition, type CaseSource, caseSchema, type Stage } from '../../src/planner/cases/caseDefinition'
import { isCase, parseCaseText, readCase } from '../../src/planner/cases/readCase'
import { SHIPPED_CASES } from '../../src/planner/cases/shippedCases'
import { changeRules } from '../../src/planner/changeRules'
import { hasWords, sentence } from '../../src/words/say'
import { POOL } from './bench'
import { caseBench } from './caseBench'

const MINE: CaseDefinition = {
  format: 'basinbook-case',
  version: 1,
  id: 'our_county',
  edition: 1,
  label: 'After a storm in our county',
  sources: [{ mark: 'published', says: 'The county’s sheet' }],
  when: 'water_look = "cloudy"',
  stops: ['salt'],
  gates: [{ id: 'power', says: 'No power, no dose.', when: 'circulation = "no_flow"', stops: ['all'] }],
  steps: [{ id: 'call', says: 'Call the county.', wait: 2, tells: ['lsi'] }, { plan: true }],
  done: [{ id: 'clear', says: 'It is clear.', when: 'turbidity < 1' }],
}
const own = (definition: CaseDefinition): CaseSource => ({ definition, file: 'mine.json', shipped: false })
const refusals = (change: object) => {
  const read = readCase({ ...MINE, ...change }, 'mine.json')
  const faults = isCase(read) ? caseBench([own(read)]).known.refused : read
  return faults.map(sentence)
}

describe('every shipped case', () => {
  test.each(readdirSync('worksheets/cases').filter((file) => file !== 'case.schema.json'))('%s is read', (file) => {
    const json: unknown = JSON.parse(readFileSync(`worksheets/cases/${file}`, 'utf8'))
    const read = readCase(json, file, true)
    expect(isCase(read) ? [] : read.map(sentence)).toEqual([])
    expect(SHIPPED_CASES.map((source) => source.file)).toContain(file)
    expect(SHIPPED_CASES.find((source) => source.file === file)?.definition).toEqual(json)
  })

  test('fits the worksheets, and names a source and a mark', () => {
    const { known } = caseBench()
    expect(known.refused.map(sentence)).toEqual([])
    expect(known.cases).toHaveLength(SHIPPED_CASES.length)
  })

  test('has its words', () => {
    const keys = SHIPPED_CASES.flatMap(({ definition: { id, gates = [], steps, done = [], forbids = [] } }) =>
      [
        ...['label', 'help', 'because'],
        ...[...gates, ...steps, ...done, ...forbids].flatMap((entry) => ('id' in entry ? [entry.id] : [])),
      ].map((entry) => `case.${id}.${entry}`),
    )
    expect(keys.filter((key) => !hasWords(key))).toEqual([])
    expect(new Set(keys).size).toBe(keys.length)
    const cautions = SHIPPED_CASES.flatMap(({ definition }) =>
      definition.steps.flatMap((step) => ('id' in step ? (step.cautions ?? []) : [])),
    )
    expect(cautions.filter((caution) => !hasWords(`caution.${caution}`))).toEqual([])
  })

  test('holds no sentence itself: they can be translated', () => {
    expect(
      SHIPPED_CASES.filter(({ definition }) =>
        /"(says|label|help|because)":/.test(JSON.stringify({ ...definition, sources: [] })),
      ),
    ).toEqual([])
  })

  test('the schema for editors is the one that is checked by (WRITE_SCHEMA=1 writes it anew)', () => {
    const schema = z.toJSONSchema(caseSchema, { io: 'input' })
    const file = 'worksheets/cases/case.schema.json'
    if (process.env.WRITE_SCHEMA) writeFileSync(file, JSON.stringify(schema, null, 2))
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(schema)
  })
})

describe('a case from a file', () => {
  const read = parseCaseText(JSON.stringify(MINE), 'mine.json')
  if (!isCase(read)) throw new Error(read.map(sentence).join('\n'))
  const bench = caseBench([own(read)])

  test('holds beside the shipped ones, with its own sentences', () => {
    const made = bench.plan({ ...POOL, salt: 2000, water_look: 'cloudy', circulation: 'running' })
    expect(made.cases.map(({ id }) => id)).toEqual(['our_county'])
    const [call] = made.steps
    expect(call).toMatchObject({ kind: 'wait', wait: 2, case: 'our_county', says: { key: 'plan.case.text' } })
    expect(call?.shown?.[0]).toMatchObject({ quantity: 'lsi' })
    expect(made.steps.some(({ product }) => product === 'salt')).toBe(false)
  })

  test('that stops something needs no choosing; without its sign it does nothing', () => {
    const made = bench.plan({ ...POOL, salt: 2000, water_look: 'clear', circulation: 'running' })
    expect(made.cases).toEqual([])
    expect(made.steps.some(({ product }) => product === 'salt')).toBe(true)
  })

  test('a gate that cannot be told stops what it stops, and asks', () => {
    const made = bench.plan({ ...POOL, salt: 2000, water_look: 'cloudy' })
    expect(made.steps.map(({ kind }) => kind)).toEqual(['gate', 'wait'])
    expect(made.steps[0]?.how[0]).toMatchObject({ key: 'plan.case.asks', facts: { readings: ['circulation'] } })
    expect(made.complete).toBe(false)
  })

  test.each([
    [
      'a formula of unknown names',
      { when: 'clarity > 3' },
      'mine.json, when: “clarity” at character 1 is no quantity.',
    ],
    [
      'a gate that does not parse',
      { gates: [{ id: 'a', says: 'b', when: 'ph >' }] },
      'mine.json, gates[0].when: the formula ends after “>”, where a number, a quantity or a function has to follow.',
    ],
    [
      'a quantity to tell that is none',
      { steps: [{ id: 'a', says: 'b', tells: ['luck'] }] },
      'mine.json, steps[0].tells[0]: there is no quantity “luck”.',
    ],
    [
      'a reading that it would set',
      { sets: { ph: '7' } },
      'mine.json, sets.ph: a case may set targets and limits only, and “ph” is none.',
    ],
    [
      'a step without a sentence',
      { steps: [{ id: 'a' }] },
      'mine.json, steps[0].says: a case from a file brings its own sentences, and one is missing here.',
    ],
    [
      'the id of another case',
      { id: 'spa' },
      'mine.json, id: a case “spa” is there already, in spa.json; give this one another id.',
    ],
    [
      'a key that is not known',
      { amount: 4 },
      'mine.json, amount: this is not known here; check the spelling, or take it out.',
    ],
  ])('is refused with %s, by place and reason', (_, change, told) => {
    const said = refusals(change)
    expect(said).toHaveLength(1)
    if (!told.includes('not known here')) expect(said[0]).toBe(told)
    else expect(said[0]).toMatch(/^mine\.json, amount/)
  })

  test.each(['', '{', '[]', 'null', '{"format":"basinbook-case"}', `{"a":${'['.repeat(99)}${']'.repeat(99)}}`])(
    'that is no case is refused: %s',
    (text) => expect(isCase(parseCaseText(text, 'mine.json'))).toBe(false),
  )
})

test('a case that stops all leaves no step of the plan', () => {
  const all: Stage = 'all'
  const stopping = SHIPPED_CASES.filter(({ definition }) => definition.stops?.includes(all)).map(
    (one) => one.definition.id,
  )
  expect(stopping.toSorted()).toEqual(['faecal_accident', 'opening', 'rain_overflow'])
})

test('a value of the rules that was changed is the one that a case reads', () => {
  const { rules } = changeRules({ 'stabilizer_ratio.stabilizer_most': 60 })
  const values = { ...POOL, cyanuric_acid: 80 }
  const whether = (bench: ReturnType<typeof caseBench>) =>
    bench
      .stand(values)
      .find(({ source }) => source.definition.id === 'stabilizer_high')
      ?.conditions.get('when')?.truth
  expect(whether(caseBench())).toBe('no')
  expect(whether(caseBench([], rules))).toBe('yes')
})
