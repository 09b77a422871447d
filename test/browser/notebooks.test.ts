import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { asNumber, cell, enter, eventually, ready, saved, scenarioNames, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const names = (page: Page) => page.locator('.lines .name').allTextContents()
const problems = (page: Page) => page.locator('.problems li').allTextContents()
const jsonFile = (name: string, content: unknown) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(typeof content === 'string' ? content : JSON.stringify(content)),
})

async function toNotebooks(page: Page): Promise<void> {
  await page.locator('.rail a[href="#notebooks"]').click()
  await page.locator('.lines .name').first().waitFor()
}

/** The file input of a button. */
const input = (page: Page, button: string) => page.locator(`input[type=file][aria-label="${button}"]`)

const OWN = {
  format: 'basinbook-worksheet',
  version: 1,
  id: 'my_desk',
  edition: 1,
  label: 'Desk notes',
  takes: ['ph', 'lsi'],
  groups: [
    {
      id: 'mine',
      label: 'Mine',
      rows: [
        { name: 'my_offset', label: 'Offset', unit: '1', input: 'number', accept: [-5, 5], decimals: 2 },
        { name: 'my_index', label: 'Index with offset', unit: '1', formula: 'lsi + my_offset', decimals: 2 },
      ],
    },
  ],
}

describe('notebooks', () => {
  test('new, listed, copied, opened, deleted after a question', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await toNotebooks(page)
    expect(await names(page)).toEqual(['Little Heron, the round pool'])
    await page.getByLabel('Name, such as the pool or its owner').fill('Alder Lane')
    await page.getByRole('button', { name: 'New notebook' }).click()
    await page.locator('.rail h1', { hasText: 'Alder Lane' }).waitFor()
    await enter(page, 'sample/ph', 0, '7.1')
    await toNotebooks(page)
    await eventually(() => names(page)).toEqual(['Alder Lane', 'Little Heron, the round pool'])

    await page.getByRole('button', { name: 'Copy Little Heron, the round pool' }).click()
    await eventually(() => names(page)).toEqual([
      'Little Heron, the round pool, copied',
      'Alder Lane',
      'Little Heron, the round pool',
    ])
    await page.getByRole('button', { name: 'Open Little Heron, the round pool, copied', exact: true }).click()
    await page.locator('.rail h1', { hasText: 'copied' }).waitFor()
    await enter(page, 'sample/ph', 0, '7.0')

    // the copy is a notebook of its own
    await toNotebooks(page)
    await page.getByRole('button', { name: 'Open Little Heron, the round pool', exact: true }).click()
    await eventually(() => page.locator('.rail h1').textContent()).toBe('Little Heron, the round pool')
    await eventually(() => shown(page, 'sample/ph')).toBe('7.8')

    await toNotebooks(page)
    const remove = page.getByRole('button', { name: 'Delete Little Heron, the round pool, copied' })
    await remove.click()
    await page.getByRole('dialog').getByRole('button', { name: 'Keep it' }).click()
    expect(await names(page)).toHaveLength(3)
    await remove.click()
    await page.getByRole('dialog').getByRole('button', { name: 'Delete' }).click()
    await eventually(() => names(page)).toHaveLength(2)
    expect(await names(page)).not.toContain('Little Heron, the round pool, copied')
    // the one that is open goes too, and another takes its place
    await page.getByRole('button', { name: 'Delete Little Heron, the round pool' }).click()
    await page.getByRole('dialog').getByRole('button', { name: 'Delete' }).click()
    await page.locator('.rail h1', { hasText: 'Alder Lane' }).waitFor()
    await page.reload()
    await page.locator('.rail h1', { hasText: 'Alder Lane' }).waitFor()
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('saved to a file and opened again, in another browser, with what was typed', async () => {
    const { page } = await open(browser)
    await ready(page)
    await enter(page, 'sample/temperature', 1, '15 °C')
    await toNotebooks(page)
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save to a file' }).click()
    const file = await download
    expect(file.suggestedFilename()).toBe('Little Heron, the round pool.basinbook.json')
    const path = await file.path()
    const text = readFileSync(path, 'utf8')
    expect(JSON.parse(text)).toMatchObject({ format: 'basinbook-notebook', version: 3 })
    await page.context().close()

    const other = await open(browser, { path: '#notebooks' })
    await input(other.page, 'Open a file').setInputFiles({
      name: file.suggestedFilename(),
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    })
    await cell(other.page, 'sample/temperature').waitFor()
    await eventually(() => shown(other.page, 'sample/temperature', 1)).toBe('59.0')
    expect(await scenarioNames(other.page)).toEqual(['As tested', 'A third drained', 'pH brought to 7.4'])
    // the example was there under the same id already: both are kept
    await toNotebooks(other.page)
    expect(await names(other.page)).toHaveLength(2)
    expect(other.errors).toEqual([])
    await other.page.context().close()
  })

  test.each([
    ['no JSON', 'sadly, no notebook', /torn\.json/],
    ['another format', { format: 'something-else', version: 1 }, /torn\.json/],
    ['a newer version', { format: 'basinbook-notebook', version: 99 }, /newer|99/],
    ['a missing part', { format: 'basinbook-notebook', version: 1, id: 'a', name: 'b' }, /torn\.json/],
  ])('a file with %s is refused with a reason, and what was open stays', async (_, content, why) => {
    const { page } = await open(browser, { path: '#notebooks' })
    await page.locator('.lines .name').first().waitFor()
    await input(page, 'Open a file').setInputFiles(jsonFile('torn.json', content))
    await eventually(() => problems(page)).not.toEqual([])
    expect((await problems(page)).join(' ')).toMatch(why)
    expect(await names(page)).toEqual(['Little Heron, the round pool'])
    expect(await page.locator('.rail h1').textContent()).toBe('Little Heron, the round pool')
    await page.context().close()
  })

  test('a worksheet of one’s own is loaded, computes, is kept, and is taken out again', async () => {
    const { page, errors } = await open(browser, { path: '#notebooks' })
    await page.locator('.lines .name').first().waitFor()
    await input(page, 'Load a worksheet').setInputFiles(jsonFile('desk.json', OWN))
    await eventually(() => names(page)).toContain('Desk notes')
    expect(await problems(page)).toEqual([])
    await page.locator('.rail a[href="#worksheets/my_desk"]').click()
    await enter(page, 'my_desk/my_offset', 0, '0.25')
    const index = asNumber(await shown(page, 'saturation/lsi'))
    await eventually(async () => asNumber(await shown(page, 'my_desk/my_index'))).toBeCloseTo(index + 0.25, 1)
    await saved(page)
    await page.reload()
    await eventually(async () => asNumber(await shown(page, 'my_desk/my_index'))).toBeCloseTo(index + 0.25, 1)
    await toNotebooks(page)
    await page.getByRole('button', { name: 'Remove “Desk notes”' }).click()
    await eventually(() => names(page)).not.toContain('Desk notes')
    expect(await page.locator('.rail a[href="#worksheets/my_desk"]').count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('a bad one is refused with file, path and reason', async () => {
    const { page } = await open(browser, { path: '#notebooks' })
    await page.locator('.lines .name').first().waitFor()
    const [group] = OWN.groups
    const withRow = (row: Record<string, unknown>) => ({ ...OWN, groups: [{ ...group, rows: [row] }] })
    const row = { name: 'my_index', label: 'Index', unit: '1', formula: 'lsi + 1', decimals: 2 }
    for (const [definition, why] of [
      [withRow({ ...row, formula: 'lsi + ghost' }), /bad\.json, groups\[0\]\.rows\[0\]\.formula: “ghost”/],
      [withRow({ ...row, formula: 'my_index + 1' }), /bad\.json.*circle/],
      [withRow({ ...row, formula: 'SHOUT(lsi)' }), /bad\.json.*“SHOUT”.*no function/],
      [withRow({ ...row, unit: 'furlong' }), /bad\.json.*“furlong”/],
      [withRow({ ...row, name: 'lsi' }), /bad\.json.*“lsi” comes with the app/],
      [withRow({ ...row, decimals: 'two' }), /bad\.json.*decimals.*number/],
    ] as const) {
      await input(page, 'Load a worksheet').setInputFiles(jsonFile('bad.json', definition))
      await eventually(async () => (await problems(page)).join(' ')).toMatch(why)
      expect(await names(page)).toEqual(['Little Heron, the round pool'])
    }
    await page.context().close()
  })
})
