import { spawnSync } from 'node:child_process'
import { mkdtempSync, openSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { beforeAll, describe, expect, test } from 'vitest'
import { TELL_PEAK } from './tellPeak'

const folder = mkdtempSync(join(tmpdir(), 'basinbook-'))

beforeAll(async () => {
  await build({ mode: 'headless', logLevel: 'warn', build: { outDir: folder, emptyOutDir: false } })
}, 120_000)

/** A file of so many invented samples in twelve columns, written piece by piece. */
function samplesFile(count: number): string {
  const path = join(folder, `${count}.csv`)
  const file = openSync(path, 'w')
  const names = 'ph,temperature,free_chlorine,total_chlorine,total_alkalinity,calcium_hardness,cyanuric_acid,salt'
  let text = `sample,date,${names},borate,sulfate\n`
  for (let i = 0; i < count; i++) {
    const share = (step: number) => (i * step) % 1
    const figures = [
      7 + share(0.618),
      12 + 20 * share(0.414),
      0.5 + 4 * share(0.732),
      0.7 + 4 * share(0.732),
      60 + 100 * share(0.236),
      100 + 400 * share(0.303),
      90 * share(0.567),
      300 + 5000 * share(0.871),
      10 * share(0.111),
      100 * share(0.222),
    ]
    text += `S-${i},2026-06-${String(1 + (i % 28)).padStart(2, '0')},${figures.map((x) => x.toFixed(2)).join(',')}\n`
    if (i % 1_000 < 999 && i < count - 1) continue
    writeSync(file, text)
    text = ''
  }
  return path
}

/** The peak of a run in bytes; its answers go nowhere. */
function peak(command: string, args: readonly string[], path: string): number {
  const run = spawnSync(process.execPath, ['--import', TELL_PEAK, join(folder, `${command}.js`), ...args, path], {
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  })
  expect(run.status).toBe(0)
  return Number(/peak (\d+)$/.exec(run.stderr)?.[1])
}

const long = process.env.LONG !== undefined
const COMMANDS = [
  ['evaluate', long ? ['--worksheet', 'saturation', '--worksheet', 'stabilizer'] : ['--only', 'lsi,hocl,table_index']],
  ['intake', []],
] as const

describe('peak memory does not grow with the file', () => {
  const few = samplesFile(20_000)
  const many = samplesFile(long ? 1_000_000 : 100_000)
  test.each(COMMANDS)(
    '%s',
    (command, args) => {
      const least = peak(command, args, few)
      expect(least).toBeGreaterThan(30e6)
      expect(peak(command, args, many) / least).toBeLessThan(1.2)
    },
    1_800_000,
  )
})
