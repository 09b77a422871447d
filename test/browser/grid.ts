import type { Locator, Page } from 'playwright-core'
import { expect } from 'vitest'

/** Worksheet and quantity, as in `saturation/lsi`. */
export type RowName = `${string}/${string}`

/** A cell of a row by its column; 0 is the baseline. */
export function cell(page: Page, row: RowName, column = 0): Locator {
  return page.locator(`.cell[id^="${row}@"]`).nth(column)
}

/** The page with its first numbers on it. */
export async function ready(page: Page): Promise<void> {
  await page.locator('.cell .whole').first().waitFor()
}

/** What a cell shows, without its difference and without what is there for screen readers alone. */
export function shown(page: Page, row: RowName, column = 0): Promise<string> {
  return cell(page, row, column).evaluate((element) => {
    const copy = element.cloneNode(true) as Element
    for (const other of copy.querySelectorAll('.unseen, .mark, .difference, .editor')) other.remove()
    return copy.textContent ?? ''
  })
}

/** A cell's small figures: how far it is from the baseline. */
export function difference(page: Page, row: RowName, column: number): Promise<string> {
  return cell(page, row, column).evaluate((element) => element.querySelector('.difference')?.textContent ?? '')
}

/** A shown figure as a number; NaN where there is none. */
export function asNumber(figure: string): number {
  return figure.trim() === '' ? Number.NaN : Number(figure.trim().replace('\u2212', '-').replaceAll(',', ''))
}

/** Selects a cell with the pointer. */
export async function select(page: Page, row: RowName, column = 0): Promise<void> {
  const target = cell(page, row, column)
  await target.scrollIntoViewIfNeeded()
  await target.click()
}

/** Types into a cell and presses Enter. */
export async function enter(page: Page, row: RowName, column: number, text: string): Promise<void> {
  await select(page, row, column)
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

/** The editor that is open, if one is. */
export function editor(page: Page): Locator {
  return page.locator('.cell .editor input')
}

/** What stands beside the open editor: why its text was not taken. */
export async function fault(page: Page): Promise<string> {
  return (await page.locator('.cell .editor [role=alert]').textContent()) ?? ''
}

/** Names of the scenarios, from left to right. */
export function scenarioNames(page: Page): Promise<string[]> {
  return page.locator('#worksheet-pool .head .scenario .name').allTextContents()
}

/** Opens the menu of a scenario from its heading in the first worksheet, and chooses from it. */
export async function chooseFromMenu(page: Page, column: number, item: string): Promise<void> {
  await page.locator('#worksheet-pool .head .scenario button').nth(column).click()
  await page.getByRole('menuitem', { name: item, exact: true }).click()
}

/** Walks with the Tab key until the focus is on what the selector names. */
export async function tabTo(page: Page, selector: string, most = 60): Promise<void> {
  for (let step = 0; step < most; step++) {
    await page.keyboard.press('Tab')
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return
  }
  throw new Error(`${most} presses of Tab do not reach ${selector}`)
}

/** Takes everything back, so that the next test finds the notebook as it was. */
export async function undoAll(page: Page): Promise<void> {
  const undo = page.getByRole('button', { name: 'Undo' })
  while (await undo.isEnabled()) await undo.click()
}

/** What has to come true soon. It is patient, because the machine may be busy with other tests. */
export function eventually<T>(read: () => T | Promise<T>, options: { timeout?: number; message?: string } = {}) {
  return expect.poll(read, { timeout: 8000, interval: 40, ...options })
}

/** Whether the page says that all is kept; what is still open in a cell is not entered yet. */
export async function isSaved(page: Page): Promise<boolean> {
  const open = await page.locator('.cell :is(.editor, .choices)').count()
  return (await page.locator('.toolbar .state').textContent()) === 'Saved' && open === 0
}

export async function saved(page: Page, options?: { timeout?: number }): Promise<void> {
  await eventually(() => isSaved(page), options).toBe(true)
}
