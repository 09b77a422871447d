import fc from 'fast-check'
import { expect, test } from 'vitest'
import { STATE, transferable, UNSAID } from '../../src/intake/columnar'
import { createIntake, type IntakeMessage, importFile, understand } from '../../src/intake/job'
import { createTexts, type Texts, textAt } from '../../src/intake/texts'
import { known } from './known'

const text = `Sample,pH,Free Cl (ppm),CYA (ppm),Weather
A,7.5,<0.2,ND,
B,7.6,1.5,40,sunny
C,abc,1,40,
D,7.9,>10,,rain
`
const lines = (count: number) =>
  `Sample,pH,TA (ppm)\n${Array.from({ length: count }, (_, i) => `S${i},7.5,${50 + (i % 100)}\n`).join('')}`

async function imported(file: Blob) {
  const result = await importFile(file, await understand(file, known, {}), {
    progress: () => {},
    cancelled: () => false,
  })
  if (result === null || 'code' in result) throw new Error(JSON.stringify(result))
  return result
}

test('a file becomes columns, each reading with its state', async () => {
  const { columns, account, refusedCsv, refused } = await imported(new Blob([text]))
  expect(columns.count).toBe(3)
  expect([...columns.rows]).toEqual([2, 3, 5])
  const list = (texts: Texts) => Array.from(columns.rows, (_, i) => textAt(texts, i))
  expect(list(columns.names)).toEqual(['A', 'B', 'D'])
  const column = (name: string) => columns.quantities.find(({ quantity }) => quantity === name)
  expect([...(column('ph')?.values ?? [])]).toEqual([7.5, 7.6, 7.9])
  expect([...(column('free_chlorine')?.values ?? [])]).toEqual([0.2, 1.5, 10])
  expect([...(column('free_chlorine')?.states ?? [])]).toEqual([STATE.below, STATE.value, STATE.above])
  expect([...(column('cyanuric_acid')?.states ?? [])]).toEqual([STATE.belowUnstated, STATE.value, STATE.notTaken])
  expect([...(column('cyanuric_acid')?.values ?? [])]).toEqual([Number.NaN, 40, Number.NaN])
  expect(columns.notes.map(({ heading, texts }) => [heading, list(texts)])).toEqual([
    ['Weather', ['', 'sunny', 'rain']],
  ])
  expect([...(column('free_chlorine')?.decimals ?? [])]).toEqual([UNSAID, 1, UNSAID])
  expect([...(column('cyanuric_acid')?.decimals ?? [])]).toEqual([UNSAID, 0, UNSAID])
  expect(account).toMatchObject({ rows: 4, samples: 3, refused: 1, skipped: 0 })
  expect(refused.map(({ row }) => row)).toEqual([4])
  expect(refusedCsv).toBe(
    'row,column,found,why,cells\n4,pH,abc,"row 4: pH: ""abc"" is not a number",C | abc | 1 | 40 | \n',
  )
})

test('columns grow past their first room', async () => {
  const { columns } = await imported(new Blob([lines(5_000)]))
  expect(columns.count).toBe(5_000)
  expect(columns.quantities.map(({ quantity }) => quantity)).toEqual(['ph', 'total_alkalinity'])
  expect(columns.quantities[1]?.values[4_999]).toBe(149)
  expect(transferable(columns).length).toBe(11)
})

test('the file is known by its SHA-256', async () => {
  // FIPS 180-2, appendix B.1: the digest of "abc"
  const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'
  const file = Object.assign(new Blob(['Sample,pH\nA,7.5\n']), {
    arrayBuffer: async () => new TextEncoder().encode('abc').buffer,
  })
  expect((await imported(file)).sha256).toBe(abc)
})

test('a cancel between parts leaves nothing; progress comes in between', async () => {
  const file = new Blob([lines(100_000)])
  const understanding = await understand(file, known, {})
  const heard: IntakeMessage[] = []
  const answer = createIntake((message) => {
    heard.push(message)
    if (message.kind === 'progress') void answer({ kind: 'cancel', id: 7 })
  }, transferable)
  await answer({ kind: 'import', id: 7, file, understanding })
  expect(heard.map(({ kind }) => kind)).toEqual(['progress', 'cancelled'])
})

test('open questions and unreadable files are said, not thrown', async () => {
  const open = new Blob(['Sample,pH,Chlorine (ppm)\nA,7.5,1\n'])
  const heard: IntakeMessage[] = []
  const answer = createIntake((message) => heard.push(message), transferable)
  await answer({ kind: 'import', id: 1, file: open, understanding: await understand(open, known, {}) })
  const gone = Object.assign(new Blob(['x']), {
    slice: () => {
      throw new Error('the disk is gone')
    },
  })
  await answer({ kind: 'understand', id: 2, file: gone, known, answers: {} })
  expect(heard).toMatchObject([
    { kind: 'failed', id: 1, problem: { code: 'lab_questions_open' } },
    { kind: 'failed', id: 2, problem: { code: 'lab_file_gone' } },
  ])
})

test('packed texts come out as they went in, whatever they are', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'grapheme' }), { maxLength: 3_000 }), (list) => {
      const builder = createTexts()
      for (const text of list) builder.push(text)
      const packed = builder.finish()
      expect(list.map((_, i) => textAt(packed, i))).toEqual(list)
    }),
    { seed: 3, numRuns: 50 },
  )
})
