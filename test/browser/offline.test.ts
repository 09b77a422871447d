import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, eventually, ready, saved, shown } from './grid'
import { launch } from './open'
import { type Site, serveCopy } from './site'

let browser: Browser
let site: Site
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** A browser that has been here once: the page and its service worker are there. */
async function visited(): Promise<{ context: BrowserContext; page: Page; foreign: string[]; errors: string[] }> {
  site = await serveCopy()
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-US' })
  const foreign: string[] = []
  const errors: string[] = []
  // of pages, of their workers, and of the service worker
  context.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(site.address)) foreign.push(request.url())
  })
  context.on('weberror', (error) => errors.push(String(error.error())))
  const page = await context.newPage()
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text())
  })
  await page.goto(site.address)
  await ready(page)
  await page.evaluate(() => navigator.serviceWorker.ready)
  return { context, page, foreign, errors }
}

async function left(context: BrowserContext): Promise<void> {
  await context.close()
  await site.close()
}

const version = (page: Page) => page.locator('html').getAttribute('data-version')

describe('the page without a network', () => {
  test('can be installed; opens, computes, keeps and shows every page; nothing is asked of anyone', async () => {
    const { context, page, foreign, errors } = await visited()
    const href = await page.locator('link[rel=manifest]').getAttribute('href')
    const manifest = await page.evaluate(async (path) => (await fetch(path)).json(), href ?? '')
    expect(manifest).toMatchObject({ name: 'Basinbook', display: 'standalone', start_url: '.' })
    for (const { src, sizes } of manifest.icons as { src: string; sizes: string }[]) {
      const size = await page.evaluate(async (path) => {
        const image = new Image()
        image.src = path
        await image.decode()
        return `${image.naturalWidth}x${image.naturalHeight}`
      }, src)
      if (sizes !== 'any') expect(size).toBe(sizes)
    }
    await enter(page, 'sample/ph', 0, '7.1')
    await saved(page)
    const address = page.url()
    site.unplug()
    await context.setOffline(true)
    site.asked()
    await page.reload()
    await ready(page)
    expect(await shown(page, 'sample/ph')).toBe('7.1')
    await enter(page, 'sample/ph', 0, '7.3')
    await saved(page)
    await eventually(() => shown(page, 'saturation/ph')).toBe('7.3')
    const places = await page
      .locator('.rail .others a')
      .evaluateAll((links) => links.map((a) => a.getAttribute('href')))
    expect(places.length).toBeGreaterThan(3)
    for (const place of [...places, '#plan']) {
      await page.goto(`${site.address}${place}`)
      await page.locator('main h1, main h2').first().waitFor()
    }
    await page.goto(`${site.address}#functions`)
    await page.locator('math').first().waitFor()
    const fonts = await page.evaluate(async () => {
      await document.fonts.ready
      return [...document.fonts].filter(({ status }) => status === 'error').length
    })
    expect(fonts).toBe(0)
    // and in another tab by the address of a notebook
    expect(address).toContain('notebook=')
    await page.close()
    const again = await context.newPage()
    await again.goto(address)
    await ready(again)
    expect(site.asked().filter((path) => path !== '/sw.js')).toEqual([])
    expect(foreign).toEqual([])
    expect(errors).toEqual([])
    await left(context)
  })
})

describe('a newer version of the page', () => {
  test('waits, says so, and is taken when the reader wants it; every tab keeps its edits', async () => {
    const { context, page, errors } = await visited()
    await page.reload()
    await ready(page)
    const second = await context.newPage()
    await second.goto(`${site.address}#notebooks`)
    await second.getByRole('textbox', { name: 'Name, such as the pool or its owner' }).fill('Second pool')
    await second.getByRole('button', { name: 'New notebook' }).click()
    await second.locator('.toolbar').waitFor()
    await second.evaluate(() => navigator.serviceWorker.ready)
    // both are counted once what keeps the page offline is loaded
    for (const tab of [page, second]) {
      await eventually(() => tab.evaluate(async () => (await navigator.locks.query()).held?.length ?? 0)).toBe(4)
    }
    site.publish('2')
    await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()))
    const banner = page.locator('.banner', { hasText: 'newer version' })
    await banner.waitFor()
    expect(await version(page)).toBeNull()
    // the old one goes on working
    await enter(page, 'sample/ph', 0, '7.2')

    await second.locator('.banner', { hasText: 'newer version' }).waitFor()
    await second.locator('[id^="sample/ph@"]').first().click()
    await second.keyboard.type('7.')
    await banner.getByRole('button').click()
    await eventually(() => banner.textContent()).toContain('Another tab')
    expect(await version(page)).toBeNull()
    await second.keyboard.type('5')
    await second.keyboard.press('Enter')

    await banner.getByRole('button').click()
    for (const tab of [page, second]) await eventually(() => version(tab)).toBe('2')
    await ready(page)
    expect(await shown(page, 'sample/ph')).toBe('7.2')
    await second.locator('.toolbar').waitFor()
    await eventually(() => shown(second, 'sample/ph')).toBe('7.5')
    expect(await page.locator('.banner', { hasText: 'newer version' }).count()).toBe(0)
    expect(errors).toEqual([])
    await left(context)
  })
})
