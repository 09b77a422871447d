import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { lezer } from '@lezer/generator/rollup'
import type { Browser, Page } from 'playwright-core'
import { build, type PreviewServer, preview } from 'vite'
import { afterAll, beforeAll, describe, test } from 'vitest'
import { inOrder } from '../../src/notebook/order'
import { toFile } from '../../src/notebook/toFile'
import { launch, open } from '../browser/open'
import { longestTask } from './longestTask'
import { median, report } from './report'
import { notebookOf } from './waters'

/** Edits that are timed, and whole openings. The page's clock steps by 0.1 ms. */
const EDITS = 100
const OPENINGS = 5
/** Traces of two edits each. */
const TRACED = 9

let browser: Browser
let server: PreviewServer
const folder = mkdtempSync(join(tmpdir(), 'basinbook-bench-'))

beforeAll(async () => {
  browser = await launch()
  const root = resolve('test/bench/bare')
  await build({
    configFile: false,
    root,
    plugins: [lezer()],
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true },
  })
  server = await preview({
    configFile: false,
    root,
    build: { outDir: folder },
    preview: { port: 0, host: '127.0.0.1' },
  })
}, 120_000)

afterAll(async () => {
  await browser.close()
  await server.close()
})

type Bare = {
  timeEdits: (scenarios: number, column: string, edits: number) => Promise<number[]>
  timeEcho: (edits: number) => Promise<number[]>
  build: (scenarios: number) => number
}

/** The bare engine on a page of its own; the median of what it is asked for. */
async function bare(ask: (page: Page) => Promise<readonly number[]>): Promise<number> {
  const page = await browser.newPage()
  page.on('pageerror', (error) => console.log(String(error)))
  await page.goto(server.resolvedUrls?.local[0] ?? '')
  await page.waitForFunction(() => 'timeEdits' in globalThis)
  const times = await ask(page)
  await page.close()
  return median(times)
}

const bareEdit = (scenarios: number, column: 'baseline' | 'last') =>
  bare((page) =>
    page.evaluate(([count, where, edits]) => (globalThis as unknown as Bare).timeEdits(count, where, edits), [
      scenarios,
      column,
      EDITS,
    ] as const),
  )

const echo = () => bare((page) => page.evaluate((edits) => (globalThis as unknown as Bare).timeEcho(edits), EDITS))

const bareBuild = (scenarios: number) =>
  bare((page) =>
    page.evaluate(
      ([count, times]) => Array.from({ length: times }, () => (globalThis as unknown as Bare).build(count)),
      [scenarios, OPENINGS] as const,
    ),
  )

/** Opens a notebook of so many scenarios by its file, as a person would, and goes to the pH of one of them. */
async function openNotebook(
  scenarios: number,
  column: 'baseline' | 'last',
): Promise<{ page: Page; edited: string; watched: string }> {
  const notebook = notebookOf(scenarios)
  const path = join(folder, `notebook-${scenarios}.json`)
  writeFileSync(path, toFile(notebook))
  const { page } = await open(browser, {})
  page.setDefaultTimeout(20_000)
  await page.locator('.cell .whole').first().waitFor()
  await page.goto(`${page.url().split('#')[0]}#notebooks`)
  await page.locator('input[type=file]').first().setInputFiles(path)
  const order = inOrder(notebook)
  const [first, last] = [order[0]?.id ?? '', order.at(-1)?.id ?? '']
  await page.locator(`[id="pool/volume@${first}"]`).waitFor()
  await page.locator('.rail a[href="#worksheets/saturation"]').click()
  await page.locator(`[id="saturation/ph@${first}"]`).click()
  if (column === 'last') await page.keyboard.press('End')
  // What a person sees follow the edit: its own index, or that of the last scenario in sight.
  const shown = page.locator('.cell[id^="saturation/lsi@"]')
  await shown.last().locator('.whole').waitFor()
  await page.waitForTimeout(1000)
  const watched = column === 'last' ? last : ((await shown.last().getAttribute('id')) ?? '').split('@')[1]
  return { page, edited: column === 'last' ? last : first, watched: watched ?? '' }
}

/** Types pH into a cell of the saturation sheet and waits for the index of `watched` to be redrawn: the times from Enter, in milliseconds. */
function edits(page: Page, scenario: string, watched: string, count: number): Promise<number[]> {
  return page.evaluate(
    async ([id, watch, n]) => {
      const key = (target: Element, name: string) =>
        target.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true }))
      const lsi = document.getElementById(`saturation/lsi@${watch}`) as HTMLElement
      const times: number[] = []
      // What a person does comes as tasks of their own, each after what the one before changed has been drawn.
      const turn = async () => {
        await new Promise(requestAnimationFrame)
        await new Promise((done) => setTimeout(done))
      }
      for (let i = 0; i < n; i++) {
        await turn()
        const cell = document.getElementById(`saturation/ph@${id}`) as HTMLElement
        cell.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0 }))
        cell.click()
        cell.focus()
        await turn()
        key(cell, '7')
        await turn()
        const input = document.activeElement as HTMLInputElement
        if (input.tagName !== 'INPUT') throw new Error('no editor opened')
        input.value = (7.2 + ((i * 7) % 50) / 100).toFixed(2)
        await turn()
        const redrawn = new Promise<number>((done) => {
          const observer = new MutationObserver(() => {
            observer.disconnect()
            done(performance.now())
          })
          observer.observe(lsi, { subtree: true, childList: true, characterData: true })
        })
        const start = performance.now()
        key(input, 'Enter')
        times.push((await redrawn) - start)
      }
      return times
    },
    [scenario, watched, count] as const,
  )
}

/** The longest task of each act: what it usually is, and the worst, which on a busy machine is told by what else that does. */
function reportTasks(tasks: readonly number[], aim: string): void {
  const worst = Math.max(...tasks).toFixed(1)
  report('  longest main-thread task', `${median(tasks).toFixed(1)} ms`, `at worst ${worst} ms`, null, aim)
}

describe('the page', () => {
  for (const scenarios of [3, 50]) {
    for (const column of ['last', 'baseline'] as const) {
      test(`an edit of ${column} at ${scenarios} scenarios`, async () => {
        const reference = await bareEdit(scenarios, column)
        const { page, edited, watched } = await openNotebook(scenarios, column)
        await edits(page, edited, watched, 5)
        const time = median(await edits(page, edited, watched, EDITS))
        const tasks: number[] = []
        for (let i = 0; i < TRACED; i++) tasks.push(await longestTask(page, () => edits(page, edited, watched, 2)))
        const aim = scenarios === 50 && column === 'baseline' ? 'aim 2.5' : 'aim 3'
        report(
          `edit of ${column}, ${scenarios} scenarios: Enter to DOM`,
          `${time.toFixed(2)} ms`,
          `bare engine ${reference.toFixed(2)} ms`,
          time / reference,
          aim,
        )
        report('  of it a message to a worker and back', `${(await echo()).toFixed(2)} ms`, '', null)
        reportTasks(tasks, column === 'last' ? 'under 16, never over 50' : 'never over 50')
        await page.close()
      })
    }
  }

  test('opening a notebook of 50 scenarios', async () => {
    const reference = await bareBuild(50)
    const { page } = await openNotebook(50, 'baseline')
    // From the address to the first numbers: scripts, the store, the worker and its engine are all in it.
    await page.addInitScript(() => {
      const observer = new MutationObserver(() => {
        if (!document.querySelector('.cell .whole')) return
        observer.disconnect()
        Object.assign(globalThis, { firstNumbers: performance.now() })
      })
      observer.observe(document, { subtree: true, childList: true })
    })
    const times: number[] = []
    const tasks: number[] = []
    for (let i = 0; i < OPENINGS; i++) {
      const open = async () => {
        await page.reload()
        await page.waitForFunction(() => 'firstNumbers' in globalThis)
        await page.waitForTimeout(1500)
      }
      tasks.push(await longestTask(page, open))
      times.push(await page.evaluate(() => (globalThis as unknown as { firstNumbers: number }).firstNumbers))
    }
    report(
      'opening 50 scenarios: address to first numbers',
      `${median(times).toFixed(0)} ms`,
      `bare engine built in ${reference.toFixed(0)} ms`,
      median(times) / reference,
    )
    reportTasks(tasks, 'never over 50')
    await page.close()
  })
})
