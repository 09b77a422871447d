import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Browser, Request } from 'playwright-core'
import { afterAll, beforeAll, describe, test } from 'vitest'
import { launch, open } from '../browser/open'
import { report } from './report'

const KB = 1024

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const assets = readdirSync('dist/app/assets').map((name) => join('dist/app/assets', name))

interface Noted {
  /** milliseconds since 1970 */
  numbersShown: number
}

/** Runs in the page: notes when the first number stands in a cell. */
function noteFirstNumbers(): void {
  const observer = new MutationObserver(() => {
    if (!document.querySelector('.cell .whole')) return
    observer.disconnect()
    Object.assign(globalThis, { numbersShown: performance.timeOrigin + performance.now() })
  })
  observer.observe(document, { subtree: true, childList: true })
}

describe('the first load', () => {
  test('sizes of what a first visit fetches before the first numbers', async () => {
    const context = await browser.newContext({ serviceWorkers: 'block' })
    await context.addInitScript(noteFirstNumbers)
    const requests: Request[] = []
    context.on('requestfinished', (request) => requests.push(request))
    const { page } = await open(browser, { context })
    await page.locator('.cell .whole').first().waitFor()
    const shown = await page.evaluate(() => (globalThis as unknown as Noted).numbersShown)
    await page.waitForTimeout(500)
    await context.close()
    const fetched = new Set(
      requests
        .filter((request) => request.timing().startTime < shown)
        .map((request) => new URL(request.url()).pathname.split('/').at(-1) ?? ''),
    )
    const sum = (of: (path: string) => boolean, packed: boolean) =>
      assets
        .filter((path) => fetched.has(path.split('/').at(-1) ?? '') && of(path))
        .reduce((bytes, path) => bytes + (packed ? gzipSync(readFileSync(path)).length : statSync(path).size), 0) / KB
    const isWorker = (path: string) => /worker/.test(path)
    const script = sum((path) => path.endsWith('.js') && !isWorker(path), true)
    const worker = sum((path) => path.endsWith('.js') && isWorker(path), true)
    const fonts = sum((path) => path.endsWith('.woff2'), false)
    const style = sum((path) => path.endsWith('.css'), true)
    const line = (what: string, size: number, aim: number) =>
      report(what, `${size.toFixed(0)} KB`, `aim ${aim} KB`, size / aim, 'at most 1')
    line('page script before the first numbers, gzipped', script, 120)
    line('engine worker, gzipped', worker, 240)
    line('fonts', fonts, 130)
    report('style, gzipped', `${style.toFixed(0)} KB`, '', null)
  })
})
