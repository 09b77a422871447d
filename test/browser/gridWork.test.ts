import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { cell, eventually, ready, scenarioNames, select, shown, undoAll } from './grid'
import { launch, open } from './open'

let browser: Browser
let page: Page
let errors: string[]
beforeAll(async () => {
  browser = await launch()
  const opened = await open(browser)
  page = opened.page
  errors = opened.errors
  await opened.context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await ready(page)
  await page.locator('.cell[id^="saturation/lsi@"]').nth(2).locator('.whole').waitFor()
})
afterEach(() => undoAll(page))
afterAll(() => browser.close())

const said = () => page.locator('[aria-live=polite]').first().textContent()
const clipboard = () => page.evaluate(() => navigator.clipboard.readText())
const put = (text: string) => page.evaluate((words) => navigator.clipboard.writeText(words), text)
const press = async (...keys: string[]) => {
  for (const key of keys) await page.keyboard.press(key)
}
const marked = () => page.locator('.cell[aria-selected=true]').count()
const report = (on: Page) => on.locator('.pasted')

describe('a range', () => {
  test('grows with Shift, is said, and shrinks to its cell with Escape', async () => {
    await select(page, 'sample/ph')
    await press('Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowRight')
    expect(await marked()).toBe(6)
    await eventually(said).toBe('3 rows by 2 scenarios selected')
    // the selected cell stays where the range began
    expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^sample\/ph@/)
    await press('Escape')
    expect(await marked()).toBe(1)
    await press('Shift+ ')
    expect(await marked()).toBe(3)
    await press('Control+ ')
    const rows = await page.locator('#worksheet-sample .row:not(.head, .group)').count()
    expect(await marked()).toBe(rows * 3)
    await press('Escape', 'Control+a')
    expect(await marked()).toBe(rows * 3)
    await press('Control+a')
    expect(await marked()).toBe(await page.locator('.cell').count())
    await press('Escape')
  })

  test('is drawn with the mouse, and chosen by a row’s name and a scenario’s heading', async () => {
    const from = await cell(page, 'sample/ph', 0).boundingBox()
    await cell(page, 'sample/ph', 0).scrollIntoViewIfNeeded()
    const [start, end] = [
      await cell(page, 'sample/ph', 0).boundingBox(),
      await cell(page, 'sample/total_alkalinity', 1).boundingBox(),
    ]
    if (!from || !start || !end) throw new Error('no cells')
    await page.mouse.move(start.x + 20, start.y + 10)
    await page.mouse.down()
    await page.mouse.move(start.x + 60, start.y + 40, { steps: 3 })
    await page.mouse.move(end.x + 20, end.y + 10, { steps: 3 })
    await page.mouse.up()
    expect(await marked()).toBe(6)
    await page.locator('[id="name-sample/temperature"]').click()
    expect(await marked()).toBe(3)
    await cell(page, 'sample/ph', 1).click()
    await cell(page, 'sample/temperature', 2).click({ modifiers: ['Shift'] })
    expect(await marked()).toBe(4)
    // what a finger does: the act, then a press on the other corner
    await cell(page, 'sample/ph', 0).click()
    await press('Shift+F10')
    await page.getByRole('menuitem', { name: 'Up to the cell pressed next' }).click()
    await eventually(said).toBe('Press the cell that the range is to reach.')
    await cell(page, 'sample/temperature', 1).click()
    expect(await marked()).toBe(4)
    await page.locator('#worksheet-sample .head .scenario button').nth(1).click()
    expect(await marked()).toBe(await page.locator('#worksheet-sample .row:not(.head, .group)').count())
    await press('Escape')
  })
})

describe('the clipboard', () => {
  test('takes values out as tab-separated text, with names and units when asked', async () => {
    await select(page, 'sample/ph')
    await press('Shift+ArrowRight', 'Shift+ArrowDown', 'Control+c')
    await eventually(clipboard).toBe('7.8\t7.8\n82\t82')
    await press('Shift+F10')
    await page.getByRole('menuitem', { name: 'Copy with names and units' }).click()
    await eventually(clipboard).toBe(
      'Quantity\tUnit\tAs tested\tA third drained\npH\t\t7.8\t7.8\nTemperature\t°F\t82\t82',
    )
    await press('Escape')
  })

  test('brings values in through the same reading as typing, in one step, and reports what was refused and why', async () => {
    await put('7.4\t7.5\r\n20 °C\t\r\nabc\t110\r\n')
    await select(page, 'sample/ph', 1)
    await press('Control+v')
    await report(page).waitFor()
    expect(await report(page).textContent()).toMatch(
      /5 cells taken\..*One cell was refused.*In “A third drained”: Total alkalinity: “abc” is not a number/,
    )
    expect(await shown(page, 'sample/ph', 1)).toBe('7.4')
    expect(await shown(page, 'sample/ph', 2)).toBe('7.5')
    expect(await shown(page, 'sample/temperature', 1)).toBe('68.0')
    expect(await shown(page, 'sample/total_alkalinity', 2)).toBe('110')
    expect(await marked()).toBe(6)
    await press('Control+z')
    await eventually(() => shown(page, 'sample/ph', 2)).toBe('7.4')
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
    await report(page).getByRole('button', { name: 'Close' }).click()
    expect(await report(page).count()).toBe(0)
  })

  test('a table with our names and units that comes back from a spreadsheet finds its rows and scenarios, whatever is selected', async () => {
    await select(page, 'sample/ph')
    await press('Shift+ArrowRight', 'Shift+ArrowDown', 'Shift+F10')
    await page.getByRole('menuitem', { name: 'Copy with names and units' }).click()
    await eventually(clipboard).toContain('Temperature')
    const [head = '', ph = '', temperature = ''] = (await clipboard()).split('\n')
    // as a person would change it there: another order, degrees Celsius, a scenario and a row that are not ours
    const celsius = temperature.replace(/°F.*/, '°C\t20\t21\t5')
    await put([`${head}\tElsewhere`, celsius, `${ph}\t`, 'Colour\t\t1\t2\t'].join('\r\n'))
    await press('Escape')
    await select(page, 'pool/shell')
    await press('Control+v')
    await report(page).waitFor()
    expect(await report(page).textContent()).toMatch(
      /2 cells taken\..*2 cells say what stands there already.*3 cells found no place by name\..*no row “Colour”.*no scenario “Elsewhere”/,
    )
    await eventually(() => shown(page, 'sample/temperature', 0)).toBe('68.0')
    await eventually(() => shown(page, 'sample/temperature', 1)).toBe('69.8')
    // what says the same was not typed over: it still follows the baseline
    expect(await shown(page, 'sample/ph', 1)).toBe('7.8')
    expect(await cell(page, 'sample/ph', 1).getAttribute('class')).not.toContain('here')
    await press('Control+z')
    await eventually(() => shown(page, 'sample/temperature', 0)).not.toBe('68.0')
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
    await report(page).getByRole('button', { name: 'Close' }).click()
  })

  test('leaves worked-out rows alone and counts them; a formula from outside is one only if it can be read', async () => {
    await put('1\t2')
    await select(page, 'saturation/lsi')
    const before = await shown(page, 'saturation/lsi')
    await press('Control+v')
    await eventually(() => report(page).textContent()).toContain('2 cells are worked out by the notebook')
    expect(await shown(page, 'saturation/lsi')).toBe(before)
    await put('=baseline.ph - 0.3\t=CMD("x")')
    await select(page, 'sample/ph', 1)
    await press('Control+v')
    await eventually(() => report(page).textContent()).toMatch(/One cell taken.*One cell was refused.*CMD/s)
    await eventually(() => shown(page, 'sample/ph', 1)).toBe('7.50')
    expect(await shown(page, 'sample/ph', 2)).toBe('7.4')
    await report(page).getByRole('button', { name: 'Close' }).click()
  })

  test('keeps formulas, units and “not taken” inside the notebook, and cuts', async () => {
    await select(page, 'sample/ph', 1)
    await page.keyboard.type('=baseline.ph - 0.1')
    await press('Enter')
    await page.keyboard.type('20 °C')
    await press('Enter')
    await page.keyboard.type('-')
    await press('Enter')
    await eventually(() => shown(page, 'sample/ph', 1)).toBe('7.70')
    await select(page, 'sample/ph', 1)
    await press('Shift+ArrowDown', 'Shift+ArrowDown', 'Control+x')
    await eventually(() => shown(page, 'sample/ph', 1)).toBe('7.8')
    await select(page, 'sample/ph', 2)
    await press('Control+v')
    await eventually(() => shown(page, 'sample/ph', 2)).toBe('7.70')
    await select(page, 'sample/ph', 2)
    await press('F2')
    expect(await page.locator('.cell .editor input').inputValue()).toBe('=baseline.ph - 0.1')
    await press('Escape', 'ArrowDown', 'F2')
    expect(await page.locator('.cell .editor input').inputValue()).toBe('20 °C')
    await press('Escape')
    expect(await cell(page, 'sample/total_alkalinity', 2).getAttribute('class')).toContain('blank')
  })
})

describe('over a range', () => {
  test('Ctrl R fills to the right and Delete clears, each in one step', async () => {
    await select(page, 'sample/ph')
    await page.keyboard.type('7.1')
    await press('Enter')
    await select(page, 'sample/ph')
    await press('Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowDown', 'Control+r')
    await eventually(said).toBe('4 cells filled')
    await eventually(() => shown(page, 'sample/ph', 2)).toBe('7.1')
    await press('Delete')
    await eventually(() => shown(page, 'sample/ph', 0)).toBe('7.8')
    expect(await shown(page, 'sample/ph', 2)).toBe('7.8')
    await press('Control+z', 'Control+z', 'Control+z')
    await eventually(() => shown(page, 'sample/ph', 2)).toBe('7.4')
    await press('Escape')
  })
})

describe('finding and folding', () => {
  test('a part of a name leads to the quantity, also into what is folded', async () => {
    await select(page, 'sample/ph', 1)
    await press('/')
    await page.locator('.find input').waitFor()
    await page.keyboard.type('ryzn')
    await press('Enter')
    expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^saturation\/ryznar@/)
    await press('Alt+Shift+ArrowUp')
    await eventually(() => cell(page, 'saturation/ryznar').count()).toBe(0)
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-expanded'))).toBe('false')
    // the folded group is one line for the arrows
    await press('ArrowUp', 'ArrowDown')
    expect(await page.evaluate(() => document.activeElement?.id)).toMatch(/^fold-saturation\//)
    await press('Control+f')
    await page.locator('.find input').waitFor()
    await page.keyboard.type('ryznar')
    await press('Enter')
    await eventually(() => page.evaluate(() => document.activeElement?.id)).toMatch(/^saturation\/ryznar@/)
  })

  test('a folded worksheet stays folded over a reload, and opens with Enter', async () => {
    await select(page, 'salt/salt_mass')
    await press('Alt+Shift+ArrowUp', 'Alt+Shift+ArrowUp')
    await eventually(() => page.locator('#worksheet-salt .grid').count()).toBe(0)
    await page.reload()
    await ready(page)
    expect(await page.locator('#worksheet-salt .grid').count()).toBe(0)
    await page.locator('#fold-salt').focus()
    await press('Enter')
    await page.locator('#worksheet-salt .grid').waitFor()
    await page.locator('#worksheet-salt .fold[aria-expanded=false]').click()
    expect(await page.locator('#worksheet-salt .fold[aria-expanded=false]').count()).toBe(0)
  })
})

describe('scenario columns', () => {
  test('are widened by the keyboard and by drawing their edge, and stay so', async () => {
    const width = async () => (await cell(page, 'pool/shell', 1).boundingBox())?.width ?? 0
    const before = await width()
    await select(page, 'pool/shell', 1)
    await press('Shift+F10')
    await page.getByRole('menu').waitFor()
    await press('End', 'Enter')
    await page.getByRole('menuitem', { name: 'Change the width' }).click()
    await press('ArrowRight', 'ArrowRight', 'Enter')
    expect(Math.round((await width()) - before)).toBe(16)
    await page.reload()
    await ready(page)
    expect(Math.round((await width()) - before)).toBe(16)
    await page.locator('#worksheet-pool .head .scenario .width-handle').nth(1).dblclick()
    expect(await width()).toBe(before)
  })

  test('are dragged to another place; the baseline stays the first', async () => {
    const names = await scenarioNames(page)
    const head = (at: number) => page.locator('#worksheet-pool .head .scenario .name').nth(at)
    await head(2).dragTo(head(1))
    expect(await scenarioNames(page)).toEqual([names[0], names[2], names[1]])
    expect(await page.getByRole('menu').count()).toBe(0)
    await head(1).dragTo(head(0))
    expect(await scenarioNames(page)).toEqual([names[0], names[2], names[1]])
    await head(0).dragTo(head(2))
    expect(await scenarioNames(page)).toEqual([names[0], names[2], names[1]])
    await press('Escape')
  })
})

test('a cell says its row, scenario, value, unit and what it stands on', async () => {
  const name = (row: string, column: number) =>
    cell(page, row as `${string}/${string}`, column).evaluate((element) =>
      (element.getAttribute('aria-labelledby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent ?? '')
        .join(' ')
        .replace(/\s+/g, ' '),
    )
  expect(await name('sample/ph', 0)).toMatch(/^pH ?As tested.* 7\.8.*from the sample/)
  expect(await name('sample/temperature', 1)).toMatch(/^Temperature.*A third drained.* 82.*°F, follows the baseline/)
  await page
    .getByRole('gridcell', { name: /^Langelier index.*As tested/ })
    .first()
    .waitFor()
  expect(errors).toEqual([])
})
