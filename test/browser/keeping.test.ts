import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, eventually, ready, shown } from './grid'
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
    await eventually(() => page.locator('.toolbar .state').textContent()).toBe('Saved')
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
    await eventually(() => page.locator('.toolbar .state').textContent()).toBe('Saved')
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
    await eventually(() => page.locator('.toolbar .state').textContent()).toBe('Saved')
    await enter(page, 'sample/ph', 0, '7.8')
    await eventually(() => page.locator('.toolbar .state').textContent()).toBe('Saved')
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
