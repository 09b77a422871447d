import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { difference, enter, eventually, ready, saved, select, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

describe('when not all is well', () => {
  test('a second tab reads only, and writes when the first is closed', async () => {
    const first = await open(browser)
    await ready(first.page)
    await enter(first.page, 'sample/ph', 0, '7.2')
    await saved(first.page)

    const second = await open(browser, { context: first.context })
    await ready(second.page)
    expect(await shown(second.page, 'sample/ph')).toBe('7.2')
    expect(await second.page.locator('.banner').textContent()).toContain('open for writing in another tab')
    expect(await second.page.locator('.toolbar .state').textContent()).toBe('Reading only')
    await select(second.page, 'sample/ph')
    await second.page.keyboard.type('9')
    expect(await second.page.locator('.cell .editor').count()).toBe(0)
    await second.page.keyboard.press('Delete')
    expect(await shown(second.page, 'sample/ph')).toBe('7.2')
    expect(await second.page.getByRole('button', { name: 'Add scenario' }).isDisabled()).toBe(true)

    await enter(first.page, 'sample/ph', 0, '7.5')
    await saved(first.page)
    await first.page.close()
    await saved(second.page, { timeout: 5000 })
    expect(await second.page.locator('.banner').count()).toBe(0)
    await eventually(() => shown(second.page, 'sample/ph')).toBe('7.5')
    await enter(second.page, 'sample/ph', 0, '7.6')
    await saved(second.page)
    await second.page.reload()
    await ready(second.page)
    expect(await shown(second.page, 'sample/ph')).toBe('7.6')
    expect([...first.errors, ...second.errors]).toEqual([])
    await first.context.close()
  })

  test('where the browser keeps nothing, the page says so and works', async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-US' })
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('not allowed here', 'SecurityError')
      }
    })
    const { page, errors } = await open(browser, { context })
    await ready(page)
    expect(await page.locator('.banner').allTextContents()).toEqual(
      expect.arrayContaining([expect.stringContaining('save the notebook to a file')]),
    )
    expect(await page.locator('.toolbar .state').textContent()).toBe('Kept nowhere but on this page')
    await enter(page, 'sample/ph', 1, '7.4')
    await eventually(() => difference(page, 'saturation/lsi', 1)).toMatch(/^[−+]\d/)
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save to a file' }).click()
    expect((await download).suggestedFilename()).toMatch(/\.json$/)
    expect(errors).toEqual([])
    await context.close()
  })

  test('where the browser has no room left, the page says so, and saves when there is room again', async () => {
    const { page } = await open(browser)
    await ready(page)
    // as the browser itself refuses it: a quota that is set for the test is not asked about so small a record
    await page.evaluate(() => {
      const { add } = IDBObjectStore.prototype
      IDBObjectStore.prototype.add = () => {
        throw new DOMException('', 'QuotaExceededError')
      }
      Object.assign(globalThis, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { add }) })
    })
    await enter(page, 'sample/ph', 0, '7.9')
    await eventually(() => page.locator('.toolbar .state').textContent()).toContain('no room left')
    await page.evaluate(() => (globalThis as unknown as { makeRoom: () => void }).makeRoom())
    await page.getByRole('button', { name: 'Try again' }).click()
    await saved(page)
    await page.reload()
    await ready(page)
    expect(await shown(page, 'sample/ph')).toBe('7.9')
    await page.context().close()
  })

  test.each([
    ['falls over', 'setTimeout(() => { throw new Error("fell over") })', 5000],
    ['is gone without a word', 'self.close()', 16_000],
  ])('an engine that %s is started again with nothing lost', async (_, end, patience) => {
    const { page } = await open(browser)
    await ready(page)
    await enter(page, 'sample/ph', 0, '7.3')
    await eventually(() => shown(page, 'saturation/ph')).toBe('7.3')
    const [worker] = page.workers()
    await worker?.evaluate(end).catch(() => undefined)
    await enter(page, 'sample/ph', 1, '7.1')
    await eventually(() => page.locator('.banner').allTextContents(), { timeout: patience }).toEqual(
      expect.arrayContaining([expect.stringContaining('nothing that was entered is lost')]),
    )
    await eventually(() => difference(page, 'sample/ph', 1)).toBe('−0.20')
    await enter(page, 'sample/ph', 2, '7.0')
    await eventually(() => difference(page, 'sample/ph', 2)).toBe('−0.30')
    await eventually(() => shown(page, 'saturation/lsi', 2)).toMatch(/^−\d\.\d\d$/)
    await page.context().close()
  })
})
