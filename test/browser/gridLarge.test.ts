import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { addScenario } from '../../src/notebook/commands'
import { newNotebook } from '../../src/notebook/create'
import type { Edit } from '../../src/notebook/edit'
import { inOrder } from '../../src/notebook/order'
import { toFile } from '../../src/notebook/toFile'
import { isProblem } from '../../src/words/problem'
import { eventually, ready } from './grid'
import { launch, open } from './open'

const COUNT = 50
/** Invented readings, in canonical units. */
const READINGS = [
  ['ph', 7.6, 'pH'],
  ['temperature', 25, '°C'],
  ['total_alkalinity', 90, 'mg/L as CaCO3'],
  ['calcium_hardness', 250, 'mg/L as CaCO3'],
  ['cyanuric_acid', 40, 'mg/L'],
  ['salt', 3200, 'mg/L as NaCl'],
] as const

function fifty() {
  let now = newNotebook('Invented pool', 'As tested', 'metric')
  const take = (edit: Edit) => {
    const applied = apply(now, edit)
    if (isProblem(applied)) throw new Error(applied.code)
    now = applied.notebook
  }
  const [first] = inOrder(now)
  for (const [quantity, canonical, unit] of READINGS) {
    const cell = { kind: 'value', entered: String(canonical), unit, canonical } as const
    take({ type: 'set_cell', scenario: first?.id ?? '', quantity, cell })
  }
  for (let i = 1; i < COUNT; i++) take(addScenario(now, `What if ${i}`))
  return now
}

const notebook = fifty()
const ids = inOrder(notebook).map(({ id }) => id)

let browser: Browser
let page: Page
let errors: string[]
beforeAll(async () => {
  browser = await launch()
  const opened = await open(browser)
  page = opened.page
  errors = opened.errors
  await ready(page)
  const path = join(mkdtempSync(join(tmpdir(), 'grid-')), 'fifty.json')
  writeFileSync(path, toFile(notebook))
  await page.goto(`${page.url().split('#')[0]}#notebooks`)
  await page.locator('input[type=file]').first().setInputFiles(path)
  await page.locator(`[id="pool/shell@${ids[0]}"]`).waitFor()
})
afterAll(() => browser.close())

const at = (row: string, column: number) => page.locator(`[id="${row}@${ids[column]}"]`)
const drawn = () => page.locator('.cell').count()
const focused = () => page.evaluate(() => document.activeElement?.id)

test('of 50 scenarios only the cells near what is in sight exist; counts and places are those of all', async () => {
  // a row that is out of sight has no cells yet
  expect(await at('sample/ph', 0).count()).toBe(0)
  await page.locator('[id="name-sample/ph"]').scrollIntoViewIfNeeded()
  await at('sample/ph', 0).click()
  await eventually(drawn).toBeLessThan(900)
  expect(await page.locator('#worksheet-sample .grid').getAttribute('aria-colcount')).toBe(String(COUNT + 3))
  expect(await at('sample/ph', 49).count()).toBe(0)
  await page.keyboard.press('End')
  await at('sample/ph', 49).waitFor()
  expect(await focused()).toBe(`sample/ph@${ids[49]}`)
  expect(await at('sample/ph', 49).getAttribute('aria-colindex')).toBe(String(COUNT + 3))
  expect(await at('sample/ph', 0).count()).toBe(1)
  await eventually(() => at('sample/temperature', 48).count()).toBe(1)
  await eventually(drawn).toBeLessThan(900)
  // each drawn cell stands where it would stand if all were drawn
  const offset = await page.evaluate(
    ([head, cell]) => {
      const [a, b] = [document.getElementById(head), document.getElementById(cell)]
      return (a?.parentElement?.getBoundingClientRect().left ?? 0) - (b?.getBoundingClientRect().left ?? 1)
    },
    [`head-sample-${ids[49]}`, `sample/ph@${ids[49]}`] as const,
  )
  expect(Math.abs(offset)).toBeLessThan(1)
})

test('keys, find and typing reach cells that were not drawn; what follows them is worked out', async () => {
  await page.keyboard.press('Control+Home')
  await page.keyboard.press('Control+End')
  expect(await focused()).toMatch(new RegExp(`@${ids[49]}$`))
  await page.keyboard.press('/')
  await page.locator('.find input').waitFor()
  await page.keyboard.type('langelier index')
  await page.keyboard.press('Enter')
  await eventually(focused).toBe(`saturation/lsi@${ids[49]}`)
  const before = await at('saturation/lsi', 49).textContent()
  await page.keyboard.press('Control+ArrowUp')
  await page.keyboard.press('/')
  await page.locator('.find input').waitFor()
  await page.keyboard.type('ph sample')
  await page.keyboard.press('Enter')
  await eventually(focused).toBe(`sample/ph@${ids[49]}`)
  await page.keyboard.type('6.9')
  await page.keyboard.press('Enter')
  await page.keyboard.press('/')
  await page.locator('.find input').waitFor()
  await page.keyboard.type('langelier index')
  await page.keyboard.press('Enter')
  await eventually(() => at('saturation/lsi', 49).textContent()).not.toBe(before)
})

test('a cell that was jumped to stays in sight while the rows above it are drawn, and grow', async () => {
  await page.keyboard.press('Control+Home')
  await page.keyboard.press('Control+End')
  await eventually(async () => (await focused())?.endsWith(`@${ids[49]}`)).toBe(true)
  // as long as rows may still be drawn
  await page.waitForTimeout(1500)
  const [top = -1, bottom = -1, height] = await page.evaluate(() => {
    const box = document.activeElement?.getBoundingClientRect()
    return [box?.top, box?.bottom, innerHeight] as const
  })
  expect(top).toBeGreaterThan(0)
  expect(bottom).toBeLessThanOrEqual(height)
})

test('a range over all scenarios is filled and taken back in one step', async () => {
  await page.keyboard.press('/')
  await page.locator('.find input').waitFor()
  await page.keyboard.type('ph sample')
  await page.keyboard.press('Enter')
  await page.keyboard.press('Home')
  await page.keyboard.press('Control+Shift+ArrowRight')
  await eventually(() => page.locator('[aria-live=polite]').first().textContent()).toBe(
    '1 row by 50 scenarios selected'.replace('1 row', 'one row'),
  )
  await page.keyboard.press('Control+r')
  await eventually(() => page.locator('[aria-live=polite]').first().textContent()).toBe('49 cells filled')
  await page.keyboard.press('Control+z')
  await eventually(() => page.getByRole('button', { name: 'Redo' }).isEnabled()).toBe(true)
})

test('paper has all of them', async () => {
  await page.emulateMedia({ media: 'print' })
  await eventually(drawn).toBeGreaterThan(COUNT * 200)
  await page.emulateMedia({ media: 'screen' })
  await eventually(drawn).toBeLessThan(900)
  expect(errors).toEqual([])
})
