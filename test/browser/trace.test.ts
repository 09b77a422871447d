import { resolve } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { cell, enter, eventually, ready, select, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

test('assumptions are marked, listed with what their formula would give, followed by the others, and taken back', async () => {
  const { page, errors } = await open(browser)
  await ready(page)
  const formula = await shown(page, 'pool/volume', 0)
  await enter(page, 'pool/volume', 0, '6000')
  await enter(page, 'saturation/lsi', 1, '0.4')
  await eventually(() => shown(page, 'pool/volume', 2)).toBe('6000')
  expect(await cell(page, 'pool/volume', 0).getAttribute('class')).toContain('assumed')
  expect(await cell(page, 'pool/volume', 0).locator('.unseen').last().textContent()).toContain('assumed')

  await page.locator('.rail a', { hasText: 'Assumptions' }).press('Enter')
  const rows = page.locator('.traced tbody tr')
  await eventually(() => rows.count()).toBe(2)
  await eventually(() => rows.nth(0).textContent()).toContain(`${formula} US gal`)
  expect(await rows.nth(0).textContent()).toContain('followed by 2 scenarios')
  expect(await rows.nth(1).textContent()).toContain('A third drained')

  await rows
    .nth(1)
    .getByRole('button', { name: /^Remove/ })
    .press('Enter')
  await eventually(() => rows.count()).toBe(1)
  await page.keyboard.press('Control+z')
  await eventually(() => rows.count()).toBe(2)
  await page.getByRole('button', { name: 'Remove all' }).press('Enter')
  await eventually(() => page.locator('.traced').textContent()).toContain('Nothing is assumed')
  await page.keyboard.press('Control+z')
  await eventually(() => rows.count()).toBe(2)

  await page.evaluate(() => {
    location.hash = 'out/pool'
  })
  await eventually(() => page.locator('.out .paper').textContent()).toContain('6000 †')
  await page.evaluate(() => {
    location.hash = 'plan'
  })
  await eventually(() => page.locator('.assumed-note').textContent()).toContain('Volume 6000 US gal')
  expect(errors).toEqual([])
  await page.context().close()
})

test('a number is followed back to its readings, across scenarios, and forward to what uses it, by the keyboard', async () => {
  const { page, errors } = await open(browser)
  await ready(page)
  await select(page, 'salt/salt_mass', 1)
  await page.keyboard.press('?')
  await page.locator('#margin a', { hasText: 'Trace' }).press('Enter')
  await page.locator('.traced h1').waitFor()
  expect(await page.locator('.traced h1').textContent()).toBe('Salt to add')
  const back = page.locator('.traced .step-body.root').first()
  expect(await back.locator('> .code').first().textContent()).toMatch(/^salt_mass = /)
  expect(await back.locator('> .code').nth(1).textContent()).toMatch(/^= .*\d+(\.\d+)? m³/)

  const volume = back.getByRole('button', { name: /Volume/ }).first()
  await volume.press('Enter')
  expect(await volume.getAttribute('aria-expanded')).toBe('true')
  // The volume is worked out from the shape, which this scenario has from the baseline.
  await back
    .getByRole('button', { name: /Volume by shape/ })
    .first()
    .press('Enter')
  await back
    .getByRole('button', { name: /Diameter/ })
    .first()
    .press('Enter')
  const baseline = back.getByRole('button', { name: 'Diameter in “As tested”' }).first()
  await baseline.press('Enter')
  await eventually(() => back.textContent()).toContain('Entered here')

  const forward = page.locator('.traced .step-body.root').last()
  await forward.getByRole('button').first().press('Space')
  expect(await forward.getByRole('button').first().getAttribute('aria-expanded')).toBe('true')
  await page.getByRole('button', { name: 'Show it in its worksheet' }).press('Enter')
  await eventually(() => page.evaluate(() => document.activeElement?.id ?? '')).toMatch(/^salt\/salt_mass@/)
  expect(errors).toEqual([])
  await page.context().close()
})

test('a reading of a lab file is followed to its file, row and column', async () => {
  const { page, errors } = await open(browser, { path: '#lab' })
  await page.locator('input[type=file]').setInputFiles(resolve('examples/lab-forty.csv'))
  await page.getByRole('checkbox', { name: 'Choose row 5, TB-004' }).check()
  await page.getByRole('button', { name: /^Take one sample in/ }).click()
  await ready(page)
  await eventually(() => shown(page, 'sample/total_alkalinity', 3)).not.toBe('')
  await select(page, 'sample/total_alkalinity', 3)
  await page.locator('#margin a', { hasText: 'Trace' }).press('Enter')
  const back = page.locator('.traced .step-body.root').first()
  await eventually(() => back.textContent()).toMatch(
    /TB-004.*Written as 2\.37 .*lab-forty\.csv, row 5\..*headed “TA \(mmol\/L\)”/,
  )
  expect(errors).toEqual([])
  await page.context().close()
})
