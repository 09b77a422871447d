import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { asNumber, cell, difference, editor, enter, eventually, fault, ready, select, shown, undoAll } from './grid'
import { launch, open } from './open'

let browser: Browser
let page: Page
beforeAll(async () => {
  browser = await launch()
  page = (await open(browser)).page
  await ready(page)
})
afterEach(() => undoAll(page))
afterAll(() => browser.close())

const margin = () => page.locator('#margin').textContent()

describe('an entry that cannot be taken', () => {
  test.each([
    ['sample/ph', 'abc', /^pH: “abc” is not a number/],
    ['sample/ph', '15', /^pH.*15.*0.*14/],
    ['sample/calcium_hardness', '-20', /^Calcium hardness.*−?-?20/],
    ['sample/temperature', '20 ft', /^Temperature.*ft/],
    ['sample/ph', '=ph_saturatoin + 1', /“ph_saturatoin” .*is no quantity/],
  ] as const)('%s takes no “%s”: the editor stays open and says why', async (row, text, why) => {
    const before = await shown(page, row)
    await enter(page, row, 0, text)
    await eventually(() => fault(page)).toMatch(why)
    expect(await editor(page).inputValue()).toBe(text)
    expect(await editor(page).getAttribute('aria-invalid')).toBe('true')
    const described = await editor(page).getAttribute('aria-describedby')
    expect(await page.locator(`[id="${described}"]`).textContent()).toMatch(why)
    expect(await page.evaluate(() => document.activeElement?.matches('.editor input, .formula .line'))).toBe(true)
    // a press elsewhere neither takes it nor loses it
    await cell(page, 'sample/salt').click()
    expect(await editor(page).inputValue()).toBe(text)
    await page.keyboard.press('Escape')
    expect(await editor(page).count()).toBe(0)
    expect(await shown(page, row)).toBe(before)
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
  })
})

describe('an entry that is taken', () => {
  test('a temperature with its unit is kept as it was typed', async () => {
    await enter(page, 'sample/temperature', 0, '15 °C')
    await eventually(() => shown(page, 'sample/temperature')).toBe('59.0')
    await select(page, 'sample/temperature')
    await eventually(margin).toContain('Entered here as 15 °C')
    await page.keyboard.press('F2')
    expect(await editor(page).inputValue()).toBe('15 °C')
    await page.keyboard.press('Escape')
    await enter(page, 'sample/temperature', 0, '59 F')
    await eventually(() => shown(page, 'sample/temperature')).toBe('59')
  })

  test('a volume in gallons with a grouped thousand', async () => {
    await enter(page, 'pool/measured_volume', 0, '15,000 gal')
    await eventually(async () => asNumber(await shown(page, 'pool/volume'))).toBe(15_000)
    // the three scenarios share the pool: 2 % either way of a metered volume (contract)
    expect(asNumber(await shown(page, 'pool/volume_low', 1))).toBe(14_700)
  })

  test('a formula over another scenario, with its difference', async () => {
    await enter(page, 'sample/ph', 1, '=baseline.ph - 0.2')
    await eventually(async () => asNumber(await shown(page, 'sample/ph', 1))).toBeCloseTo(7.6, 9)
    expect(await difference(page, 'sample/ph', 1)).toBe('−0.20')
    await enter(page, 'sample/ph', 0, '7.5')
    await eventually(async () => asNumber(await shown(page, 'sample/ph', 1))).toBeCloseTo(7.3, 9)
    await select(page, 'sample/ph', 1)
    await page.keyboard.press('F2')
    expect(await editor(page).inputValue()).toBe('=baseline.ph - 0.2')
  })

  test('an unlikely one is kept, marked and questioned', async () => {
    await enter(page, 'sample/ph', 0, '9.4')
    await eventually(() => shown(page, 'sample/ph')).toBe('9.4')
    expect(await cell(page, 'sample/ph').locator('.mark').count()).toBe(1)
    expect(await page.locator('[aria-live=polite]').textContent()).toContain('pH is unusual')
    await select(page, 'sample/ph')
    await eventually(margin).toContain('pH is unusual')
    await eventually(() => page.locator('#worksheet-sample .findings').textContent()).toContain('pH is unusual')
    // out of its range, by weight and in words too
    expect(await cell(page, 'sample/ph').getAttribute('class')).toContain('out')
    expect((await cell(page, 'sample/ph').locator('.unseen').allTextContents()).join()).toContain('above the range')
  })
})

describe('a formula that needs its own result', () => {
  test('is refused with the way round, and nothing else changes', async () => {
    const before = await shown(page, 'saturation/lsi')
    await enter(page, 'sample/ph', 0, '=lsi + 1')
    await eventually(() => fault(page)).toMatch(/circle: pH in “As tested” → .* → pH in “As tested”/)
    await page.keyboard.press('Escape')
    await eventually(() => editor(page).count()).toBe(0)
    expect(await shown(page, 'saturation/lsi')).toBe(before)
  })
})

describe('a reading that is missing', () => {
  test('is named by all that needs it, wherever it is missing', async () => {
    await enter(page, 'sample/calcium_hardness', 0, '-')
    await eventually(() => shown(page, 'saturation/lsi')).toBe('needs calcium hardness')
    expect(await shown(page, 'sample/calcium_hardness')).toBe('–')
    // the second scenario works its calcium out of the baseline's, the third follows it
    await eventually(() => shown(page, 'saturation/lsi', 2)).toBe('needs calcium hardness')
    await select(page, 'saturation/lsi')
    await eventually(margin).toContain('calcium hardness')
    await enter(page, 'sample/ph', 0, '-')
    await eventually(() => shown(page, 'saturation/lsi')).toMatch(/^needs (pH, calcium hardness|calcium hardness, pH)$/)
  })

  test('Delete falls back to the sample, and in a later scenario to the baseline', async () => {
    await enter(page, 'sample/ph', 0, '7.2')
    await eventually(() => shown(page, 'sample/ph', 1)).toBe('7.2')
    await select(page, 'sample/ph')
    await page.keyboard.press('Delete')
    await eventually(() => shown(page, 'sample/ph')).toBe('7.8')
    await select(page, 'sample/ph', 2)
    await eventually(() => shown(page, 'sample/ph', 2)).toBe('7.4')
    await page.keyboard.press('Backspace')
    await eventually(() => shown(page, 'sample/ph', 2)).toBe('7.8')
    expect(await difference(page, 'sample/ph', 2)).toBe('·')
  })

  test('a stabilizer that was not taken counts as none in the index, visibly', async () => {
    await enter(page, 'sample/cyanuric_acid', 0, '-')
    await eventually(() => shown(page, 'saturation/cyanuric_acid_used')).toBe('0')
    expect(await cell(page, 'saturation/cyanuric_acid_used').locator('.mark').count()).toBe(1)
    await select(page, 'saturation/cyanuric_acid_used')
    await eventually(margin).toContain('Cyanuric acid was not tested for and is taken as 0 in this worksheet.')
  })

  test('stabilizer and borate that alone exceed the alkalinity are no water', async () => {
    await enter(page, 'sample/total_alkalinity', 0, '20')
    await enter(page, 'sample/cyanuric_acid', 0, '150')
    await eventually(() => shown(page, 'saturation/lsi')).toBe('no such water')
    await select(page, 'saturation/lsi')
    await eventually(margin).toMatch(/alkalinity/)
  })
})

describe('an editor that is left', () => {
  /** Enters a pH, and looks then and there and at every frame until the new index is there: whether the old pH was seen with the editor gone. */
  const enterWatched = (figure: string) =>
    page.evaluate(async (entered) => {
      const [ph, lsi] = ['sample/ph@', 'saturation/lsi@'].map((id) => document.querySelector(`.cell[id^="${id}"]`))
      const figureIn = (cell: Element | null | undefined) =>
        ['.whole', '.fraction'].map((part) => cell?.querySelector(part)?.firstChild?.textContent).join()
      const input = document.querySelector<HTMLInputElement>('.cell .editor input')
      if (!ph || !lsi || !input) throw new Error('no editor is open')
      const [phBefore, lsiBefore] = [figureIn(ph), figureIn(lsi)]
      input.value = entered
      input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }))
      for (let frame = 0; frame < 300; frame++) {
        const isOld = figureIn(ph) === phBefore
        if (isOld && !ph.querySelector('.editor')) return 'old'
        if (!isOld && figureIn(lsi) !== lsiBefore) return 'new'
        await new Promise(requestAnimationFrame)
      }
      return 'never'
    }, figure)

  test('goes with the redraw that brings the numbers, and uncovers no old one', async () => {
    const seen: string[] = []
    for (const figure of ['7.2', '7.3', '7.4', '7.5', '7.6']) {
      await select(page, 'sample/ph')
      await page.keyboard.type('1')
      seen.push(await enterWatched(figure))
      await eventually(() => editor(page).count()).toBe(0)
    }
    // Where the engine takes its time, it is not waited for.
    expect(seen).toContain('new')
  })

  /** Keys one after another, before the engine can have answered. */
  const keysAtOnce = (...keys: string[]) =>
    page.evaluate((pressed) => {
      for (const key of pressed) {
        const ctrlKey = key.startsWith('Control+')
        const event = { key: key.replace('Control+', ''), ctrlKey, bubbles: true, cancelable: true }
        document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', event))
      }
    }, keys)

  test('is left at once for the next key, which goes to the next cell', async () => {
    await select(page, 'sample/ph')
    await page.keyboard.type('7.3')
    await keysAtOnce('Enter', '9')
    expect(await editor(page).inputValue()).toBe('9')
    expect(await cell(page, 'sample/ph').locator('.editor').count()).toBe(0)
    await page.keyboard.press('Escape')
    await eventually(() => shown(page, 'sample/ph')).toBe('7.3')
    expect(await shown(page, 'sample/temperature')).not.toContain('9')
  })

  test('is left at once for what takes the entry back', async () => {
    const before = await shown(page, 'sample/ph')
    await select(page, 'sample/ph')
    await page.keyboard.type('7.1')
    await keysAtOnce('Enter', 'Control+z')
    await eventually(() => shown(page, 'sample/ph')).toBe(before)
    await eventually(() => editor(page).count()).toBe(0)
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true)
  })

  test('is left at once for a press elsewhere, and the entry is made once', async () => {
    const before = await shown(page, 'sample/ph')
    await select(page, 'sample/ph')
    await page.keyboard.type('7.1')
    await page.evaluate(() => {
      const input = document.activeElement
      input?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }))
      const salt = document.querySelector('.cell[id^="sample/salt@"]')
      salt?.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0 }))
    })
    await eventually(() => shown(page, 'sample/ph')).toBe('7.1')
    await eventually(() => cell(page, 'sample/salt').getAttribute('aria-selected')).toBe('true')
    await eventually(() => editor(page).count()).toBe(0)
    await page.keyboard.press('Control+z')
    await eventually(() => shown(page, 'sample/ph')).toBe(before)
  })

  test('a choice goes with its redraw too, and the next key is for the grid', async () => {
    await select(page, 'pool/shell')
    await page.keyboard.press('Enter')
    await page.locator('.choices').waitFor()
    await keysAtOnce('ArrowDown', 'Enter', 'ArrowDown')
    await eventually(() => page.locator('.choices').count()).toBe(0)
    const selected = await page.evaluate(() => document.activeElement?.id.split('@')[0])
    expect(selected).not.toBe('pool/shell')
    expect(selected?.startsWith('pool/')).toBe(true)
  })
})
