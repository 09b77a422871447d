import { readFileSync } from 'node:fs'
import { unzipSync } from 'fflate'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { cell, ready, tabTo } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

test('a worksheet goes out by the keyboard: as a spreadsheet, as CSV, and on one page each', async () => {
  const { page, errors } = await open(browser)
  await ready(page)
  await cell(page, 'saturation/lsi').click()
  await page.locator('.toolbar a', { hasText: 'Print and export' }).focus()
  await page.keyboard.press('Enter')
  await page.locator('.out .paper').waitFor()
  expect(await page.locator('.out .paper').count()).toBe(1)
  expect(await page.locator('.out .paper thead th').allTextContents()).toEqual(
    expect.arrayContaining([expect.stringContaining('Saturation'), expect.stringContaining('A third drained')]),
  )

  await tabTo(page, '.out .ways li:nth-child(3) button')
  const [csv] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')])
  const text = readFileSync(await csv.path(), 'utf8')
  expect(text).toMatch(/^sample,date,ph,temperature \[°F\],/)
  expect(text.trimEnd().split('\n')).toHaveLength(4)

  await page.locator('.out select').selectOption('')
  await page.locator('.out .paper').nth(10).waitFor()
  await page.locator('.out .ways li:nth-child(2) button').focus()
  const [sheet] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')])
  expect(sheet.suggestedFilename()).toBe('Little Heron, the round pool.ods')
  expect(Object.keys(unzipSync(readFileSync(await sheet.path()))).sort()).toEqual([
    'META-INF/manifest.xml',
    'content.xml',
    'meta.xml',
    'mimetype',
    'styles.xml',
  ])

  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
  expect(pdf.match(/\/Type\s*\/Page(?![s\w])/g)).toHaveLength(11)
  expect(errors).toEqual([])
  await page.context().close()
})

test('a scenario that is left out is on no paper', async () => {
  const { page } = await open(browser, { path: '#out/sample' })
  await page.locator('.out .paper').waitFor()
  await page.getByRole('checkbox', { name: 'A third drained' }).press('Space')
  expect(await page.locator('.out .paper thead').textContent()).not.toContain('A third drained')
  for (const name of ['As tested', 'pH brought to 7.4']) await page.getByRole('checkbox', { name }).press('Space')
  expect(await page.locator('.out .paper').count()).toBe(0)
  expect(await page.locator('.out .warm').textContent()).toBe('Choose at least one scenario.')
  await page.context().close()
})
