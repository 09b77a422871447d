import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, eventually, ready } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

describe('the step plan', () => {
  test('opened straight away says nothing before the whole water is known', async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-US' })
    await context.addInitScript(() => {
      const said: string[] = []
      Object.assign(globalThis, { said })
      new MutationObserver(() => {
        const text = document.querySelector('.plan .swim')?.textContent
        if (text && said.at(-1) !== text) said.push(text)
      }).observe(document, { subtree: true, childList: true, characterData: true })
    })
    const { page, errors } = await open(browser, { context, path: '#plan' })
    await page.locator('.plan[aria-busy=false] .swim').waitFor()
    await page.waitForTimeout(1500)
    const said = await page.evaluate(() => (globalThis as unknown as { said: string[] }).said)
    expect(said).toHaveLength(1)
    // the water of the example is fit to bathe in
    expect(said[0]).toMatch(/^People may swim/)
    expect(errors).toEqual([])
    await context.close()
  })

  test('follows the readings, and dilutes over-salted water first', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await page.locator('.rail a[href="#plan"]').first().click()
    const steps = page.locator('.steps .step')
    await steps.first().waitFor()
    // 4200 ppm of salt, where the cell takes at most 3400: water is renewed before anything is added
    expect(await steps.first().locator('.says').textContent()).toMatch(/^Let the level down/)
    expect(await steps.first().locator('.cautions li').count()).toBeGreaterThan(1)

    await page.locator('.rail a[href="#worksheets/sample"]').click()
    await enter(page, 'sample/free_chlorine', 0, '-')
    await page.locator('.rail a[href="#plan"]').first().click()
    await page.locator('.plan[aria-busy=false] .swim').waitFor()
    await eventually(() => page.locator('.swim').textContent()).toMatch(/^Nobody swims yet.*Free chlorine/)
    expect(errors).toEqual([])
    await page.context().close()
  })
})
