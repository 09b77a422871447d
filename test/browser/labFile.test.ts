import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { asNumber, eventually, ready, scenarioNames, shown } from './grid'
import { launch, open } from './open'

const FILE = resolve('examples/lab-forty.csv')

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** How the columns of the preview stand: heading, what it is read as, unit. */
const columns = (page: Page) =>
  page.locator('table.columns tbody tr').evaluateAll((rows) =>
    rows.map((row) => {
      const [meaning, unit] = [...row.querySelectorAll('select')].map((choice) => choice.selectedOptions[0]?.text)
      return [row.querySelector('th')?.textContent, meaning, unit ?? ''].join(' | ')
    }),
  )

/** What examples/README.md says of the file: forty samples and an empty row, of which seven cannot be read. */
async function expectPreview(page: Page): Promise<void> {
  await page.locator('.account').waitFor()
  await eventually(() => page.locator('.account').textContent()).toBe('41 rows: 33 samples, 7 refused, 1 skipped.')
  await eventually(() => columns(page)).toEqual([
    'Sample | Sample | ',
    'Date | Date | ',
    'Place | Place | ',
    'pH | pH | no unit',
    'Water temp (°C) | Temperature | °C',
    'Free Cl (mg/L) | Free chlorine | mg/L Cl₂',
    'Total Cl (mg/L) | Total chlorine | mg/L Cl₂',
    'TA (mmol/L) | Total alkalinity | mmol/L HCO₃',
    'Ca hardness (°dH) | Calcium hardness | °dH',
    'CYA (mg/L) | Cyanuric acid | mg/L',
    'Salt (g/L) | Salt | g/L NaCl',
    'Conductivity (µS/cm at 25 °C) | Conductivity | µS/cm',
    'Remarks | a note, not read as a quantity | ',
    'Lab | a note, not read as a quantity | ',
  ])
  const refused = await page.locator('.problems li').allTextContents()
  // by sample TB-009, 013, 021, 027, 030, 036, 040: header 1, the empty row after TB-018 counted
  const expected = [
    [10, 'pH', '75'],
    [14, 'Ca hardness', 'unreadable'],
    [23, 'pH', '7,4?'],
    [29, 'TA', '-1,60'],
    [32, 'Conductivity', '#####'],
    [38, 'Ca hardness', 'siehe Rückseite'],
    [42, 'Salt', '0.95'],
  ] as const
  expect(refused).toHaveLength(expected.length)
  for (const [index, [row, column, found]] of expected.entries()) {
    expect(refused[index]).toMatch(new RegExp(`row ${row}\\b`, 'i'))
    expect(refused[index]).toContain(column)
    expect(refused[index]).toContain(found)
  }
}

describe('a lab file', () => {
  test('by the button: how it was understood, what was refused and why, and the chosen rows become scenarios', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    const chooser = page.waitForEvent('filechooser')
    await page.getByRole('button', { name: 'Choose a file' }).click()
    await (await chooser).setFiles(FILE)
    await expectPreview(page)

    await page.getByRole('checkbox', { name: 'Choose row 5, TB-004' }).check()
    await page.getByRole('checkbox', { name: 'Choose row 35, TB-033' }).check()
    await page.getByRole('button', { name: /^Take 2 samples in/ }).click()
    await ready(page)
    await eventually(() => scenarioNames(page)).toHaveLength(5)
    expect((await scenarioNames(page)).slice(3).join(' ')).toMatch(/TB-004.*TB-033/)

    // TB-004: 24,0 °C; 2,37 mmol/L × 50.04; 18,2 °dH × 17.848; 4,09 g/L
    await eventually(() => shown(page, 'sample/ph', 3)).toBe('7.79')
    expect(asNumber(await shown(page, 'sample/temperature', 3))).toBeCloseTo(75.2, 9)
    expect(Math.abs(asNumber(await shown(page, 'sample/total_alkalinity', 3)) - 118.6)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(asNumber(await shown(page, 'sample/calcium_hardness', 3)) - 324.8)).toBeLessThanOrEqual(0.5)
    expect(asNumber(await shown(page, 'sample/salt', 3))).toBeCloseTo(4090, 0)
    expect(asNumber(await shown(page, 'sample/cyanuric_acid', 3))).toBe(63)
    await eventually(() => shown(page, 'saturation/lsi', 3)).toMatch(/^−?\d\.\d\d$/)
    // a reading of zero is a reading
    expect(asNumber(await shown(page, 'sample/free_chlorine', 4))).toBe(0)
    // other pools: nothing of the example's pool is taken over
    expect(await shown(page, 'pool/volume', 3)).not.toMatch(/\d/)

    await page.getByRole('button', { name: 'Undo' }).click()
    await eventually(() => scenarioNames(page)).toHaveLength(3)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('by dropping it on any page: the same preview, and a column can be read otherwise', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    const bytes = readFileSync(FILE).toString('base64')
    const data = await page.evaluateHandle((base64) => {
      const transfer = new DataTransfer()
      const content = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0))
      transfer.items.add(new File([content], 'lab-forty.csv', { type: 'text/csv' }))
      return transfer
    }, bytes)
    await page.dispatchEvent('.page', 'dragover', { dataTransfer: data })
    await page.dispatchEvent('.page', 'drop', { dataTransfer: data })
    await expectPreview(page)

    await page.getByLabel('What “Salt (g/L)” is read as').selectOption({ label: 'a note, not read as a quantity' })
    // the salt of TB-040 was what its row was refused for
    await eventually(() => page.locator('.account').textContent()).toBe('41 rows: 34 samples, 6 refused, 1 skipped.')
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('what the file leaves open is asked, and nothing is taken in before', async () => {
    const { page } = await open(browser, { path: '#lab' })
    await page.locator('input[type=file]').setInputFiles({
      name: 'mixed.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('sample;date;pH;salt (g/L)\nA;01/02/2026;7,4;3,125\nB;03/02/2026;7,5;3,250\n'),
    })
    await page.locator('.questions').waitFor()
    expect(await page.getByRole('button', { name: /^Take/ }).count()).toBe(0)
    await page.getByRole('radio', { name: 'day, month, year' }).click()
    await page.locator('table.samples tbody tr').nth(1).waitFor()
    expect(await page.locator('.account').textContent()).toBe('2 rows: 2 samples, 0 refused, 0 skipped.')
    await page.context().close()
  })

  test('a file that is no table is refused in a sentence', async () => {
    const { page } = await open(browser, { path: '#lab' })
    await page.locator('input[type=file]').setInputFiles({
      name: 'picture.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 0, 255, 1, 2]),
    })
    await eventually(() => page.locator('.problems').allTextContents()).not.toEqual([])
    expect(await page.locator('table').count()).toBe(0)
    await page.context().close()
  })
})
