import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { cell, chooseFromMenu, editor, eventually, fault, ready, scenarioNames, select, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** Opens the dialog from the menu of a scenario, by keys alone. */
async function carryFrom(page: Page, column: number): Promise<void> {
  await page.locator('#worksheet-pool .head .scenario button').nth(column).press('Enter')
  await page.getByRole('menuitem', { name: 'Carry its water forward' }).press('Enter')
}

test('a diluted water is carried forward by the keyboard, follows its source, and stays when that is removed', async () => {
  const { page, errors } = await open(browser)
  await ready(page)
  // From the second scenario, for the baseline cannot be removed.
  await carryFrom(page, 1)
  const dialog = page.getByRole('dialog')
  await dialog.waitFor()
  expect(await dialog.getByRole('radio', { name: /after its calcium dose/ }).isDisabled()).toBe(true)
  await page.keyboard.press('Escape')
  await eventually(() => dialog.count()).toBe(0)

  await carryFrom(page, 2)
  await dialog.getByRole('radio', { name: /after its dilution/ }).press('Space')
  await dialog.getByRole('textbox').fill('Diluted')
  await page.keyboard.press('Enter')
  await eventually(() => scenarioNames(page)).toEqual(['As tested', 'A third drained', 'pH brought to 7.4', 'Diluted'])
  const predicted = () => shown(page, 'dilution/salt_after_dilution', 2)
  await eventually(() => shown(page, 'sample/salt', 3)).toBe(await predicted())
  expect(await shown(page, 'sample/free_chlorine', 3)).toBe('–')

  await select(page, 'dilution/fill_salt', 2)
  await page.keyboard.type('900')
  const before = await shown(page, 'sample/total_alkalinity', 3)
  await page.keyboard.press('Enter')
  await select(page, 'dilution/most_salt', 2)
  await page.keyboard.type('3000')
  await page.keyboard.press('Enter')
  await eventually(() => shown(page, 'sample/salt', 3)).toBe('3000')
  await eventually(() => shown(page, 'sample/total_alkalinity', 3)).not.toBe(before)

  const last = await shown(page, 'sample/total_alkalinity', 3)
  await chooseFromMenu(page, 2, 'Rename')
  await page.getByRole('textbox', { name: 'Name of the scenario' }).fill('Source')
  await page.keyboard.press('Enter')
  await select(page, 'sample/salt', 3)
  await eventually(() => page.locator('#margin').textContent()).toContain("= 'Source'.salt_after_dilution")

  await chooseFromMenu(page, 2, 'Remove')
  await eventually(() => scenarioNames(page)).toEqual(['As tested', 'A third drained', 'Diluted'])
  await eventually(() => shown(page, 'sample/salt', 2)).toBe('3000')
  await eventually(() => shown(page, 'sample/total_alkalinity', 2)).toBe(last)
  await page.keyboard.press('Control+z')
  await eventually(() => scenarioNames(page)).toEqual(['As tested', 'A third drained', 'Source', 'Diluted'])
  await select(page, 'sample/salt', 3)
  await eventually(() => page.locator('#margin').textContent()).toContain("= 'Source'.salt_after_dilution")

  await select(page, 'sample/salt', 2)
  await page.keyboard.type("='Diluted'.salt")
  await page.keyboard.press('Enter')
  expect(await fault(page)).toMatch(/would run in a circle: .*Salt in “Source”/)
  await editor(page).press('Escape')
  expect(await cell(page, 'sample/salt', 2).textContent()).toContain('4200')
  expect(errors).toEqual([])
  await page.context().close()
})

test('the end of a plan becomes a scenario of plain numbers', async () => {
  const { page } = await open(browser, { path: '#plan' })
  await page.getByRole('button', { name: 'Carry the end water forward' }).press('Enter')
  await ready(page)
  await eventually(() => scenarioNames(page)).toEqual([
    'As tested',
    'As tested, after its plan',
    'A third drained',
    'pH brought to 7.4',
  ])
  await eventually(() => page.locator('#margin').textContent()).toContain('Entered here')
  await eventually(() => shown(page, 'sample/ph', 1)).toMatch(/^7\.\d\d$/)
  await page.context().close()
})
