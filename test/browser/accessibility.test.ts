import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { resolve } from 'node:path'
import type { AxeResults } from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { eventually, ready, select } from './grid'
import { launch, open } from './open'

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']
const PAGES = [
  'plan',
  'lab',
  'functions',
  'keys',
  'out',
  'assumptions',
  'trace/lsi_at_cell',
  'notebooks',
  'keeping',
  'worksheets',
] as const

/** The pages whose parts stand otherwise where there is less room. */
const NARROW: readonly (typeof PAGES)[number][] = ['plan', 'lab', 'notebooks', 'worksheets']

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** The two pages that are long are looked at as a whole once; on other paper and screens this of them is enough. */
const PARTS: Partial<Record<(typeof PAGES)[number], readonly string[]>> = {
  worksheets: ['.rail', '.toolbar', '#worksheet-sample', '#worksheet-saturation', '#margin', '.foot'],
  functions: ['.rail', '.functions > form', '.function:nth-of-type(-n + 6)', '.foot'],
}

/** All rules, the same but contrast, or contrast by itself: that of a colour is the same on any width, and takes the longest to tell. */
const LOOKS = {
  all: { runOnly: { type: 'tag', values: TAGS } },
  shape: { runOnly: { type: 'tag', values: TAGS }, rules: { 'color-contrast': { enabled: false } } },
  contrast: { runOnly: { type: 'rule', values: ['color-contrast'] } },
} as const
type Look = keyof typeof LOOKS

/** What the checker finds wrong in parts of the page, one line each. */
async function violations(page: Page, parts: readonly string[], look: Look): Promise<string[]> {
  const found = await page.evaluate(
    ([include, options]) =>
      (globalThis as unknown as { axe: { run(context: unknown, options: unknown): Promise<AxeResults> } }).axe.run(
        { include },
        { ...options, resultTypes: ['violations'] },
      ),
    [parts.map((part) => [part]), LOOKS[look]] as const,
  )
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ target }) => `${id}: ${target.join(' ')}`),
  )
}

async function goTo(page: Page, place: (typeof PAGES)[number]): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash
  }, place)
  await page.locator(place === 'worksheets' ? '.worksheets' : 'article h1').waitFor()
  if (place === 'plan') await page.locator('.plan[aria-busy=false] .swim').waitFor()
  if (place === 'lab') {
    await page.locator('input[type=file]').setInputFiles(resolve('examples/lab-forty.csv'))
    // the file has fourteen columns, and the page is made part by part
    await page.locator('table.columns tbody tr').nth(13).waitFor()
    await page.locator('.chart .readout').waitFor()
  }
}

describe('WCAG 2.2 AA, as far as a checker can tell', () => {
  // Paper in the dark has the same elements in other colours, so there the contrast alone is looked at again.
  test.each([
    [1440, 900, false, 'all'],
    [768, 1024, false, 'shape'],
    [1440, 900, true, 'contrast'],
  ] as const)('%i by %i, dark %s, %s: every page, and what opens on it', async (width, height, dark, look) => {
    const wholly = look === 'all'
    const { page } = await open(browser, { width, height, dark })
    await ready(page)
    await page.evaluate(AXE)
    for (const place of look === 'shape' ? NARROW : PAGES) {
      await goTo(page, place)
      expect(await violations(page, (wholly ? undefined : PARTS[place]) ?? ['html'], look), place).toEqual([])
    }
    await select(page, 'saturation/lsi')
    await page.keyboard.press('?')
    expect(await violations(page, ['#margin'], look), 'margin').toEqual([])
    await page.keyboard.press('Escape')
    await select(page, 'sample/ph')
    await page.keyboard.type('abc')
    await page.keyboard.press('Enter')
    await page.locator('.editor [role=alert]', { hasText: 'abc' }).waitFor()
    expect(await violations(page, ['#worksheet-sample'], look), 'editor with a fault').toEqual([])
    await page.keyboard.press('Escape')
    await select(page, 'pool/shell')
    await page.keyboard.press('F2')
    expect(await violations(page, ['#worksheet-pool'], look), 'choices').toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('Shift+F10')
    await page.locator('.menu').waitFor()
    expect(await violations(page, ['.menu'], look), 'menu').toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('Shift+ArrowDown')
    await page.keyboard.press('Shift+ArrowRight')
    expect(await violations(page, ['#worksheet-pool'], look), 'range').toEqual([])
    await page.keyboard.press('/')
    await page.locator('.find input').waitFor()
    await page.keyboard.type('alk')
    expect(await violations(page, ['.find'], look), 'find').toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('Alt+Shift+ArrowUp')
    await page.locator('#worksheet-pool .fold[aria-expanded=false]').waitFor()
    expect(await violations(page, ['#worksheet-pool'], look), 'folded').toEqual([])
    await page.keyboard.press('Alt+Shift+ArrowDown')
    await page.context().close()
  })
})

describe('what a checker cannot tell', () => {
  test('the focus is to be seen wherever the Tab key takes it', async () => {
    const { page } = await open(browser)
    await ready(page)
    const seen = new Set<string>()
    for (const place of ['worksheets', 'notebooks', 'lab', 'functions'] as const) {
      await goTo(page, place)
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
      for (let step = 0; step < 45; step++) {
        await page.keyboard.press('Tab')
        const now = await page.evaluate(() => {
          const focus = document.activeElement
          if (!(focus instanceof HTMLElement) || focus === document.body) return null
          // a radio button is out of sight; its words bear the ring
          const bearer = focus.matches('.switch input') ? focus.nextElementSibling : focus
          const style = getComputedStyle(bearer ?? focus)
          const box = (bearer ?? focus).getBoundingClientRect()
          return {
            name: `${focus.tagName} ${focus.id || focus.textContent?.slice(0, 30)}`,
            ring: style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2,
            inSight: box.width > 0 && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
          }
        })
        if (now === null) continue
        seen.add(now.name)
        expect(now, now.name).toMatchObject({ ring: true, inSight: true })
      }
    }
    expect(seen.size).toBeGreaterThan(40)
    await page.context().close()
  })

  test.each([
    [720, 450],
    [320, 640],
    [320, 256],
  ])('%i by %i pixels: the page itself does not scroll sideways, and what it says is there', async (width, height) => {
    const { page } = await open(browser, { width, height })
    await ready(page)
    for (const place of PAGES) {
      await goTo(page, place)
      const state = await page.evaluate(() => {
        const main = document.querySelector('main')
        const text = document.querySelector('main h1, main h2')?.getBoundingClientRect()
        return {
          sideways: document.documentElement.scrollWidth - innerWidth,
          main: (main?.getBoundingClientRect().width ?? 0) > innerWidth * 0.9,
          heading: (text?.width ?? 0) > 0 && (text?.left ?? -1) >= 0,
        }
      })
      expect(state, place).toEqual({ sideways: 0, main: true, heading: true })
      if (place !== 'worksheets') {
        // running text never has to be scrolled sideways; tables may, in scrollers of their own
        const wide = await page.evaluate(() => {
          const main = document.querySelector('main')
          return main ? main.scrollWidth - main.clientWidth : -1
        })
        expect(wide, place).toBeLessThanOrEqual(0)
      }
    }
    await page.getByRole('button', { name: 'Contents' }).click()
    expect(await page.getByRole('link', { name: /Saturation/ }).isVisible()).toBe(true)
    await page.getByRole('button', { name: 'Contents' }).click()
    await select(page, 'sample/ph')
    await page.getByRole('button', { name: 'Explain' }).click()
    await eventually(() => page.locator('#margin').isVisible()).toBe(true)
    // it slides in
    await eventually(async () => {
      const margin = await page.locator('#margin').boundingBox()
      return (margin?.x ?? -1) >= 0 && (margin?.width ?? 0) <= width
    }).toBe(true)
    await page.keyboard.press('Escape')
    await eventually(() => page.locator('#margin').isVisible()).toBe(false)
    expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^sample\/ph@/)
    await page.context().close()
  })
})
