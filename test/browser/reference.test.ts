import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { LOCKED } from '../../src/functions/registry'
import { eventually, ready, select } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

describe('the pages beside the worksheets', () => {
  test('Functions has every locked function, each with its equation, source and check, and finds them by typing', async () => {
    const { page, errors } = await open(browser, { path: '#functions' })
    const entries = page.locator('section.function')
    await eventually(() => entries.count()).toBe(LOCKED.length)
    const ids = await entries.evaluateAll((all) => all.map((entry) => entry.id))
    expect(ids.sort()).toEqual(LOCKED.map(({ name }) => `function-${name}`).sort())
    const bare = await entries.evaluateAll((all) =>
      all
        .filter((entry) => entry.querySelectorAll('.checks li').length === 0 || !/Source/.test(entry.textContent ?? ''))
        .map((entry) => entry.id),
    )
    expect(bare).toEqual([])
    await eventually(() => page.locator('section.function math').count()).toBeGreaterThan(LOCKED.length - 5)

    await page.getByRole('searchbox').fill('ryznar')
    await eventually(() => entries.count()).toBeLessThan(6)
    expect(await page.locator('section.function h2').allTextContents()).toEqual(
      expect.arrayContaining([expect.stringMatching(/^RYZNAR/)]),
    )
    await page.getByRole('searchbox').fill('no such thing')
    await eventually(() => page.locator('.functions [role=status]').textContent()).toContain('No function has that')
    await page.getByRole('button', { name: 'Show all' }).click()
    await eventually(() => entries.count()).toBe(LOCKED.length)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('the margin’s source leads to the function it names', async () => {
    const { page } = await open(browser)
    await ready(page)
    await select(page, 'saturation/table_index')
    const link = page.locator('#margin a[href^="#functions/"]').first()
    const name = await link.textContent()
    await link.click()
    const entry = page.locator(`[id="function-${name}"]`)
    await entry.waitFor()
    await eventually(async () => (await entry.boundingBox())?.y ?? -1).toBeGreaterThanOrEqual(0)
    expect((await entry.boundingBox())?.y ?? 900).toBeLessThan(500)
    await page.context().close()
  })

  test('Keys lists what the keys do', async () => {
    const { page } = await open(browser, { path: '#keys' })
    await page.locator('kbd').first().waitFor()
    const keys = await page.locator('kbd').allTextContents()
    expect(keys).toEqual(expect.arrayContaining(['Enter', 'F2', 'Escape', 'Ctrl Z', 'Shift F10', '?', 'F6']))
    expect(await page.locator('dl.keys dd').allTextContents()).not.toContain('')
    await page.context().close()
  })

  test('on paper: worksheets alone, nothing cut off, the caution at the foot', async () => {
    const { page } = await open(browser)
    await ready(page)
    await page.emulateMedia({ media: 'print' })
    for (const gone of ['.rail', '#margin', '.toolbar', '.banners'] as const) {
      expect(await page.locator(gone).isVisible(), gone).toBe(false)
    }
    expect(
      await page.getByText('Local codes, the product label and licensed practice come first.').last().isVisible(),
    ).toBe(true)
    // an A4 page less its margins is 178 mm wide: 673 px
    await page.setViewportSize({ width: 673, height: 971 })
    const cut = await page.evaluate(
      () =>
        [...document.querySelectorAll('.grid')].filter((grid) => grid.getBoundingClientRect().right > innerWidth + 1)
          .length,
    )
    expect(cut).toBe(0)
    const sheets = await page.pdf({ format: 'A4' })
    expect(sheets.length).toBeGreaterThan(20_000)
    await page.context().close()
  })
})
