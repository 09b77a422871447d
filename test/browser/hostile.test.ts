import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { eventually, ready } from './grid'
import { launch, open } from './open'

const folder = mkdtempSync(join(tmpdir(), 'basinbook-hostile-'))
let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true, force: true })
})

const SCRIPT = '<img src=x onerror="globalThis.ran=true"><script>globalThis.ran=true</script>'

describe('files that mean harm', () => {
  test('script in every name is text and nothing else, on every page', async () => {
    const notebook = JSON.parse(readFileSync('examples/little-heron.json', 'utf8'))
    Object.assign(notebook, { id: 'hostile', name: SCRIPT, note: SCRIPT, place: SCRIPT })
    for (const one of Object.values<{ name: string; note?: string }>(notebook.scenarios)) {
      one.name = `${SCRIPT} ${Math.random()}`
      one.note = SCRIPT
    }
    for (const one of Object.values<{ name: string }>(notebook.samples)) one.name = SCRIPT
    const path = join(folder, 'hostile.json')
    writeFileSync(path, JSON.stringify(notebook))
    const { page, errors, foreign } = await open(browser)
    await ready(page)
    await page.goto(`${page.url().split('#')[0]}#notebooks`)
    await page.locator('input[type=file]').first().setInputFiles(path)
    await eventually(() => page.locator('.rail h1').textContent()).toBe(SCRIPT)
    const places = await page
      .locator('.rail .others a')
      .evaluateAll((links) => links.map((a) => a.getAttribute('href')))
    for (const place of [...places, '#plan', '#worksheets']) {
      await page.goto(`${page.url().split('#')[0]}${place}`)
      await page.locator('main h1, main h2').first().waitFor()
      expect(await page.evaluate(() => 'ran' in globalThis), String(place)).toBe(false)
      expect(await page.locator('img[src=x]').count()).toBe(0)
    }
    expect(foreign).toEqual([])
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('are refused with their place and reason, and what is open stays as it is', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    const name = await page.locator('.rail h1').textContent()
    await page.goto(`${page.url().split('#')[0]}#notebooks`)
    const files: [string, string, RegExp][] = [
      [
        'deep.json',
        `{"format":"basinbook-notebook","version":2,"cells":${'['.repeat(100_000)}`,
        /brackets stand inside/,
      ],
      ['proto.json', '{"format":"basinbook-notebook","version":2,"__proto__":{"polluted":1}}', /__proto__: this key/],
      ['none.json', '{"format":"something-else"}', /not a notebook file/],
    ]
    for (const [file, text, why] of files) {
      writeFileSync(join(folder, file), text)
      await page.locator('input[type=file]').first().setInputFiles(join(folder, file))
      await eventually(() => page.locator('.problems').first().textContent()).toMatch(why)
    }
    expect(await page.locator('.rail h1').textContent()).toBe(name)
    expect(await page.evaluate(() => ({}) as { polluted?: number }).then((plain) => plain.polluted)).toBeUndefined()
    expect(errors).toEqual([])
    await page.context().close()
  })
})
