import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, test } from 'vitest'
import { inOrder } from '../../src/notebook/order'
import { toFile } from '../../src/notebook/toFile'
import { launch, open } from '../browser/open'
import { built } from './built'
import { longestTask } from './longestTask'
import { rate, report } from './report'
import { notebookOf, waters } from './waters'

const SCENARIOS = 4
const COLUMNS = 1_000
const ROUNDS = 5

/** Columns a second, the least disturbed of a few rounds. */
async function rateOf(columns: number, run: () => Promise<void>): Promise<number> {
  let best = 0
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now()
    await run()
    best = Math.max(best, (1000 * columns) / (performance.now() - start))
  }
  return best
}

describe('studies', () => {
  test('columns a second, against bare refills of the same cells', async () => {
    const { bareRefills, intervalOf, READINGS, SPAN, studies, sweepOf } =
      await built<typeof import('./studyRuns')>('test/bench/studyRuns.ts')
    const line = async (what: string, columns: number, run: () => Promise<void>, bare: () => void) => {
      const speed = await rateOf(columns, run)
      const reference = rate(columns, bare, ROUNDS)
      const times = `${((1000 * columns) / speed).toFixed(0)} ms`
      report(
        what,
        `${speed.toFixed(0)} columns/s, ${times}`,
        `bare engine ${reference.toFixed(0)} /s`,
        reference / speed,
      )
    }
    const study = studies()
    const refill = bareRefills()
    const points = SCENARIOS * SPAN.length
    const swept = waters(SCENARIOS).flatMap((water) => SPAN.map((ph) => new Map([...water, ['ph', ph]])))
    await line(
      `a sweep of ${SPAN.length} points, ${SCENARIOS} scenarios`,
      points,
      () => study(sweepOf(SCENARIOS)),
      () => refill(swept, ['ph']),
    )
    const drawn = waters(COLUMNS)
    await line(
      `an interval by ${COLUMNS} columns`,
      COLUMNS,
      () => study(intervalOf(COLUMNS)),
      () => refill(drawn, READINGS),
    )
  })
})

describe('the page while studies run', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await launch()
  })
  afterAll(() => browser.close())

  /** Opens a notebook of four scenarios by its file, as a person would. */
  async function openNotebook(): Promise<{ page: Page; first: string }> {
    const notebook = notebookOf(SCENARIOS)
    const path = join(mkdtempSync(join(tmpdir(), 'basinbook-bench-')), 'notebook.json')
    writeFileSync(path, toFile(notebook))
    const { page } = await open(browser, {})
    await page.locator('.cell .whole').first().waitFor()
    await page.goto(`${page.url().split('#')[0]}#notebooks`)
    await page.locator('input[type=file]').first().setInputFiles(path)
    const first = inOrder(notebook)[0]?.id ?? ''
    await page.locator(`[id="saturation/lsi@${first}"] .whole`).waitFor()
    await page.locator(`[id="saturation/lsi@${first}"]`).click()
    await page.locator('#margin .sureness .interval', { hasText: '95' }).waitFor()
    return { page, first }
  }

  const aim = 'under 50'

  test('a sweep of 200 points and an interval after an edit', async () => {
    const { page, first } = await openNotebook()
    const sureness = page.locator('#margin .sureness .interval')
    const before = await sureness.textContent()
    const interval = await longestTask(page, async () => {
      await page.locator(`[id="saturation/ph@${first}"]`).click()
      await page.keyboard.type('7.9')
      await page.keyboard.press('Enter')
      await page.locator(`[id="saturation/lsi@${first}"]`).click()
      await page.waitForFunction((old) => {
        const now = document.querySelector('#margin .sureness .interval')?.textContent
        return now !== undefined && now !== '' && now !== old
      }, before)
      await page.waitForTimeout(1500)
    })
    report('interval of the selected cell after an edit: longest task', `${interval.toFixed(1)} ms`, '', null, aim)

    await page.evaluate(() => {
      location.hash = 'study/sweep'
    })
    const points = page.getByRole('textbox', { name: 'Points' })
    await points.waitFor()
    await page.locator('.chart').waitFor()
    const sweep = await longestTask(page, async () => {
      await points.fill('200')
      await points.press('Tab')
      await page.waitForFunction(() => document.querySelector('[role=slider]')?.getAttribute('aria-valuemax') === '199')
    })
    report('a sweep of 200 points on the page: longest task', `${sweep.toFixed(1)} ms`, '', null, aim)
    await page.context().close()
  })
})
