import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, eventually, ready, saved, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

describe('earlier states', () => {
  test('are listed with what was changed, and gone back to by the keyboard; undo brings the present back', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    const before = await shown(page, 'sample/ph')
    await enter(page, 'sample/ph', 0, '7.9')
    await saved(page)
    await page.locator('.rail a[href="#keeping"]').click()
    const lines = page.locator('.keeping .lines > li')
    await eventually(() => lines.first().textContent()).toMatch(/Now.*pH in “.*”/)
    await eventually(() => lines.nth(1).textContent()).toContain('The first state that is kept.')

    await page
      .getByRole('button', { name: /^Go back to the state of/ })
      .first()
      .focus()
    await page.keyboard.press('Enter')
    await eventually(() => lines.count()).toBe(3)
    await eventually(() => lines.nth(1).textContent()).toMatch(/pH in “.*”/)
    await page.locator('.rail a[href="#worksheets/sample"]').click()
    await eventually(() => shown(page, 'sample/ph')).toBe(before)
    await page.getByRole('button', { name: 'Undo' }).click()
    await eventually(() => shown(page, 'sample/ph')).toBe('7.9')
    await saved(page)
    await page.reload()
    await ready(page)
    expect(await shown(page, 'sample/ph')).toBe('7.9')
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('of a damaged notebook are a way out of it', async () => {
    const { page } = await open(browser)
    await ready(page)
    await enter(page, 'sample/ph', 0, '7.9')
    await saved(page)
    await enter(page, 'sample/ph', 0, '7.8')
    await saved(page)
    const name = await page.locator('.rail h1').textContent()
    await page.evaluate(async () => {
      const opening = indexedDB.open('basinbook')
      const database = await new Promise<IDBDatabase>((done) => {
        opening.onsuccess = () => done(opening.result)
      })
      const writing = database.transaction('log', 'readwrite')
      const log = writing.objectStore('log')
      const keys = log.getAllKeys()
      keys.onsuccess = () =>
        log.put({
          ...Object.fromEntries(
            [
              ['notebook', 0],
              ['seq', 1],
            ].map(([field, at]) => [field, (keys.result.at(-1) as IDBValidKey[])[at as number]]),
          ),
          format: 2,
          edit: 'no edit',
        })
      await new Promise((done) => {
        writing.oncomplete = done
      })
      database.close()
    })
    await page.reload()
    const banner = page.locator('.banner', { hasText: 'cannot be read' })
    await banner.waitFor()
    await banner.getByRole('link').click()
    await page.getByText('All that can be read: 1 of 2 changes').waitFor()
    await page.getByRole('button', { name: 'Open as a copy', exact: true }).click()
    await eventually(() => page.locator('.rail h1').textContent()).toBe(`${name}, as far as it can be read`)
    await eventually(() => shown(page, 'sample/ph')).toBe('7.9')
    await page.context().close()
  })
})

describe('a backup of everything', () => {
  const folder = mkdtempSync(join(tmpdir(), 'basinbook-backup-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  const names = (page: Page) => page.locator('.lines .name').allTextContents()
  const choose = (page: Page, path: string) => page.locator('input[type=file][accept^=".gz"]').setInputFiles(path)

  test('is saved, taken in by another browser, and refused where it is not as it was written', async () => {
    const first = await open(browser)
    await ready(first.page)
    await enter(first.page, 'sample/ph', 0, '7.9')
    await saved(first.page)
    await first.page.goto(`${first.page.url().split('#')[0]}#keeping`)
    const download = first.page.waitForEvent('download')
    await first.page.getByRole('button', { name: 'Save a backup' }).click()
    const backup = join(folder, 'all.backup.gz')
    const file = await download
    expect(file.suggestedFilename()).toMatch(/^basinbook-[\dT-]+\.backup\.gz$/)
    await file.saveAs(backup)
    await eventually(() => first.page.locator('.said').textContent()).toContain('one notebook, one earlier state')

    // beside what is here: the example of the same id, untouched by any edit
    const second = await open(browser)
    await ready(second.page)
    await second.page.goto(`${second.page.url().split('#')[0]}#keeping`)
    await choose(second.page, backup)
    await second.page.getByText('Every record is as it was written.').waitFor()
    await second.page.getByRole('button', { name: 'Take it in', exact: true }).click()
    await eventually(() => second.page.locator('.said').textContent()).toContain('1 came under another name')
    await second.page.goto(`${second.page.url().split('#')[0]}#notebooks`)
    await eventually(async () => (await names(second.page)).some((name) => name.includes(', from the backup of'))).toBe(
      true,
    )

    const broken = join(folder, 'broken.backup.gz')
    writeFileSync(broken, readFileSync(backup).subarray(0, -30))
    await second.page.goto(`${second.page.url().split('#')[0]}#keeping`)
    await choose(second.page, broken)
    await second.page.getByText('cut off or damaged').waitFor()
    await choose(second.page, 'examples/lab-forty.csv')
    await second.page.getByText('is no backup of Basinbook').waitFor()
    expect([...first.errors, ...second.errors]).toEqual([])
    await first.page.context().close()
    await second.page.context().close()
  })
})
