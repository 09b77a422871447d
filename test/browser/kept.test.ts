import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, ready, saved, scenarioNames, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

describe('what was entered is kept', () => {
  test('within a second, and is there after a reload', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await enter(page, 'sample/ph', 0, '7.3')
    const entered = Date.now()
    await saved(page)
    expect(Date.now() - entered).toBeLessThan(1000)
    await enter(page, 'sample/temperature', 1, '59 F')
    await page.getByRole('button', { name: 'Add scenario' }).click()
    await saved(page)
    await page.reload()
    await ready(page)
    expect(await shown(page, 'sample/ph')).toBe('7.3')
    expect(await shown(page, 'sample/temperature', 1)).toBe('59')
    expect(await scenarioNames(page)).toHaveLength(4)
    expect(await page.locator('.banner').count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })
})
