import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { describe, expect, test } from 'vitest'
import { intake } from '../../src/headless/intakeCommand'

const folder = mkdtempSync(join(tmpdir(), 'intake-'))

async function run(args: readonly string[], input = '') {
  let out = ''
  const said: string[] = []
  const status = await intake(args, {
    input: Readable.from([Buffer.from(input)]),
    out: async (text) => {
      out += text
    },
    complain: (text) => said.push(text),
  })
  const last = said.at(-1) ?? ''
  return { status, out, said, report: last.startsWith('{') ? JSON.parse(last) : null }
}

function file(name: string, text: string): string {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}

describe('intake', () => {
  test('writes contract names in canonical units, dates in ISO, limits as they were, and an account', async () => {
    // the file of trade practice: invented, in the layout that stores export
    const text = `Sample,Collected,pH,Free Cl (ppm),Total Cl (ppm),TA (ppm as CaCO3),CH (ppm),CYA (ppm),Salt (ppm),Temp (F)
P-101,07/14/2026,7.6,3.2,3.4,90,310,55,3180,86
P-102,07/14/2026,7.9,<0.2,0.5,120,>800,ND,2710,77
`
    const { status, out, report } = await run(['-'], text)
    expect(status).toBe(0)
    expect(
      out,
    ).toBe(`sample,date,ph,temperature,total_alkalinity,calcium_hardness,free_chlorine,total_chlorine,cyanuric_acid,salt
P-101,2026-07-14,7.6,30,90,310,3.2,3.4,55,3180
P-102,2026-07-14,7.9,25,120,>800,<0.2,0.5,ND,2710
`)
    expect(report).toMatchObject({ rows: 2, samples: 2, refused: 0, skipped: 0, censored: 3 })
    expect(report.columns[3]).toMatchObject({ column: 'Free Cl (ppm)', quantity: 'free_chlorine', unit: 'ppm as Cl2' })
  })

  test('names each refused row as a spreadsheet counts it, writes the good ones, and ends with 1', async () => {
    const { status, out, said, report } = await run(
      ['-'],
      'sample,ph,temperature\nA,7.5,26\nB,abc,26\n\nC,15,26\nD,7.4,25\n',
    )
    expect(status).toBe(1)
    expect(out).toBe('sample,ph,temperature\nA,7.5,26\nD,7.4,25\n')
    expect(said.slice(0, 2)).toEqual([
      'row 3: ph: "abc" is not a number',
      expect.stringMatching(/^row 5: ph: "15" is impossible/),
    ])
    expect(report).toMatchObject({ rows: 5, samples: 2, refused: 2, skipped: 1 })
  })

  test('asks, names the flag, writes nothing, and ends with 2; the flag answers', async () => {
    const path = file('open.csv', 'Sample;Date;Salt (mg/L);Chlorine (ppm)\nA;03/07/2026;3,250;1\n')
    const open = await run([path])
    expect(open.status).toBe(2)
    expect(open.out).toBe('')
    expect(open.said.filter((line) => !line.startsWith('{')).map((line) => /--\w+/.exec(line)?.[0])).toEqual([
      '--decimal',
      '--dates',
      '--mapping',
    ])
    const mapping = file(
      'mapping.json',
      JSON.stringify({
        format: 'basinbook-mapping',
        version: 1,
        columns: { 'Chlorine (ppm)': { quantity: 'free_chlorine' } },
      }),
    )
    const answered = await run(['--decimal', '.', '--dates', 'dmy', '--mapping', mapping, path])
    expect(answered.said.length).toBe(1)
    expect(answered.status).toBe(0)
    expect(answered.out).toBe('sample,date,free_chlorine,salt\nA,2026-07-03,1,3250\n')
  })

  test.each([
    ['no file', []],
    ['a file that is not there', ['nowhere.csv']],
    ['an unknown flag', ['--colour', 'red', '-']],
    ['a wrong choice', ['--dates', 'ydm', '-']],
    ['an empty file', ['-']],
    ['a mapping that is not there', ['--mapping', 'nowhere.json', '-']],
  ])('ends with 2 for %s', async (_, args) => {
    const { status, out, said } = await run(args)
    expect(status).toBe(2)
    expect(out).toBe('')
    expect(said.length).toBeGreaterThan(0)
  })

  test.each([
    ['is not JSON', '{'],
    ['has an unknown key', '{"format":"basinbook-mapping","version":1,"colour":"red"}'],
    ['is of another format', '{"format":"other","version":1}'],
    ['names an unknown quantity', '{"format":"basinbook-mapping","version":1,"columns":{"pH":{"quantity":"nothing"}}}'],
    [
      'names a unit that the quantity cannot have',
      '{"format":"basinbook-mapping","version":1,"columns":{"pH":{"quantity":"ph","unit":"kg"}}}',
    ],
  ])('refuses a mapping that %s', async (_, text) => {
    const { status, out } = await run(['--mapping', file('bad.json', text), '-'], 'Sample,pH\nA,7.5\n')
    expect(status).toBe(2)
    expect(out).toBe('')
  })

  test('reads the laboratory file of the examples, as its README tells it', async () => {
    const { status, out, report } = await run([join(import.meta.dirname, '../../examples/lab-forty.csv')])
    expect(status).toBe(1)
    // forty samples and an empty row; seven that README.md calls impossible or no numbers
    expect(report).toMatchObject({ rows: 41, samples: 33, refused: 7, skipped: 1 })
    expect(out.split('\n')[4]).toMatch(/^TB-004,2026-06-01,7.79,24,/)
  })

  test('guards names that a spreadsheet would run', async () => {
    const { out } = await run(['-'], 'Sample,pH\n=1+1,7.5\n"@a, b",7.6\n')
    expect(out).toBe('sample,ph\n\'=1+1,7.5\n"\'@a, b",7.6\n')
  })

  test('a file without names gives its row numbers', async () => {
    const { out } = await run(['-'], 'pH,Temp (°C)\n7.5,26\n')
    expect(out).toBe('sample,ph,temperature\n2,7.5,26\n')
  })

  test('results far into a long file have columns too', async () => {
    const many = Array.from({ length: 12_000 }, (_, i) => `S${i},pH,7.5,\n`).join('')
    const { status, out, report } = await run(
      ['-'],
      `sample,analyte,result,unit\n${many}Z,Copper,0.1,mg/L\nZ,pH,7.4,\n`,
    )
    expect(status).toBe(0)
    const [header = '', ...lines] = out.trim().split('\n')
    const last = lines.at(-1)?.split(',') ?? []
    expect(last[0]).toBe('Z')
    expect(last[header.split(',').indexOf('copper')]).toBe('0.1')
    expect(report.rows).toBe(12_002)
    expect(report.rows).toBe(report.samples + report.refused + report.skipped)
  })
})
