import { existsSync, mkdirSync, statSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { eventually, ready, select, shown } from './grid'
import { launch, open } from './open'

const SHOTS = resolve('test/browser/shots')
const PICTURE = resolve('test/browser/page.png')

let browser: Browser
beforeAll(async () => {
  mkdirSync(SHOTS, { recursive: true })
  browser = await launch()
})
afterAll(() => browser.close())

/** The picture of the README is taken when there is none yet, or when PICTURE=1 asks for a new one. */
test('the page as the README shows it: the saturation worksheet of the invented pool, its index explained', async () => {
  const { page } = await open(browser)
  await ready(page)
  await page.reload()
  await ready(page)
  await page.evaluate(() => document.fonts.ready)
  await page.locator('.rail a[href="#worksheets/saturation"]').click()
  await select(page, 'saturation/lsi')
  await page.locator('#margin math').first().waitFor()
  await eventually(() => shown(page, 'saturation/lsi', 2)).toMatch(/\d/)
  const taken = process.env.PICTURE === '1' || !existsSync(PICTURE) ? PICTURE : resolve(SHOTS, 'page.png')
  await page.screenshot({ path: taken, animations: 'disabled' })
  expect(statSync(taken).size).toBeLessThan(300_000)
  expect(statSync(taken).size).toBeGreaterThan(30_000)
  await page.context().close()
})

test.each([
  [1440, 900],
  [1024, 768],
  [768, 1024],
  [390, 844],
])('%i by %i: no text of the page is cut off but scenario notes and what is scrolled', async (width, height) => {
  const { page } = await open(browser, { width, height })
  await ready(page)
  for (const worksheet of ['pool', 'saturation', 'stabilizer', 'ph_alkalinity', 'generator']) {
    await page.evaluate((id) => document.getElementById(`worksheet-${id}`)?.scrollIntoView(), worksheet)
    await page.waitForTimeout(100)
    const cut = await page.evaluate(
      (id) =>
        [
          ...document.querySelectorAll(
            `#worksheet-${id} :is(.quantity, .plain, .whole, .fraction, .unit, h2, header p)`,
          ),
        ]
          .filter((text) => text.scrollWidth > text.clientWidth + 1 && getComputedStyle(text).display !== 'inline')
          .map((text) => `${text.className}: ${text.textContent}`),
      worksheet,
    )
    expect(cut, worksheet).toEqual([])
  }
  await page.screenshot({ path: resolve(SHOTS, `worksheets-${width}.png`) })
  await page.context().close()
})
