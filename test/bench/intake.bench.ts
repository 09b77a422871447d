import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, describe, test } from 'vitest'
import { launch, open } from '../browser/open'
import { TELL_PEAK } from '../headless/tellPeak'
import { built } from './built'
import { labText, labWaters } from './labText'
import { longestTask } from './longestTask'
import { median, report } from './report'

const ROWS = 100_000
const text = labText(ROWS)
const folder = mkdtempSync(join(tmpdir(), 'basinbook-bench-'))

async function times(count: number, run: () => unknown): Promise<number> {
  const spent: number[] = []
  for (let i = 0; i < count; i++) {
    const start = performance.now()
    await run()
    spent.push(performance.now() - start)
  }
  return median(spent)
}

describe('a lab file of 100 000 rows and 12 columns', () => {
  test('import and evaluation, against the parser alone and against the chemistry alone', async () => {
    const { importAndEvaluate, parse } = await built<typeof import('./intakeRuns')>('test/bench/intakeRuns.ts')
    const { computedOf, throughSolve } = await built<typeof import('./columnRuns')>('test/bench/columnRuns.ts')
    const bare = await times(5, () => parse(text))
    report('parsed only', `${bare.toFixed(0)} ms`, 'median of 5', null)
    const columns = labWaters(ROWS)
    const line = async (
      what: string,
      wanted: readonly string[],
      solves: readonly string[],
      aim: string,
      runs: number,
    ) => {
      const halves: { imported: number; evaluated: number }[] = []
      const whole = await times(runs, async () => halves.push(await importAndEvaluate(text, wanted)))
      report(`import and ${what}`, `${whole.toFixed(0)} ms`, `parser ${bare.toFixed(0)} ms`, whole / bare, aim)
      const evaluated = median(halves.map((half) => half.evaluated))
      const floor = await times(1, () => {
        for (const solve of solves) throughSolve(solve)(columns)
      })
      const imported = median(halves.map((half) => half.imported))
      report('  import alone', `${imported.toFixed(0)} ms`, `parser ${bare.toFixed(0)} ms`, imported / bare)
      const speed = ((1_000 * ROWS) / evaluated).toFixed(0)
      report('  evaluation alone', `${speed} columns/s`, `solves alone ${floor.toFixed(0)} ms`, evaluated / floor)
    }
    await line('lsi and hocl', ['lsi', 'hocl'], ['WATER', 'CHLORINE'], 'at most 60', 5)
    await line(
      'every quantity of saturation and stabilizer',
      [...computedOf('saturation'), ...computedOf('stabilizer')],
      ['WATER', 'WATER_EQUILIBRIA', 'CHLORINE'],
      'at most 120',
      3,
    )
  }, 900_000)

  test('peak memory of the command', async () => {
    await build({ mode: 'headless', logLevel: 'warn', build: { outDir: folder, emptyOutDir: false } })
    const peakOf = (rows: number) => {
      const path = join(folder, `${rows}.csv`)
      writeFileSync(path, labText(rows))
      const run = spawnSync(
        process.execPath,
        [
          '--import',
          TELL_PEAK,
          join(folder, 'evaluate.js'),
          '--worksheet',
          'saturation',
          '--worksheet',
          'stabilizer',
          path,
        ],
        { stdio: ['ignore', 'ignore', 'pipe'], encoding: 'utf8' },
      )
      return Number(/peak (\d+)$/.exec(run.stderr)?.[1]) / 1e6
    }
    const [few, many] = [peakOf(20_000), peakOf(ROWS)]
    report('peak memory', `${many.toFixed(0)} MB`, `20 000 rows ${few.toFixed(0)} MB`, many / few, 'at most 1.2')
  }, 300_000)
})

describe('the page with a lab file of 100 000 rows', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await launch()
  })
  afterAll(() => browser.close())

  test('longest block of the main thread', async () => {
    const path = join(folder, 'long.csv')
    writeFileSync(path, text)
    const { page } = await open(browser, { path: '#lab' })
    await page.locator('input[type=file]').waitFor({ state: 'attached' })
    // what is fetched and compiled for the first page is another matter
    await page.waitForTimeout(2_000)
    const line = async (what: string, act: () => Promise<unknown>) => {
      const longest = await longestTask(page, act)
      report(`  longest main-thread task, ${what}`, `${longest.toFixed(0)} ms`, '', null, 'under 50')
    }
    await line('import', async () => {
      await page
        .locator('input[type=file]')
        // by its path: a buffer would be handed over inside the page, on the thread that is measured
        .setInputFiles(path)
      await page.locator('.chart .readout').waitFor()
    })
    await line('evaluation', async () => {
      await page.getByRole('button', { name: /^Work out/ }).click()
      await page.locator('table.samples td.result').first().waitFor({ timeout: 240_000 })
      await page.locator('table.summary tr', { hasText: 'Langelier index' }).first().waitFor()
    })
    await line('sorting', async () => {
      await page.getByRole('button', { name: /^pH/ }).click()
      await page.locator('th[aria-sort=ascending]').waitFor()
      await page.waitForTimeout(1_500)
    })
    await line('scrolling', async () => {
      for (let i = 1; i <= 20; i++) {
        await page.locator('.samples-box').evaluate((box, top) => box.scrollTo(0, top), i * 50_000)
        await page.waitForTimeout(40)
      }
    })
    await page.context().close()
  }, 400_000)
})
