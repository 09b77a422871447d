import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { cell, eventually, type RowName, ready } from './grid'
import { launch, open } from './open'

const SIZE = { width: 700, height: 640 }

let browser: Browser
let page: Page
let errors: string[]
beforeAll(async () => {
  browser = await launch()
  const opened = await open(browser, SIZE)
  page = opened.page
  errors = opened.errors
  await ready(page)
  await page.locator('.cell[id^="saturation/lsi@"]').nth(2).locator('.whole').waitFor()
})
afterAll(() => browser.close())
beforeEach(async () => {
  await page.keyboard.press('Escape')
})

const scrolled = () =>
  page.locator('#page').evaluate(({ scrollLeft, scrollTop }) => ({ left: scrollLeft, top: scrollTop }))
const marked = () => page.locator('.cell[aria-selected=true]').count()

/** Presses on a cell in the middle of what is seen, and draws a little, so that a range is begun. */
async function begin(row: RowName, column = 0): Promise<void> {
  await cell(page, row, column).evaluate((element) => element.scrollIntoView({ block: 'center', inline: 'nearest' }))
  const box = await cell(page, row, column).boundingBox()
  if (!box) throw new Error('no cell')
  await page.mouse.move(box.x + 20, box.y + 10)
  await page.mouse.down()
}

/** How far the page goes on by itself in so many milliseconds. */
async function moves(milliseconds: number): Promise<number> {
  const before = await scrolled()
  await page.waitForTimeout(milliseconds)
  const after = await scrolled()
  return after.top - before.top
}

test('a range that is drawn past the lower edge scrolls on while the mouse rests, faster further out, and stops on release', async () => {
  await begin('sample/ph')
  // a little past the place where what is in sight ends
  const edge = await page.locator('#page').evaluate((element) => {
    const { scrollPaddingBottom } = getComputedStyle(element)
    return element.getBoundingClientRect().bottom - Number.parseFloat(scrollPaddingBottom)
  })
  await page.mouse.move(500, edge + 10, { steps: 4 })
  await eventually(marked).toBeGreaterThan(2)
  const near = await moves(500)
  expect(near).toBeGreaterThan(5)
  await page.mouse.move(500, SIZE.height + 60)
  await page.waitForTimeout(100)
  const far = await moves(500)
  expect(far).toBeGreaterThan(near * 2)
  await page.mouse.up()
  const many = await marked()
  expect(many).toBeGreaterThan(12)
  // the range ends in sight, where it was let go
  const last = await page.locator('.cell[aria-selected=true]').last().boundingBox()
  expect(last?.y ?? 0).toBeGreaterThan(100)
  expect(last?.y ?? SIZE.height).toBeLessThan(SIZE.height)
  expect(await moves(200)).toBe(0)
  expect(await marked()).toBe(many)
  await eventually(() => page.locator('[aria-live=polite]').first().textContent()).toMatch(/rows by .* selected/)
})

test('and upwards, past what is stuck to the upper edge', async () => {
  await begin('saturation/lsi')
  await page.mouse.move(500, 60, { steps: 4 })
  await page.mouse.move(500, -40)
  const from = (await scrolled()).top
  await eventually(async () => from - (await scrolled()).top).toBeGreaterThan(200)
  await page.mouse.up()
  expect(await marked()).toBeGreaterThan(10)
})

test('and sideways, both ways', async () => {
  await begin('sample/ph', 0)
  const start = (await scrolled()).left
  await page.mouse.move(SIZE.width - 30, 320, { steps: 4 })
  await page.mouse.move(SIZE.width + 40, 320)
  await eventually(async () => (await scrolled()).left - start).toBeGreaterThan(20)
  await page.mouse.move(20, 320)
  await eventually(async () => (await scrolled()).left).toBe(0)
  await page.mouse.up()
})

test('Escape ends it and takes the range back; a cancelled pointer ends it and keeps the range', async () => {
  await begin('sample/ph')
  await page.mouse.move(500, SIZE.height + 20, { steps: 4 })
  await eventually(marked).toBeGreaterThan(4)
  await page.keyboard.press('Escape')
  await eventually(marked).toBe(1)
  expect(await moves(200)).toBe(0)
  // the button is still held
  await page.mouse.move(500, SIZE.height - 120)
  await page.mouse.move(500, SIZE.height + 30)
  expect(await moves(200)).toBe(0)
  expect(await marked()).toBe(1)
  await page.mouse.up()

  await begin('sample/ph')
  await page.mouse.move(500, SIZE.height + 20, { steps: 4 })
  await eventually(marked).toBeGreaterThan(4)
  await page.evaluate(() => dispatchEvent(new PointerEvent('pointercancel')))
  expect(await moves(200)).toBe(0)
  expect(await marked()).toBeGreaterThan(4)
  await page.mouse.up()
})

test('a press on a cell at the very edge scrolls nothing', async () => {
  // half a line under the edge, where scrolling would begin
  const y = await cell(page, 'sample/ph').evaluate((element) => {
    const scroller = document.getElementById('page')
    const edge = scroller?.getBoundingClientRect().bottom ?? 0
    scroller?.scrollBy(0, element.getBoundingClientRect().bottom - edge - 4)
    return edge - 10
  })
  const box = await cell(page, 'sample/ph').boundingBox()
  if (!box) throw new Error('no cell')
  await page.mouse.move(box.x + 20, y)
  await page.mouse.down()
  await page.waitForTimeout(50)
  const before = (await scrolled()).top
  await page.mouse.move(box.x + 22, y + 3)
  await page.waitForTimeout(150)
  expect((await scrolled()).top).toBe(before)
  expect(await marked()).toBe(1)
  await page.mouse.up()
  expect(errors).toEqual([])
})
