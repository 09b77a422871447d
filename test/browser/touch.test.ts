import type { Browser, CDPSession, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { cell, editor, eventually, ready, shown } from './grid'
import { launch } from './open'

let browser: Browser
let page: Page
let fingers: CDPSession
const errors: string[] = []
beforeAll(async () => {
  browser = await launch()
  const context = await browser.newContext({
    viewport: { width: 820, height: 1100 },
    hasTouch: true,
    isMobile: true,
    locale: 'en-US',
    serviceWorkers: 'block',
  })
  page = await context.newPage()
  page.on('pageerror', (error) => errors.push(String(error)))
  await page.goto(inject('address'))
  await ready(page)
  fingers = await context.newCDPSession(page)
})
afterAll(() => browser.close())

const marked = () => page.locator('.cell[aria-selected=true]')

/** A finger that is put down, moved in steps and lifted, as the browser itself sees one. */
async function swipe(from: { x: number; y: number }, by: { x: number; y: number }): Promise<void> {
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', part: number) =>
    fingers.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: from.x + by.x * part, y: from.y + by.y * part }],
    })
  await touch('touchStart', 0)
  for (let step = 1; step <= 8; step++) {
    await touch('touchMove', step / 8)
    await page.waitForTimeout(16)
  }
  await touch('touchEnd', 1)
}

test('a tap selects a cell; a tap on the selected one opens it, and what is typed is entered by a tap elsewhere', async () => {
  await cell(page, 'sample/ph').scrollIntoViewIfNeeded()
  await cell(page, 'sample/ph').tap()
  expect(await marked().evaluateAll((all) => all.map(({ id }) => id.split('@')[0]))).toEqual(['sample/ph'])
  expect(await editor(page).count()).toBe(0)
  await cell(page, 'sample/ph').tap()
  await editor(page).waitFor()
  await editor(page).fill('7.3')
  await cell(page, 'sample/temperature').tap()
  await eventually(() => shown(page, 'sample/ph')).toBe('7.3')
  await eventually(() => editor(page).count()).toBe(0)
  await page.getByRole('button', { name: 'Undo' }).tap()
  await eventually(() => shown(page, 'sample/ph')).not.toBe('7.3')
})

test('two taps one after the other open a cell as well', async () => {
  await cell(page, 'sample/total_alkalinity').scrollIntoViewIfNeeded()
  const box = await cell(page, 'sample/total_alkalinity').boundingBox()
  if (!box) throw new Error('no cell')
  await page.touchscreen.tap(box.x + 20, box.y + 12)
  await page.touchscreen.tap(box.x + 20, box.y + 12)
  await editor(page).waitFor()
  await page.keyboard.press('Escape')
  await eventually(() => editor(page).count()).toBe(0)
})

test('a finger that scrolls the page selects no range, and opens nothing', async () => {
  await cell(page, 'sample/ph').evaluate((element) => element.scrollIntoView({ block: 'center' }))
  const box = await cell(page, 'sample/ph').boundingBox()
  if (!box) throw new Error('no cell')
  const top = () => page.locator('#page').evaluate(({ scrollTop }) => scrollTop)
  const before = await top()
  await swipe({ x: box.x + 30, y: box.y + 12 }, { x: 0, y: -300 })
  await eventually(async () => Math.abs((await top()) - before)).toBeGreaterThan(100)
  expect(await marked().count()).toBeLessThanOrEqual(1)
  expect(await editor(page).count()).toBe(0)
  expect(errors).toEqual([])
})
