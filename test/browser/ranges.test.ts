import axe from 'axe-core'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { eventually } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

test('a set of ranges is copied and changed, a rule is changed within its bounds, and both count in the plan', async () => {
  const { page, errors } = await open(browser, { path: '#ranges' })
  await page.getByLabel('Copy of').selectOption('us_new_york')
  const name = page.getByLabel('Name of the copy')
  await name.fill('Our county')
  await name.press('Enter')
  await page.locator('.copied table').waitFor()
  const least = page.getByLabel('At least, pH, everywhere')
  await least.fill('8')
  await least.press('Tab')
  await page.getByText('pH: at least has to be less than at most.').waitFor()
  await eventually(() => least.inputValue()).toBe('7.40')
  await least.fill('7.3')
  await least.press('Tab')
  await eventually(() => page.getByLabel('What it goes by, pH, everywhere').inputValue()).toMatch(
    /^Changed from New York State: public pools: /,
  )
  await page.getByLabel('This pool goes by').selectOption({ label: 'Our county' })

  const acid = page.getByLabel('pH that acid may lead to, at least')
  await acid.fill('5')
  await acid.press('Tab')
  await page.getByText(/5 is not between 7 and 7.6; past these/).waitFor()
  await eventually(() => acid.inputValue()).toBe('7.2')
  await acid.fill('7.4')
  await acid.press('Tab')
  await page.getByText('changed; 7.2 comes with the app').waitFor()

  await page.evaluate(axe.source)
  const broken = await page.evaluate(async () => {
    const page = globalThis as unknown as { axe: { run: () => Promise<{ violations: { id: string }[] }> } }
    return (await page.axe.run()).violations.map(({ id }) => id)
  })
  expect(broken).toEqual([])

  await page.locator('.rail a[href="#plan"]').first().click()
  await page.locator('.plan[aria-busy=false] .swim').waitFor()
  await eventually(() =>
    page.locator('.steps details li', { hasText: 'Changed in this notebook' }).count(),
  ).toBeGreaterThan(0)
  expect(errors).toEqual([])
  await page.context().close()
})
