import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { eventually, ready, scenarioNames, select } from './grid'
import { launch, open } from './open'

let browser: Browser
let page: Page
let errors: string[]
beforeAll(async () => {
  browser = await launch()
  const opened = await open(browser)
  page = opened.page
  errors = opened.errors
  await ready(page)
})
afterAll(() => browser.close())

const press = async (...keys: string[]) => {
  for (const key of keys) await page.keyboard.press(key)
}
const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '')
const isOnHead = () => page.evaluate(() => document.activeElement?.matches('.head .scenario button') ?? false)

/** From a cell of a scenario to the scenario's own menu, which the menu of the cell ends with. */
async function openMenu(column: number): Promise<void> {
  await press('Control+Home')
  for (let step = 0; step < column; step++) await press('ArrowRight')
  await press('Shift+F10')
  await page.getByRole('menu').waitFor()
  await press('End', 'Enter')
  await page.getByRole('menuitem', { name: 'Duplicate' }).waitFor()
}

/** Walks to an act of the open menu, or of the one that the arrow opens from the heading. */
async function walkTo(item: string): Promise<void> {
  if (await isOnHead()) {
    await press('ArrowDown')
    await page.getByRole('menuitem', { name: 'Duplicate' }).waitFor()
  }
  for (let step = 0; step < 12 && (await focused()) !== item; step++) await press('ArrowDown')
  expect(await focused()).toBe(item)
}

/** Back into the grid from a heading. */
async function toGrid(): Promise<void> {
  await press('Tab')
  expect(await page.evaluate(() => document.activeElement?.closest('.worksheets') !== null)).toBe(true)
}

test('duplicate, rename, note, move and remove, by keys alone; the focus is never lost', async () => {
  const before = await scenarioNames(page)
  expect(before).toEqual(['As tested', 'A third drained', 'pH brought to 7.4'])

  await select(page, 'pool/shell')
  await openMenu(1)
  await walkTo('Duplicate')
  await press('Enter')
  await eventually(() => scenarioNames(page)).toEqual([
    'As tested',
    'A third drained',
    'A third drained, copied',
    'pH brought to 7.4',
  ])
  expect(await isOnHead()).toBe(true)

  await toGrid()
  await openMenu(2)
  await walkTo('Rename')
  await press('Enter')
  await page.getByRole('textbox', { name: 'Name of the scenario' }).waitFor()
  // the old name is marked, so that typing replaces it
  await page.keyboard.type('Half drained')
  await press('Enter')
  await eventually(() => scenarioNames(page)).toContain('Half drained')
  expect(await focused()).toMatch(/^Half drained/)

  // a name that is taken stays in its line, with the reason
  await walkTo('Rename')
  await press('Enter')
  await page.keyboard.type('As tested')
  await press('Enter')
  await eventually(() => page.locator('.in-head [role=alert]').textContent()).toMatch(/“As tested” is there already/)
  await press('Escape')
  expect(await focused()).toMatch(/^Half drained/)

  await walkTo('Write a note')
  await press('Enter')
  await page.getByRole('textbox', { name: 'Note on the scenario' }).waitFor()
  await page.keyboard.type('with the hose')
  await press('Enter')
  await eventually(() => focused()).toBe('Half drainedwith the hose')

  await walkTo('Move right')
  await press('Enter')
  await eventually(() => scenarioNames(page)).toEqual([
    'As tested',
    'A third drained',
    'pH brought to 7.4',
    'Half drained',
  ])
  await toGrid()
  await openMenu(3)
  await walkTo('Move left')
  await press('Enter')
  await eventually(() => scenarioNames(page)).toEqual([
    'As tested',
    'A third drained',
    'Half drained',
    'pH brought to 7.4',
  ])

  await toGrid()
  await openMenu(2)
  await walkTo('Remove')
  await press('Enter')
  await eventually(() => scenarioNames(page)).toEqual(before)
  expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true)

  // the baseline stays: its act is there, says that it is off, and does nothing
  await toGrid()
  await openMenu(0)
  await walkTo('Remove')
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-disabled'))).toBe('true')
  await press('Enter', 'Escape')
  expect(await scenarioNames(page)).toEqual(before)
  expect(await isOnHead()).toBe(true)
  expect(errors).toEqual([])
})

test('after a rename the next heading answers to the first press: nothing moves under it', async () => {
  const head = (column: number) => page.locator('#worksheet-pool .head .scenario button').nth(column)
  await head(1).click()
  await page.getByRole('menuitem', { name: 'Rename', exact: true }).click()
  await page.keyboard.type('Short')
  await page.keyboard.press('Enter')
  await eventually(() => scenarioNames(page)).toContain('Short')
  await head(2).click()
  await page.getByRole('menuitem', { name: 'Rename', exact: true }).waitFor()
  await page.keyboard.press('Escape')
})
