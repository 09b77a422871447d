import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { enter, eventually, ready, scenarioNames, shown } from './grid'
import { FLAGS, launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const saved = (page: Page) => eventually(() => page.locator('.toolbar .state').textContent()).toBe('Saved')

describe('what was entered is kept', () => {
  test('within a second, and is there after a reload', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await enter(page, 'sample/ph', 0, '7.3')
    const entered = Date.now()
    await saved(page)
    expect(Date.now() - entered).toBeLessThan(1000)
    await enter(page, 'sample/temperature', 1, '59 F')
    await page.getByRole('button', { name: 'Add scenario' }).click()
    await saved(page)
    await page.reload()
    await ready(page)
    expect(await shown(page, 'sample/ph')).toBe('7.3')
    expect(await shown(page, 'sample/temperature', 1)).toBe('59')
    expect(await scenarioNames(page)).toHaveLength(4)
    expect(await page.locator('.banner').count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('and is there after the browser was killed, again and again', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'basinbook-profile-'))
    let reading = 6.9
    for (let round = 0; round < 3; round++) {
      const running = await start(folder)
      const { page } = await open(running.browser, { context: running.browser.contexts()[0] })
      await ready(page)
      if (round > 0) await eventually(() => shown(page, 'sample/ph')).toBe(reading.toFixed(1))
      reading += 0.1
      await enter(page, 'sample/ph', 0, reading.toFixed(1))
      await saved(page)
      // no word of farewell: nothing that runs when a page or a browser closes may be needed
      running.process.kill('SIGKILL')
      await once(running.process, 'exit')
    }
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  })
})

/** A Chromium with a profile of its own, as a process that can be killed. */
async function start(folder: string): Promise<{ browser: Browser; process: ChildProcess }> {
  const child = spawn(
    inject('chromium'),
    [...FLAGS, '--headless', '--remote-debugging-port=0', `--user-data-dir=${folder}`, 'about:blank'],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  )
  const address = await new Promise<string>((resolve, reject) => {
    let said = ''
    child.stderr.on('data', (chunk: Buffer) => {
      said += chunk.toString()
      const [, found] = /listening on (ws:\S+)/.exec(said) ?? []
      if (found) resolve(found)
    })
    child.on('exit', () => reject(new Error(`Chromium ended: ${said}`)))
  })
  return { browser: await chromium.connectOverCDP(address), process: child }
}
