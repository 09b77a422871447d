import { readFileSync } from 'node:fs'
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { asNumber, cell, editor, enter, eventually, fault, ready, saved, select, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

const PATIENT = { timeout: 20_000 }

/** The names that are offered; they stand in the editor's shadow root. */
const offered = (page: Page): Locator => page.locator('.cm-tooltip-autocomplete li')

/** The formula editor with the caret in it. */
async function inEditor(page: Page): Promise<void> {
  await eventually(() => page.evaluate(() => document.activeElement?.matches('.formula .line') ?? false), PATIENT).toBe(
    true,
  )
}

/** Chooses from the menu of the selected cells, by keyboard. */
async function choose(page: Page, item: RegExp): Promise<void> {
  await page.keyboard.press('Shift+F10')
  const entry = page.getByRole('menuitem', { name: item })
  await entry.waitFor(PATIENT)
  await entry.press('Enter')
}

describe('the formula editor', () => {
  test('takes over all that was typed while it came, completes, marks and enters', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await enter(page, 'sample/ph', 1, '=baseline.ph - 0.1')
    await eventually(() => shown(page, 'sample/ph', 1), PATIENT).toBe('7.70')

    await select(page, 'sample/ph', 1)
    await page.keyboard.type('=')
    await inEditor(page)
    await page.keyboard.type('baseline.p')
    await eventually(() => offered(page).first().textContent(), PATIENT).toContain('ph')
    await page.keyboard.press('Tab')
    await eventually(() => editor(page).inputValue()).toBe('=baseline.ph')
    await page.keyboard.type(' - ROUND(0.21; ')
    await eventually(() => page.locator('.signature .current').textContent()).toBe('decimals')
    await page.keyboard.type('1)')
    await page.keyboard.press('Enter')
    await eventually(() => shown(page, 'sample/ph', 1)).toBe('7.60')
    await eventually(() => editor(page).count()).toBe(0)

    await select(page, 'sample/ph', 1)
    await page.keyboard.type('=phh + 1')
    await inEditor(page)
    await eventually(() => page.locator('.cm-fault').textContent()).toBe('phh')
    await page.keyboard.press('Enter')
    await eventually(() => fault(page)).toMatch(/“phh” at character 1 is no quantity/)
    await page.keyboard.press('Escape')
    await eventually(() => editor(page).count()).toBe(0)
    expect(await shown(page, 'sample/ph', 1)).toBe('7.60')

    // units: marked where they are, and not believed
    await page.keyboard.type('=salt')
    await inEditor(page)
    await eventually(() => page.locator('.faults').textContent()).toContain(
      'The row’s unit is pH, and its formula gives mg/L as NaCl.',
    )
    await page.keyboard.press('Enter')
    await eventually(() => fault(page)).toContain('mg/L as NaCl')
    await page.keyboard.press('Escape')
    await eventually(() => editor(page).count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })
})

test('says in which unit a bare number counts where the row is shown in another, while it is written and afterwards', async () => {
  const { page, errors } = await open(browser)
  await ready(page)
  await select(page, 'pool/measured_volume')
  await page.keyboard.type('=20 * 2')
  await inEditor(page)
  const says = /^counts in m³; shown in (US )?gal$/
  await eventually(() => page.locator('.formula .counts').textContent(), PATIENT).toMatch(says)
  await page.keyboard.press('Enter')
  // 40 m³
  await eventually(async () => asNumber(await shown(page, 'pool/measured_volume'))).toBeCloseTo(10567, -1)
  await select(page, 'pool/measured_volume')
  await page.locator('#margin p', { hasText: says }).first().waitFor()
  // mg/L and ppm are one number here: nothing to mistake
  await select(page, 'sample/total_alkalinity')
  await page.keyboard.type('=20 * 2')
  await inEditor(page)
  await eventually(() => page.locator('.formula .line').count()).toBe(1)
  expect(await page.locator('.formula .counts').textContent()).toBe('')
  await page.keyboard.press('Escape')
  expect(errors).toEqual([])
  await page.context().close()
})

describe('rows of one’s own', () => {
  test('whose label makes a name that cannot be say so while it is written', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await select(page, 'salt/salt_mass')
    await choose(page, /Add a row under it/)
    await page.getByLabel('Label').waitFor(PATIENT)
    // what a label would make a name of is told while it is written, and the caret stays where it is
    const told = () => page.locator('.row-dialog .name-fault').textContent()
    await page.keyboard.type('Volume')
    await eventually(told).toMatch(/There is a quantity “volume” already/)
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.value)).toBe('Volume')
    const named = page.getByLabel('Name in formulas')
    expect(await named.getAttribute('aria-invalid')).toBe('true')
    expect(await named.getAttribute('aria-describedby')).toBe(
      await page.locator('.row-dialog .name-fault').getAttribute('id'),
    )
    await page.keyboard.press('Control+A')
    await page.keyboard.type('Sum')
    await eventually(told).toMatch(/“sum” is a function/)
    await page.keyboard.press('Control+A')
    await page.keyboard.type('Salt, twice')
    await eventually(told).toBe('')
    expect(await named.getAttribute('aria-invalid')).toBe('false')
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('are added with completion, show no number while their units disagree, and are mended, by keyboard', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await enter(page, 'salt/salt_mass', 0, '10 kg')
    await select(page, 'salt/salt_mass')
    await choose(page, /Add a row under it/)
    await page.getByLabel('Label').waitFor(PATIENT)
    await page.keyboard.type('Salt, twice')
    await page.keyboard.press('Tab')
    expect(await page.getByLabel('Name in formulas').inputValue()).toBe('salt_twice')
    await page.keyboard.press('Tab')
    await page.keyboard.type('kg')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    await inEditor(page)
    await page.keyboard.type('2 * salt_mass')
    await offered(page).first().waitFor(PATIENT)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await page.keyboard.type(' + volume')
    await eventually(() => page.locator('.row-dialog .faults').textContent()).toMatch(/kg and m³ meet/)
    // a row in kg, which a US reader sees in pounds
    expect(await page.locator('.row-dialog .counts').textContent()).toBe('counts in kg; shown in lb')
    await page.keyboard.press('Enter')
    await eventually(() => shown(page, 'salt/salt_twice'), PATIENT).toBe('kg and m³ do not agree')
    await eventually(() => page.locator('#margin').textContent()).toMatch(/Salt, twice: at character 1 kg and m³ meet/)

    await choose(page, /Change this row/)
    await page.getByLabel('Label').waitFor(PATIENT)
    for (let step = 0; step < 4; step++) await page.keyboard.press('Tab')
    await inEditor(page)
    for (let step = 0; step < ' + volume'.length; step++) await page.keyboard.press('Backspace')
    await page.keyboard.press('Enter')
    // 20 kg in pounds, as a US reader has it
    await eventually(async () => asNumber(await shown(page, 'salt/salt_twice')), PATIENT).toBeCloseTo(44.09, 1)

    await choose(page, /Move this row down/)
    await eventually(() =>
      page
        .locator('#worksheet-salt .own-row')
        .evaluate((row) => row.closest('.row')?.previousElementSibling?.textContent),
    ).toContain('Whole bags')
    await saved(page)
    await page.reload()
    await eventually(async () => asNumber(await shown(page, 'salt/salt_twice')), PATIENT).toBeCloseTo(44.09, 1)
    await select(page, 'salt/salt_twice')
    await choose(page, /Remove this row/)
    await eventually(() => page.locator('.own-row').count()).toBe(0)
    await page.getByRole('button', { name: 'Undo' }).click()
    await eventually(() => page.locator('.own-row').count()).toBe(1)
    expect(errors).toEqual([])
    await page.context().close()
  })
})

describe('worksheets of one’s own', () => {
  test('are copied and changed, saved to a file, and read by a colleague', async () => {
    const { page, errors } = await open(browser, { path: '#notebooks' })
    await page.getByLabel('Copy a worksheet').selectOption({ label: 'Saturation' })
    await page.getByRole('button', { name: 'Copy it, to change the copy' }).press('Enter')
    const openIt = page.getByRole('button', { name: 'Open “Saturation, my copy”' })
    await openIt.waitFor(PATIENT)
    await openIt.press('Enter')
    const before = await shown(page, 'saturation/lsi')
    await eventually(() => shown(page, 'my_saturation/my_lsi'), PATIENT).toBe(before)
    await select(page, 'my_saturation/my_lsi')
    await choose(page, /Change this row/)
    await page.getByLabel('Label').waitFor(PATIENT)
    await page.keyboard.type('Index and one')
    for (let step = 0; step < 4; step++) await page.keyboard.press('Tab')
    await inEditor(page)
    await page.keyboard.press('End')
    await page.keyboard.type(' + 1')
    await page.keyboard.press('Enter')
    await eventually(async () => asNumber(await shown(page, 'my_saturation/my_lsi')), PATIENT).toBeCloseTo(
      asNumber(before) + 1,
      6,
    )
    expect(await shown(page, 'saturation/lsi')).toBe(before)
    expect(await cell(page, 'my_saturation/my_lsi').locator('xpath=..').textContent()).toContain('Index and one')

    await page.goto(`${page.url().split('#')[0]}#notebooks`)
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as a file, “Saturation, my copy”' }).press('Enter')
    const text = readFileSync(await (await download).path(), 'utf8')
    expect(JSON.parse(text)).toMatchObject({ format: 'basinbook-worksheet', id: 'my_saturation' })
    expect(errors).toEqual([])
    await page.context().close()

    const other = await open(browser, { path: '#notebooks' })
    const file = other.page.locator('input[type=file][aria-label="Load a worksheet"]')
    const asFile = (name: string, content: string) => ({
      name,
      mimeType: 'application/json',
      buffer: Buffer.from(content),
    })
    // one that wants to stand where the shipped index stands is refused, and changes nothing
    await file.setInputFiles(asFile('theirs.json', text.replaceAll('my_lsi', 'lsi')))
    await eventually(() => other.page.locator('.problems').first().textContent(), PATIENT).toMatch(
      /“lsi” comes with the app/,
    )
    await file.setInputFiles(asFile('theirs.json', text))
    await other.page.getByRole('button', { name: 'Open “Saturation, my copy”' }).press('Enter')
    await eventually(() => shown(other.page, 'saturation/lsi'), PATIENT).toBe(before)
    await eventually(async () => asNumber(await shown(other.page, 'my_saturation/my_lsi')), PATIENT).toBeCloseTo(
      asNumber(before) + 1,
      6,
    )
    await other.page.context().close()
  })
})

describe('an evaluation that runs away', () => {
  test('is stopped, its change taken back by name, and the notebook goes on', async () => {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      locale: 'en-US',
      serviceWorkers: 'block',
    })
    // No formula that is accepted runs away by itself, so the worker is given one number that it cannot get past.
    await context.route(/assets\/worker-[^/]*\.js$/, async (route) => {
      const answer = await route.fetch()
      const trap = `addEventListener('message', ({ data }) => { if (JSON.stringify(data).includes('0.123456')) for (;;); });`
      await route.fulfill({ response: answer, body: trap + (await answer.text()) })
    })
    const page = await context.newPage()
    await page.clock.install()
    const { inject } = await import('vitest')
    await page.goto(inject('address'))
    await ready(page)
    const before = await shown(page, 'sample/ph', 1)
    await enter(page, 'sample/ph', 1, '=baseline.ph - 0.123456')
    await eventually(() => editor(page).count(), PATIENT).toBe(0)
    for (let worker = 0; worker < 2; worker++) {
      await page.clock.fastForward(10_500)
      await page.waitForTimeout(300)
    }
    await eventually(() => page.locator('.banner').allTextContents(), PATIENT).toEqual(
      expect.arrayContaining([expect.stringMatching(/The last change, “pH” in “A third drained”.*was taken back/)]),
    )
    await eventually(() => shown(page, 'sample/ph', 1), PATIENT).toBe(before)
    await enter(page, 'sample/ph', 1, '7.4')
    await eventually(() => shown(page, 'sample/ph', 1)).toBe('7.4')
    await eventually(() => shown(page, 'saturation/ph', 1), PATIENT).toBe('7.4')
    await context.close()
  })
})
