import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { cell, chooseFromMenu, editor, enter, eventually, fault, ready, scenarioNames, select, shown } from './grid'
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

/** Makes a scenario of the end of another's plan, on the page of the plan, by keys alone. */
async function carryPlan(page: Page, source: string, how: RegExp): Promise<void> {
  await page.locator('.rail a[href="#plan"]').first().press('Enter')
  await page.locator('.plan > .acts select').selectOption(source)
  await page.locator('.plan[aria-busy=false] .carry-end').waitFor()
  await page.getByRole('radio', { name: how }).press('Space')
  await page.getByRole('button', { name: 'Make the scenario' }).press('Enter')
  await ready(page)
}

test('the end of a plan becomes a scenario that follows the plan, until its source is removed', async () => {
  const { page, errors } = await open(browser)
  await ready(page)
  await carryPlan(page, 'pH brought to 7.4', /follow the plan of/)
  const names = ['As tested', 'A third drained', 'pH brought to 7.4', 'pH brought to 7.4, after its plan']
  await eventually(() => scenarioNames(page)).toEqual(names)
  const margin = () => page.locator('#margin').textContent()
  await eventually(margin).toContain('What the step plan of “pH brought to 7.4” ends with; it follows that plan.')
  const salt = () => shown(page, 'sample/salt', 3)
  const first = await salt()
  expect(first).toMatch(/^3,?\d\d\d$/)

  // The plan of a water with less salt ends with the salt that is added, up to what the cell takes.
  await enter(page, 'sample/salt', 2, '2000')
  await eventually(salt).not.toBe(first)
  const low = await salt()
  // What is typed over it follows no longer; the rest does.
  await enter(page, 'sample/temperature', 3, '70')
  await page.keyboard.press('Control+z')
  await eventually(() => shown(page, 'sample/temperature', 3)).not.toContain('70')
  await page.keyboard.press('Control+z')
  await eventually(salt).toBe(first)
  await page.keyboard.press('Control+y')
  await eventually(salt).toBe(low)

  await select(page, 'sample/salt', 2)
  await page.keyboard.type("='pH brought to 7.4, after its plan'.salt")
  await page.keyboard.press('Enter')
  expect(await fault(page)).toMatch(/would run in a circle: .*Salt in “pH brought to 7.4, after its plan”/)
  await editor(page).press('Escape')

  // What is cleared is not taken: no reading of the old water comes in its place.
  await select(page, 'sample/cyanuric_acid', 3)
  await page.keyboard.press('Delete')
  await eventually(() => shown(page, 'sample/cyanuric_acid', 3)).toBe('–')
  await eventually(margin).toContain('nobody has tested this water')
  await page.keyboard.press('Control+z')
  await enter(page, 'pool/measured_volume', 2, '9000')
  await eventually(() => shown(page, 'pool/volume', 3)).toMatch(/^9,?000/)

  await page.reload()
  await ready(page)
  await enter(page, 'sample/salt', 2, '2600')
  await eventually(salt).not.toBe(low)
  await page.waitForTimeout(600)
  const before = await salt()
  // Taken out at once, it leaves the numbers of the plan that its last entry brings about.
  await enter(page, 'sample/salt', 2, '2900')
  await chooseFromMenu(page, 2, 'Remove')
  await eventually(() => scenarioNames(page)).toEqual([names[0], names[1], names[3]])
  await select(page, 'sample/salt', 2)
  await eventually(margin).toContain('Entered here')
  const last = await shown(page, 'sample/salt', 2)
  expect(last).not.toBe(before)
  await page.keyboard.press('Control+z')
  await eventually(() => scenarioNames(page)).toEqual(names)
  await select(page, 'sample/salt', 3)
  await eventually(margin).toContain('it follows that plan')
  expect(await salt()).toBe(last)
  expect(errors).toEqual([])
  await page.context().close()
})

test('nobody swims by a water that is foretold, and no test stands behind its numbers', async () => {
  const { page } = await open(browser)
  await ready(page)
  await carryPlan(page, 'As tested', /are plain numbers/)
  await page.locator('.rail a[href="#plan"]').first().click()
  await page.locator('.plan[aria-busy=false] .swim').waitFor()
  const swim = () => page.locator('.swim').textContent()
  await page.locator('.plan > .acts select').selectOption('As tested, after its plan')
  await eventually(swim).toMatch(/^Not before a new test\.Nobody has tested this water/)
  expect(await page.getByRole('button', { name: 'Keep this plan as given' }).count()).toBe(0)
  await page.getByRole('link', { name: /sheet/i }).last().click()
  await page.locator('.sheet.second').waitFor()
  const sheet = (await page.locator('.handout').textContent()) ?? ''
  expect(sheet).toContain('Not before a new test.')
  expect(sheet).toContain('Foretold, not tested')
  expect(sheet).not.toContain('may swim')
  await page.context().close()
})

test('or one of plain numbers, which follow nothing', async () => {
  const { page } = await open(browser)
  await ready(page)
  await carryPlan(page, 'As tested', /are plain numbers/)
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
