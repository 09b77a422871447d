import { resolve } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { enter, ready } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

describe('what the page may do', () => {
  test('nothing is asked of another origin, and nothing complains, on any page', async () => {
    const { page, foreign, errors } = await open(browser)
    await ready(page)
    await enter(page, 'sample/ph', 0, '7.3')
    for (const place of ['functions', 'keys', 'notebooks', 'lab', 'worksheets/saturation']) {
      await page.locator(`.rail a[href="#${place}"]`).click()
      await page.waitForLoadState('networkidle')
    }
    await page.locator('.rail a[href="#lab"]').click()
    await page.locator('input[type=file]').setInputFiles(resolve('examples/lab-forty.csv'))
    await page.locator('.account').waitFor()
    expect(await page.locator('main [role=math], main math').count()).toBe(0)
    await page.locator('.rail a[href="#functions"]').click()
    await page.locator('math').first().waitFor()
    expect(foreign).toEqual([])
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('the policy is strict, and it holds', async () => {
    const { page } = await open(browser)
    await ready(page)
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')
    expect(policy).toMatch(/^default-src 'none';/)
    expect(policy).toContain("script-src 'self';")
    expect(policy).toContain("style-src 'self';")
    expect(policy).toContain("connect-src 'self'")
    expect(policy).not.toMatch(/unsafe|\*|https?:/)

    const blocked = await page.evaluate(async () => {
      const seen: string[] = []
      document.addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective))
      const script = document.createElement('script')
      script.textContent = 'globalThis.inlineRan = true'
      document.head.append(script)
      const style = document.createElement('style')
      style.textContent = 'body { display: none }'
      document.head.append(style)
      const image = new Image()
      image.src = 'https://example.invalid/pixel.png'
      await fetch('https://example.invalid/').catch(() => undefined)
      await new Promise((done) => setTimeout(done, 200))
      return {
        seen: [...new Set(seen)].sort(),
        ran: 'inlineRan' in globalThis,
        shows: getComputedStyle(document.body).display,
      }
    })
    expect(blocked).toEqual({
      seen: ['connect-src', 'img-src', 'script-src-elem', 'style-src-elem'],
      ran: false,
      shows: 'block',
    })
    await page.context().close()
  })

  test('it holds in the workers too: no text becomes code there, and nothing foreign is fetched', async () => {
    const { page } = await open(browser)
    await ready(page)
    expect(page.workers().length).toBeGreaterThan(0)
    for (const worker of page.workers()) {
      const tried = await worker.evaluate(
        () =>
          new Promise<string[]>((done) => {
            // as a task of its own, so that it runs as the worker's own code does
            setTimeout(async () => {
              const fetched = fetch('https://example.invalid/').then(
                () => 'fetched',
                () => 'not fetched',
              )
              const seen: string[] = []
              addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective))
              try {
                new Function('globalThis.ran = true')()
              } catch (error) {
                seen.push((error as Error).name)
              }
              seen.push(await fetched)
              await new Promise((later) => setTimeout(later, 200))
              done([...new Set(seen)].sort())
            })
          }),
      )
      expect(tried).toEqual(expect.arrayContaining(['EvalError', 'not fetched', 'connect-src']))
    }
    await page.context().close()
  })
})
