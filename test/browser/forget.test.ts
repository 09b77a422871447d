import { resolve } from 'node:path'
import axe from 'axe-core'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, eventually, ready, saved } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const NAME = 'Quillfeather Basin'
const PLACE = 'Vantongeren, Gull Lane'
const NOTE = 'Ask for Ottoline at the gate'
const SECRETS = ['Quillfeather', 'Vantongeren', 'Ottoline']

const SHOTS = resolve('test/browser/shots')

/** What a checker of accessibility finds in a part of the page. */
async function faults(page: Page, part: string): Promise<string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async (selector) => {
    const { axe: checker } = globalThis as unknown as { axe: typeof axe }
    const { violations } = await checker.run(document.querySelector(selector) ?? document)
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)
  }, part)
}

/** All that the browser keeps for the page: every object store with its files, and the small things. */
function everything(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const told = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result)
        request.onerror = () => failed(request.error)
      })
    const texts: string[] = [JSON.stringify({ ...localStorage }), JSON.stringify({ ...sessionStorage })]
    const files: Blob[] = []
    const decoder = new TextDecoder()
    for (const { name } of await indexedDB.databases()) {
      const database = await told(indexedDB.open(name ?? ''))
      for (const store of database.objectStoreNames) {
        const all = await told(database.transaction(store).objectStore(store).getAll())
        texts.push(
          JSON.stringify(all, (_, part) => {
            if (part instanceof Blob) files.push(part)
            return part instanceof Uint8Array ? decoder.decode(part) : part
          }),
        )
      }
      database.close()
    }
    for (const file of files) texts.push(await file.text())
    return texts.join('\n')
  })
}

async function startNotebook(context: BrowserContext | undefined): Promise<Page> {
  const { page } = await open(browser, { path: '#notebooks', context })
  await page.getByLabel('Name, such as the pool or its owner').fill(NAME)
  await page.getByRole('button', { name: 'New notebook' }).click()
  await page.locator('.rail h1', { hasText: NAME }).waitFor()
  await page.locator('.rail a[href="#notebooks"]').click()
  await page.getByLabel('Where the pool stands').fill(PLACE)
  await page.getByLabel('A line or two about it').fill(NOTE)
  await page.keyboard.press('Tab')
  return page
}

describe('deleting a notebook for good', () => {
  test('leaves none of its words in any store, the small things, a lab file’s rows or another tab', async () => {
    const page = await startNotebook(undefined)
    const context = page.context()
    // a lab file with one row of it and one of somebody else's
    await page.goto(`${page.url().split('#')[0]}#lab`)
    await page.locator('input[type=file]').setInputFiles({
      name: 'week.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        `Sample,Place,pH\n${NAME},"${PLACE}",7.4\nElse,Other Street,7.6\nBroken,"${PLACE}",seventy\n`,
      ),
    })
    await page.locator('.account').waitFor()
    await page.getByRole('button', { name: 'Keep in this browser' }).click()
    await page.locator('.facts').getByText('Kept in this browser.').waitFor()
    await page.locator('table.samples tbody input[type=checkbox]').first().check()
    await page.getByRole('button', { name: /^Take one sample in/ }).click()
    await ready(page)
    await saved(page)

    const download = page.waitForEvent('download')
    await page.locator('.rail a[href="#notebooks"]').click()
    await page.getByRole('button', { name: 'Save to a file' }).click()
    await download

    // another tab has it open, with something to undo
    const other = (await open(browser, { context })).page
    await other.locator('.rail h1', { hasText: NAME }).waitFor()

    const before = await everything(page)
    for (const secret of SECRETS) expect(before).toContain(secret)

    await page.getByRole('button', { name: `Delete ${NAME}` }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByText('The lab file week.csv has one row of this pool').waitFor()
    await eventually(() => dialog.locator('.files').textContent()).toMatch(
      /Quillfeather Basin\.basinbook\.json, saved .*SHA-256 [0-9a-f]{12}…/,
    )
    await page.screenshot({ path: resolve(SHOTS, 'forget.png') })
    expect(await faults(page, 'dialog')).toEqual([])
    await dialog.getByRole('button', { name: 'Delete' }).click()
    await page.locator('.rail h1', { hasText: 'Little Heron' }).waitFor()

    const after = await everything(page)
    for (const secret of SECRETS) expect(after).not.toContain(secret)
    // somebody else's row stays, and the file as it was sent, which had both, is gone
    expect(after).toContain('Else')
    expect(after).toContain('week.csv')

    await other.locator('.rail h1', { hasText: 'Little Heron' }).waitFor()
    await other.locator('.rail a[href="#worksheets/sample"]').click()
    await ready(other)
    await other.keyboard.press('Control+z')
    expect(await other.content()).not.toContain('Quillfeather')
    const last = await everything(page)
    for (const secret of SECRETS) expect(last).not.toContain(secret)
    await context.close()
  })
})

describe('many notebooks', () => {
  test('are found as one types, drawn as they come into sight, and opened by Enter', async () => {
    const page = await startNotebook(undefined)
    await page.locator('.rail a[href="#worksheets/sample"]').click()
    await enter(page, 'sample/ph', 0, '7.3')
    await saved(page)
    await page.evaluate(async () => {
      const database = await new Promise<IDBDatabase>((done) => {
        const request = indexedDB.open('basinbook')
        request.onsuccess = () => done(request.result)
      })
      const writing = database.transaction('notebooks', 'readwrite')
      for (let i = 0; i < 2000; i++) {
        const name = `Pool ${i}, ${['Elm', 'Ash', 'Oak', 'Yew'][i % 4]} Street`
        writing.objectStore('notebooks').put({
          id: `many-${i}`,
          name,
          place: '',
          words: name.toLowerCase(),
          changed: i,
          head: 0,
          snapshot: 0,
        })
      }
      await new Promise((done) => {
        writing.oncomplete = done
      })
      database.close()
    })
    await page.locator('.rail a[href="#notebooks"]').click()
    await page.locator('.lines-box .name').first().waitFor()
    expect(await page.locator('.lines-box .name').count()).toBeLessThan(60)
    expect(await page.locator('.lines-box li').first().getAttribute('aria-setsize')).toBe('2002')
    await page.screenshot({ path: resolve(SHOTS, 'notebooks-many.png') })
    expect(await faults(page, '.text-page')).toEqual([])
    const find = page.getByLabel('Find by name, place or note')
    await find.focus()
    await page.keyboard.type('pool 1998')
    await eventually(() => page.locator('.lines .name').allTextContents()).toEqual(['Pool 1998, Oak Street'])
    await eventually(() => page.locator('[role=search] [role=status]').textContent()).toBe('1 of 2002')
    // by the place, without its capitals, one letter wrong
    await find.fill('vantongerem')
    await eventually(() => page.locator('.lines .name').allTextContents()).toEqual([NAME])
    await find.fill('ottoline')
    await page.keyboard.press('Enter')
    await page.locator('.rail h1', { hasText: NAME }).waitFor()
    await page.context().close()
  })
})
