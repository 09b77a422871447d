import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { beforeAll, describe, expect, test } from 'vitest'

const folder = mkdtempSync(join(tmpdir(), 'basinbook-'))
const command = join(folder, 'evaluate.js')

beforeAll(async () => {
  await build({ mode: 'headless', logLevel: 'warn', build: { outDir: folder, emptyOutDir: false } })
}, 120_000)

function evaluate(input: string | Uint8Array, ...args: string[]) {
  const run = spawnSync(process.execPath, [command, ...args, '-'], { input, encoding: 'utf8' })
  const [header = '', ...lines] = run.stdout.split('\n').filter((line) => line !== '')
  const names = header.split(',')
  const rows = lines.map((line) => Object.fromEntries(line.split(',').map((cell, i) => [names[i] ?? '', cell])))
  return { status: run.status, out: run.stdout, complaints: run.stderr, names, rows }
}

const HEADER = 'sample,ph,temperature,total_alkalinity,calcium_hardness,cyanuric_acid,salt'
const ROW = 'P-1,7.5,25,100,300,0,1000'

describe('evaluate', () => {
  test('gives each computed quantity of the worksheet once, notices last', () => {
    const { status, names, rows } = evaluate(`${HEADER}\n${ROW}\n`, '--worksheet', 'saturation')
    expect(status).toBe(0)
    expect(names.slice(0, 3)).toEqual(['sample', 'cyanuric_acid_used', 'carbonate_alkalinity'])
    expect(names.at(-1)).toBe('notices')
    expect(new Set(names).size).toBe(names.length)
    expect(Number(rows[0]?.lsi)).toBeGreaterThan(-0.5)
  })

  test('passes over columns of words that the worksheets work out, as our own table of all worksheets has them, and says so', () => {
    const { status, rows, complaints } = evaluate(
      `${HEADER},cell_may_run,dilution_governs\n${ROW},true,salt\n`,
      '--only',
      'lsi',
    )
    expect(status).toBe(0)
    expect(rows[0]?.lsi).toBe(evaluate(`${HEADER}\n${ROW}\n`, '--only', 'lsi').rows[0]?.lsi)
    expect(complaints).toContain('columns not used: cell_may_run, dilution_governs')
  })

  test('takes units in the header and on the command line', () => {
    const fahrenheit = evaluate(
      `sample,ph,temperature [°F],total_alkalinity,calcium_hardness,cyanuric_acid,salt\nP-1,7.5,77,100,300,0,1000\n`,
      '--only',
      'lsi',
    )
    const celsius = evaluate(`${HEADER}\n${ROW}\n`, '--only', 'lsi')
    expect(Number(fahrenheit.rows[0]?.lsi)).toBeCloseTo(Number(celsius.rows[0]?.lsi), 12)
    const volume = evaluate(`${HEADER}\n${ROW}\n`, '--only', 'volume,volume_low', '--set', 'volume=15000 gal')
    // 231 cubic inches of 0.0254 m
    expect(Number(volume.rows[0]?.volume)).toBeCloseTo(15_000 * 231 * 0.0254 ** 3, 9)
    expect(volume.rows[0]?.volume_low).toBe(volume.rows[0]?.volume)
    expect(volume.rows[0]?.notices).toContain('given:volume')
  })

  test('reads semicolons with decimal commas, a byte order mark and CRLF', () => {
    const plain = evaluate(`${HEADER}\n${ROW}\n`, '--only', 'lsi,calcite_si')
    const other = evaluate(
      `\uFEFF${HEADER.replaceAll(',', ';')}\r\nP-1;7,5;25,0;100;300;0;1000\r\n`,
      '--only',
      'lsi,calcite_si',
    )
    expect(other.out).toBe(plain.out)
  })

  test('leaves the dependents of a missing reading empty, and names it', () => {
    const { status, rows } = evaluate(`${HEADER}\nP-1,7.5,25,100,,0,1000\n`, '--worksheet', 'saturation')
    expect(status).toBe(0)
    expect(rows[0]?.lsi).toBe('')
    expect(rows[0]?.carbonate_alkalinity).not.toBe('0')
    expect(rows[0]?.notices?.split(' ')).toContain('missing:calcium_hardness')
  })

  test('says which reading a function does not take, and leaves its results empty', () => {
    const { status, rows } = evaluate(`${HEADER}\nP-1,13,25,100,300,0,1000\n`, '--only', 'lsi')
    expect([status, rows[0]?.lsi]).toEqual([0, ''])
    expect(rows[0]?.notices?.split(' ')).toEqual(expect.arrayContaining(['out_of_range:ph', 'unlikely:ph']))
  })

  test('refuses a row that cannot be read, with its number, and writes the others', () => {
    const { status, rows, complaints } = evaluate(
      `${HEADER}\n${ROW}\nP-2,abc,25,100,300,0,1000\nP-3,15,25,100,300,0,1000\nP-4,<0.2,25,100,300,0,1000\n`,
      '--only',
      'lsi',
    )
    expect(status).toBe(1)
    expect(rows.map((row) => row.sample)).toEqual(['P-1'])
    expect(complaints).toContain('row 3: ph: "abc" is not a number')
    expect(complaints).toContain('row 4: ph: 15 is outside')
    expect(complaints).toContain('row 5: ph: "<0.2" is a limit')
  })

  test('lets a limit stand in only where it was told to', () => {
    const header = 'sample,total_chlorine,free_chlorine'
    const half = evaluate(`${header}\nP-1,1,<0.2\n`, '--only', 'combined_chlorine', '--censored', 'half')
    expect(Number(half.rows[0]?.combined_chlorine)).toBeCloseTo(0.9, 12)
    expect(half.rows[0]?.notices).toContain('censored:free_chlorine')
    expect(evaluate(`${header}\n>5,1,>5\n`, '--only', 'combined_chlorine', '--censored', 'half').status).toBe(1)
  })

  test('writes nothing and exits with 2 for usage and ambiguity', () => {
    const input = `${HEADER}\n${ROW}\n`
    for (const args of [
      [],
      ['--worksheet', 'nothing'],
      ['--only', 'nothing'],
      ['--only', 'lsi', '--set', 'nothing=1'],
      ['--only', 'lsi', '--set', 'ph=7.2'],
      ['--only', 'lsi', '--censored', 'guess'],
    ]) {
      const { status, out, complaints } = evaluate(input, ...args)
      expect([args, status, out]).toEqual([args, 2, ''])
      expect(complaints).not.toBe('')
    }
    const ambiguous = evaluate('sample;salt\nP-1;3,200\n', '--only', 'salt_used')
    expect([ambiguous.status, ambiguous.out]).toEqual([2, ''])
    expect(ambiguous.complaints).toContain('--decimal')
  })

  test('names unknown columns once and goes on', () => {
    const { status, complaints } = evaluate(`${HEADER},colour\n${ROW},green\n${ROW},green\n`, '--only', 'lsi')
    expect(status).toBe(0)
    expect(complaints.match(/colour/g)).toHaveLength(1)
  })

  test('takes a computed quantity that is given in place of its formula', () => {
    const { rows } = evaluate(`${HEADER},salt_used\n${ROW},2000\n`, '--only', 'salt_used')
    expect(rows[0]?.salt_used).toBe('2000')
    expect(rows[0]?.notices).toContain('given:salt_used')
  })

  test('reads a file by its path, and says when there is none', () => {
    const path = join(folder, 'samples.csv')
    writeFileSync(path, `${HEADER}\n${ROW}\n`)
    const run = (file: string) => spawnSync(process.execPath, [command, '--only', 'lsi', file], { encoding: 'utf8' })
    expect(run(path).stdout).toContain('P-1,')
    expect(run(join(folder, 'none.csv')).status).toBe(2)
  })
})
