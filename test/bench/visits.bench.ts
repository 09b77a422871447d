import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { build, type PreviewServer, preview } from 'vite'
import { afterAll, beforeAll, describe, inject, test } from 'vitest'
import { ready } from '../browser/grid'
import { FLAGS, launch } from '../browser/open'
import { median, report } from './report'

const VISITS = 5
const EDITS = 30

let browser: Browser
let server: PreviewServer
const folder = mkdtempSync(join(tmpdir(), 'basinbook-bench-'))

beforeAll(async () => {
  browser = await launch()
  const root = resolve('test/bench/empty')
  await build({ configFile: false, root, logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } })
  server = await preview({
    configFile: false,
    root,
    build: { outDir: folder },
    preview: { port: 0, host: '127.0.0.1' },
  })
}, 120_000)

afterAll(async () => {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Runs in the page: notes when the first number stands in a cell. */
function noteFirstNumbers(): void {
  new MutationObserver((_, observer) => {
    if (!document.querySelector('.cell .whole')) return
    observer.disconnect()
    Object.assign(globalThis, { numbersShown: performance.timeOrigin + performance.now() })
  }).observe(document, { subtree: true, childList: true })
}

/** From the start of the visit to the first number, in milliseconds. */
async function visit(page: Page, address: string): Promise<number> {
  await page.goto('about:blank')
  await page.goto(address)
  await page.waitForFunction(() => 'numbersShown' in globalThis)
  return page.evaluate(() => (globalThis as unknown as { numbersShown: number }).numbersShown - performance.timeOrigin)
}

async function fresh(): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.newContext()
  await context.addInitScript(noteFirstNumbers)
  return { context, page: await context.newPage() }
}

/** First visits, each of a browser that was never there; and visits after one, by then without the network where there is a worker. */
async function visits(address: string, hasWorker: boolean): Promise<{ first: number; again: number }> {
  const first: number[] = []
  for (let i = 0; i < VISITS; i++) {
    const { context, page } = await fresh()
    first.push(await visit(page, address))
    await context.close()
  }
  const { context, page } = await fresh()
  await visit(page, address)
  if (hasWorker) await page.evaluate(() => navigator.serviceWorker.ready)
  const again: number[] = []
  for (let i = 0; i < VISITS; i++) again.push(await visit(page, address))
  await context.close()
  return { first: median(first), again: median(again) }
}

describe('visits', () => {
  test('first and repeated, to the first numbers', async () => {
    const empty = await visits(server.resolvedUrls?.local[0] ?? '', false)
    const ours = await visits(inject('address'), true)
    for (const [which, what] of [
      ['first', 'first load, to the first numbers'],
      ['again', 'repeated load, out of what the browser keeps'],
    ] as const) {
      report(
        what,
        `${ours[which].toFixed(0)} ms`,
        `empty page, same packages ${empty[which].toFixed(0)} ms`,
        ours[which] / empty[which],
      )
    }
  })
})

describe('saving', () => {
  test('an edit, from Enter to the word', async () => {
    // a profile on the disk: a private one keeps everything in the memory
    const profile = mkdtempSync(join(tmpdir(), 'basinbook-bench-profile-'))
    const context = await chromium.launchPersistentContext(profile, {
      executablePath: inject('chromium'),
      args: [...FLAGS],
      serviceWorkers: 'block',
    })
    const page = await context.newPage()
    await page.goto(inject('address'))
    await ready(page)
    await page.evaluate(() => {
      const times: number[] = []
      Object.assign(globalThis, { times })
      let start = 0
      const note = ({ key }: KeyboardEvent) => {
        if (key === 'Enter') start = performance.now()
      }
      addEventListener('keydown', note, { capture: true })
      const state = document.querySelector('.toolbar .state') as Element
      new MutationObserver(() => {
        if (start === 0 || state.textContent !== 'Saved') return
        times.push(performance.now() - start)
        start = 0
      }).observe(state, { subtree: true, childList: true, characterData: true })
    })
    for (let i = 0; i < EDITS; i++) {
      await page.locator('[id^="sample/ph@"]').first().click()
      await page.keyboard.type((7 + (i % 9) / 10).toFixed(1))
      await page.keyboard.press('Enter')
      await page.waitForFunction((n) => (globalThis as unknown as { times: number[] }).times.length > n, i)
    }
    const times = await page.evaluate(() => (globalThis as unknown as { times: number[] }).times)
    const bare = await page.evaluate(async (count) => {
      const opening = indexedDB.open('bench', 1)
      opening.onupgradeneeded = () => {
        opening.result.createObjectStore('log', { keyPath: 'seq' })
        opening.result.createObjectStore('notebooks', { keyPath: 'id' })
      }
      const database = await new Promise<IDBDatabase>((done) => {
        opening.onsuccess = () => done(opening.result)
      })
      const cell = { kind: 'value', entered: '7.4', unit: 'pH', canonical: 7.4 }
      const all: number[] = []
      for (let seq = 0; seq < count; seq++) {
        const start = performance.now()
        const writing = database.transaction(['log', 'notebooks'], 'readwrite', { durability: 'strict' })
        writing.objectStore('log').add({ seq, edit: { type: 'set_cell', scenario: 'x', quantity: 'ph', cell } })
        writing.objectStore('notebooks').put({ id: 'x', head: seq })
        await new Promise((done) => {
          writing.oncomplete = done
        })
        all.push(performance.now() - start)
      }
      database.close()
      return all
    }, EDITS)
    const [time, reference] = [median(times), median(bare)]
    report(
      'an edit saved, from Enter to “Saved”',
      `${time.toFixed(1)} ms`,
      `bare strict write ${reference.toFixed(1)} ms`,
      time / reference,
    )
    await context.close()
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 })
  })
})
