import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { apply } from '../../src/notebook/apply'
import { addScenario } from '../../src/notebook/commands'
import { newNotebook } from '../../src/notebook/create'
import type { Edit } from '../../src/notebook/edit'
import { inOrder } from '../../src/notebook/order'
import { toFile } from '../../src/notebook/toFile'
import { isProblem } from '../../src/words/problem'
import { eventually, ready, tabTo } from './grid'
import { launch, open } from './open'

/** An input of the reader's own, and rows over it and over a reading that turn where they are 0. */
const MINE = {
  format: 'basinbook-worksheet',
  version: 1,
  id: 'mine',
  label: 'My worksheet',
  edition: 1,
  takes: ['ph'],
  groups: [
    {
      id: 'all',
      label: 'All',
      rows: [
        { name: 'my_dial', label: 'My dial', unit: '1', input: 'number', accept: [0, 10], decimals: 2 },
        { name: 'my_square', label: 'My square', unit: '1', formula: '(my_dial - 4)^2', decimals: 2 },
        { name: 'my_ph_error', label: 'My pH error', unit: '1', formula: '(ph - 7.5)^2', decimals: 2 },
      ],
    },
  ],
}

function book() {
  let now = newNotebook('Invented pool', 'As tested', 'metric')
  const take = (edit: Edit) => {
    const applied = apply(now, edit)
    if (isProblem(applied)) throw new Error(applied.code)
    now = applied.notebook
  }
  const first = inOrder(now)[0]?.id ?? ''
  take({ type: 'put_worksheet', id: 'mine', definition: MINE })
  const put = (quantity: string, canonical: number, unit: string) =>
    take({
      type: 'set_cell',
      scenario: first,
      quantity,
      cell: { kind: 'value', entered: String(canonical), unit, canonical },
    })
  put('ph', 7.6, 'pH')
  put('my_dial', 6, '1')
  take(addScenario(now, 'What if'))
  const second = inOrder(now)[1]?.id ?? ''
  take({
    type: 'set_cell',
    scenario: second,
    quantity: 'ph',
    cell: { kind: 'value', entered: '7.2', unit: 'pH', canonical: 7.2 },
  })
  return now
}

let browser: Browser
let page: Page
let errors: string[]
beforeAll(async () => {
  browser = await launch()
  const opened = await open(browser)
  page = opened.page
  errors = opened.errors
  await ready(page)
  const path = join(mkdtempSync(join(tmpdir(), 'study-')), 'mine.json')
  const notebook = book()
  writeFileSync(path, toFile(notebook))
  await page.goto(`${page.url().split('#')[0]}#notebooks`)
  await page.locator('input[type=file]').first().setInputFiles(path)
  await page.locator(`[id="mine/my_square@${inOrder(notebook)[0]?.id}"]`).waitFor()
})
afterAll(() => browser.close())

async function goTo(part: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash
  }, `study/${part}`)
  await page.locator('.study .parts').waitFor()
}

async function type(label: string, text: string): Promise<void> {
  await page.getByRole('textbox', { name: label }).focus()
  await page.keyboard.press('Control+A')
  if (text === '') await page.keyboard.press('Delete')
  else await page.keyboard.type(text)
  await page.keyboard.press('Tab')
}

/** Chooses in a select as a keyboard does: by the first letters. */
async function pick(label: string, text: string): Promise<void> {
  await page.getByRole('combobox', { name: label }).focus()
  await page.keyboard.type(text)
  await page.keyboard.press('Tab')
}

const drawing = () => page.locator('.chart .drawing')

describe('What if with rows of one’s own', () => {
  test('draws a row of one’s own against an input of one’s own, and says what stands at a point', async () => {
    await goTo('sweep')
    await pick('Add a quantity…', 'My square')
    await page.getByRole('button', { name: 'Take out My square' }).waitFor()
    const others = page.getByRole('button', { name: /^Take out (?!My square)/ })
    while ((await others.count()) > 0) await others.first().press('Enter')
    await pick('Against', 'My dial')
    await type('From', '0')
    await type('To', '10')
    await type('Points', '11')
    await tabTo(page, '[role=slider]')
    const slider = page.getByRole('slider')
    await eventually(() => slider.getAttribute('aria-valuemax')).toBe('10')
    await page.keyboard.press('Home')
    // (0 − 4)² and, a step on, (1 − 4)²
    await eventually(() => slider.getAttribute('aria-valuetext')).toMatch(/^My dial 0\.00: As tested 16\.00/)
    await page.keyboard.press('ArrowRight')
    await eventually(() => slider.getAttribute('aria-valuetext')).toMatch(/^My dial 1\.00: As tested 9\.00/)
  })

  test('solves one back for the other, says both values that give it, and puts the chosen one', async () => {
    await goTo('solve')
    await pick('Quantity', 'My square')
    await type('Wanted', '9')
    await pick('By changing', 'My dial')
    await type('From', '0')
    await type('To', '10')
    await page.getByRole('button', { name: 'Find' }).press('Enter')
    await page.getByText('My square is 9.00 at 2 values of My dial: 1, 7.').waitFor()
    expect(await page.getByRole('button', { name: /^Put .* into As tested$/ }).allTextContents()).toEqual([
      'Put 1 into As tested',
      'Put 7 into As tested',
    ])
    await page.getByRole('button', { name: 'Put 7 into As tested' }).press('Enter')
    await page.getByText('My dial is 7 in As tested now.').waitFor()
    await page.keyboard.press('Control+z')
  })

  test('a reading has several too where the row turns; beyond the turn there is none', async () => {
    await goTo('solve')
    await pick('Quantity', 'My pH error')
    await type('Wanted', '0.04')
    await pick('By changing', 'pH')
    await type('From', '7')
    await type('To', '8')
    await page.getByRole('button', { name: 'Find' }).press('Enter')
    await page.getByText(/^My pH error is 0\.04 at 2 values of pH: 7\.3, 7\.7\.$/).waitFor()
    await type('Wanted', '-1')
    await page.getByRole('button', { name: 'Find' }).press('Enter')
    await page.getByText(/^No value of pH from 7\.00 to 8\.00 gives My pH error −1\.00\.$/).waitFor()
    await page.getByText(/^The nearest that was seen is 0\.00, at pH 7\.50\.$/).waitFor()
  })
})

describe('the span of a chart', () => {
  test('with an end taken out there is no chart, the field says why, and none is kept until both stand', async () => {
    await goTo('sweep')
    await drawing().first().waitFor()
    const keep = page.getByRole('button', { name: 'Keep in the notebook' })
    const from = page.getByRole('textbox', { name: 'From' })
    const before = await from.inputValue()
    await type('From', '')
    await page.getByText(/both ends of the span are needed/).waitFor()
    expect(await from.getAttribute('aria-invalid')).toBe('true')
    const said = (await from.getAttribute('aria-describedby')) ?? ''
    expect(await page.locator(`[id="${said}"]`).textContent()).toMatch(/both ends of the span are needed/)
    await eventually(() => drawing().count()).toBe(0)
    expect(await keep.isDisabled()).toBe(true)
    await type('To', 'abc')
    expect(await page.getByRole('textbox', { name: 'To' }).inputValue()).toBe('abc')
    await type('From', before)
    expect(await from.getAttribute('aria-invalid')).toBe('false')
    expect(await drawing().count()).toBe(0)
    await type('To', '9')
    await drawing().first().waitFor()
    expect(await keep.isEnabled()).toBe(true)
    // another chart has ends of its own
    await type('To', '')
    await eventually(() => drawing().count()).toBe(0)
    await page.getByRole('button', { name: 'Index against pH' }).press('Enter')
    await eventually(() => page.getByRole('textbox', { name: 'To' }).inputValue()).not.toBe('')
    await eventually(() => page.getByText(/both ends of the span are needed/).count()).toBe(0)
  })
})

describe('scenarios side by side', () => {
  test('all of them, by keyboard, with a row of one’s own; kept, and taken out again', async () => {
    await goTo('compare')
    await tabTo(page, 'select[aria-label="Add a quantity…"]')
    await page.keyboard.type('My pH error')
    await page.keyboard.press('Tab')
    await page.getByRole('button', { name: 'Take out My pH error' }).waitFor()
    const spoken = () => drawing().first().getAttribute('aria-label')
    // of every scenario: (7.6 − 7.5)² and (7.2 − 7.5)²
    await eventually(spoken).toMatch(/My pH error: As tested 0\.01, What if 0\.09/)
    expect(await spoken()).toMatch(/pH: As tested 7\.6\S*, What if 7\.2/)
    // one is left out with the space bar, and comes back
    const boxes = page.getByRole('group', { name: 'Scenarios' }).getByRole('checkbox')
    expect(await boxes.count()).toBe(2)
    await boxes.nth(1).focus()
    await page.keyboard.press(' ')
    await eventually(spoken).not.toMatch(/What if/)
    await page.keyboard.press(' ')
    await eventually(spoken).toMatch(/What if/)
    await type('Name of the chart', 'Mine beside each other')
    await page.getByRole('button', { name: 'Keep in the notebook' }).press('Enter')
    const kept = page.getByRole('button', { name: 'Mine beside each other' })
    await kept.waitFor()
    await page.getByRole('button', { name: 'Remove', exact: true }).press('Enter')
    await eventually(() => kept.count()).toBe(0)
    expect(errors).toEqual([])
  })
})
