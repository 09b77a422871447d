import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { Browser, Download, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { asNumber, eventually, ready, select, shown, tabTo } from './grid'
import { launch, open } from './open'

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** The page of what-ifs, opened with the index of the baseline selected. */
async function openPart(part: string, options: { width?: number; dark?: boolean } = {}) {
  const watched = await open(browser, options)
  await ready(watched.page)
  await select(watched.page, 'saturation/lsi')
  await goTo(watched.page, part)
  return watched
}

async function goTo(page: Page, part: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash
  }, `study/${part}`)
  await page.locator('.study .parts').waitFor()
}

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label })
  await field.focus()
  await page.keyboard.press('Control+A')
  await page.keyboard.type(text)
  await page.keyboard.press('Tab')
}

async function bytesOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path())
}

describe('charts', () => {
  test('by keyboard: a span of one’s own, read point by point, kept, saved as pictures', async () => {
    const { page, errors, foreign } = await openPart('sweep')
    await type(page, 'From', '7')
    await type(page, 'To', '8.6')
    await type(page, 'Points', '9')
    await page.locator('.chart').waitFor()
    await tabTo(page, '[role=slider]')
    const slider = page.getByRole('slider')
    await eventually(() => slider.getAttribute('aria-valuemax')).toBe('8')
    await page.keyboard.press('Home')
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/^pH 7\.00: As tested −/)
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight')
    const text = (await slider.getAttribute('aria-valuetext')) ?? ''
    // at the pH of the bottle the chart says what the worksheet says
    const read = asNumber(/pH 7\.80: As tested ([−\d.]+)/.exec(text)?.[1] ?? '')
    await page.locator('details.points summary').press('Enter')
    await eventually(() => page.locator('.points tbody tr').count()).toBe(9)

    const [svg] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as SVG' }).press('Enter'),
    ])
    const picture = (await bytesOf(svg)).toString('utf8')
    expect(picture).toMatch(/^<svg xmlns=/)
    expect(picture).toContain('As tested')
    expect(picture).not.toMatch(/href|url\(|<style|<script|NaN/)
    const [png] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PNG' }).press('Enter'),
    ])
    expect((await bytesOf(png)).subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n')

    await type(page, 'Name of the chart', 'Index, wide')
    await page.getByRole('button', { name: 'Keep in the notebook' }).press('Enter')
    await eventually(() => page.getByRole('button', { name: 'Index, wide' }).count()).toBe(1)
    await page.keyboard.press('Control+z')
    await eventually(() => page.getByRole('button', { name: 'Index, wide' }).count()).toBe(0)

    await page.locator('.rail a[href="#worksheets/saturation"]').click()
    expect(read).toBe(asNumber(await shown(page, 'saturation/lsi')))
    expect(errors).toEqual([])
    expect(foreign).toEqual([])
    await page.context().close()
  })
})

describe('solving back', () => {
  test('by keyboard: the pH for an index of 0.2, put into the scenario', async () => {
    const { page, errors } = await openPart('solve')
    await type(page, 'Wanted', '0.2')
    await page.getByRole('textbox', { name: 'Wanted' }).press('Enter')
    const put = page.getByRole('button', { name: /^Put .* into As tested$/ })
    await put.waitFor()
    expect(await page.locator('.found .ends dd').allTextContents()).toHaveLength(2)
    await put.press('Enter')
    await page.getByText(/^pH is 8\.[\d]+ in As tested now\.$/).waitFor()
    await page.locator('.rail a[href="#worksheets/saturation"]').click()
    await eventually(() => shown(page, 'saturation/lsi')).toBe('0.20')

    // none in a span that ends too early: both ends are shown
    await goTo(page, 'solve')
    await type(page, 'To', '7')
    await type(page, 'Wanted', '0.2')
    await page.getByRole('textbox', { name: 'Wanted' }).press('Enter')
    await page.getByText(/^No value of pH from 6\.40 to 7\.00 gives/).waitFor()
    expect(await page.locator('.found .ends div').count()).toBe(2)
    expect(errors).toEqual([])
    await page.context().close()
  })
})

describe('what matters most', () => {
  test('ranked, with an interval; a coarser test leaves the verdict open, and says which to make again', async () => {
    const { page, errors } = await openPart('matters')
    await page.locator('.swings li').first().waitFor()
    expect(await page.locator('.swings .name').first().textContent()).toMatch(/^pH/)
    expect(await page.locator('.sure').textContent()).toMatch(/The verdict holds/)
    const before = await page.locator('.sure .interval').textContent()
    await page.getByRole('combobox', { name: 'Test for pH' }).focus()
    await page.keyboard.type('Test strip')
    await page.keyboard.press('Enter')
    await eventually(() => page.locator('.sure .interval').textContent()).not.toBe(before)
    await eventually(() => page.locator('.sure').textContent()).toMatch(/either side of 0\.30: test pH again first/)
    await type(page, 'Precision of pH', '0.01')
    await eventually(() => page.locator('.swings .name').first().textContent()).not.toMatch(/^pH/)

    // and beside the value, in the margin
    await page.locator('.rail a[href="#worksheets/saturation"]').click()
    await select(page, 'saturation/lsi')
    await eventually(() => page.locator('#margin .sureness .interval').textContent()).toMatch(
      /^95 %: −0\.\d\d to 0\.\d\d$/,
    )
    expect(errors).toEqual([])
    await page.context().close()
  })
})

describe('WCAG 2.2 AA, as far as a checker can tell', () => {
  test.each([
    [1440, false],
    [768, true],
  ])('%i wide, dark %s: every part', async (width, dark) => {
    const { page } = await openPart('sweep', { width, dark })
    await page.evaluate(AXE)
    for (const part of ['sweep', 'compare', 'solve', 'matters']) {
      await goTo(page, part)
      await page
        .locator(part === 'solve' ? '.study form' : part === 'matters' ? '.swings li' : '.drawing')
        .first()
        .waitFor()
      const found = await page.evaluate(() =>
        (globalThis as unknown as { axe: { run(context: unknown, options: unknown): Promise<AxeResults> } }).axe.run(
          { include: [['.study']] },
          {
            runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
            resultTypes: ['violations'],
          },
        ),
      )
      const lines = found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)
      expect(lines, part).toEqual([])
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      expect(wide, part).toBeLessThanOrEqual(0)
    }
    await page.context().close()
  })
})
