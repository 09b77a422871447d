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
    expect(await steps.first().locator('.says').textContent()).toMatch(/^Before any water leaves/)
    expect(await steps.nth(1).locator('.says').textContent()).toMatch(/^Let the level down/)
    expect(await steps.nth(1).locator('.cautions li').count()).toBeGreaterThan(1)

    await page.locator('.rail a[href="#worksheets/sample"]').click()
    await enter(page, 'sample/free_chlorine', 0, '-')
    await page.locator('.rail a[href="#plan"]').first().click()
    await page.locator('.plan[aria-busy=false] .swim').waitFor()
    await eventually(() => page.locator('.swim').textContent()).toMatch(/^Nobody swims yet.*Free chlorine/)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('asks what the eye sees, follows the case, and takes a case from a file or says what is wrong with it', async () => {
    const { page, errors } = await open(browser, { path: '#plan' })
    await page.locator('.plan[aria-busy=false] .swim').waitFor()
    const panel = page.locator('details.cases')
    if ((await panel.getAttribute('open')) === null) await panel.locator('summary').press('Enter')
    await page.getByLabel('How the water looks').selectOption('green')
    await eventually(() => page.locator('.swim').textContent()).toMatch(/The pool is closed: Green water/)
    await eventually(() => page.locator('.steps .says').first().textContent()).toMatch(/^Net out/)
    await page.locator('.case-end h2', { hasText: 'Green water' }).waitFor()

    await page.getByLabel('How the water looks').selectOption('clear')
    await eventually(() => page.locator('.case-end').count()).toBe(0)
    await page.getByLabel('Another case').selectOption('volume_unknown')
    await eventually(() => page.locator('.case-end h2').textContent()).toBe('The volume is not well known')
    await page.getByRole('button', { name: 'Leave The volume is not well known' }).press('Enter')
    await eventually(() => page.locator('.case-end').count()).toBe(0)

    const given = {
      format: 'basinbook-case',
      version: 1,
      id: 'our_county',
      edition: 1,
      label: 'After a storm in our county',
      sources: [{ mark: 'published', says: 'An invented sheet' }],
      when: 'water_look = "clear"',
      steps: [{ id: 'call', says: 'Call the county.' }],
    }
    const load = (name: string, json: object) =>
      page.locator('details.cases input[type=file]').setInputFiles({
        name,
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(json)),
      })
    await load('bad.json', { ...given, when: 'luck > 3' })
    await page.getByText('bad.json, when: “luck” at character 1 is no quantity.').waitFor()
    await load('county.json', given)
    await page.getByRole('button', { name: 'Follow After a storm in our county' }).press('Enter')
    await eventually(() => page.locator('.steps .says').first().textContent()).toBe('Call the county.')
    expect(errors).toEqual([])
    await page.context().close()
  })
})
