import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import axe from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { eventually, ready, tabTo } from './grid'
import { launch, open } from './open'

const SHOTS = resolve('test/browser/shots')

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

type Json = Record<string, Record<string, unknown>>

const value = (canonical: number, unit: string) => ({ kind: 'value', entered: String(canonical), unit, canonical })
const sample = (id: string, date: string, ph: number, salt: number, more: Json = {}) => ({
  id,
  name: `Bottle ${id}`,
  date,
  elsewhere: false,
  readings: {
    ph: value(ph, 'pH'),
    free_chlorine: value(3, 'mg/L as Cl2'),
    total_alkalinity: value(90, 'mg/L as CaCO3'),
    salt: value(salt, 'mg/L as NaCl'),
    cell_salt_reading: value(salt - 700, 'mg/L as NaCl'),
    ...more,
  },
})

/** The invented pool of the first visit with a season in its record: about 20 m³ by its shape, and 19 by its salt. */
function season(): string {
  const notebook = JSON.parse(readFileSync('examples/little-heron.json', 'utf8')) as Json
  const samples = [
    sample('a', '2026-06-01', 7.8, 800),
    sample('b', '2026-06-06', 7.6, 4150, { total_alkalinity: value(140, 'mg/L as CaCO3') }),
    sample('c', '2026-06-20', 7.7, 4000),
    sample('d', '2026-07-04', 7.9, 3900),
  ]
  const step = {
    kind: 'dose',
    says: 'Add 60 kg of salt.',
    how: ['Brush it about.'],
    cautions: [],
    product: 'salt',
    amount: { value: 60, unit: 'kg' },
    at: 0,
    wait: 24,
    retest: ['salt'],
    rules: [],
    water: { ph: 7.8, salt: 3800 },
  }
  const plan = {
    id: 'given',
    date: '2026-06-01T10:30',
    scenario: 'As tested',
    sample: 'a',
    swim: { now: 'yes', says: ['The readings are in range.'] },
    steps: [step],
    verdicts: [{ quantity: 'ph', verdict: 'nothing', says: 'pH is in range.' }],
    complete: true,
    water: { ph: 7.8, total_alkalinity: 90, salt: 800, volume: 20, volume_low: 18, volume_high: 22 },
    end: { ph: 7.8, total_alkalinity: 90, salt: 3800 },
    versions: { LANGELIER_INDEX: 999 },
  }
  const added = {
    id: 'x',
    date: '2026-06-02',
    product: 'salt',
    amount: 60,
    unit: 'kg',
    plan: 'given',
    step: 0,
    note: '',
  }
  return JSON.stringify({
    ...notebook,
    id: 'season',
    name: 'Little Heron, a season',
    samples: { ...notebook.samples, ...Object.fromEntries(samples.map((one) => [one.id, one])) },
    plans: { given: plan },
    additions: { x: added },
    remarks: { r: { id: 'r', date: '2026-06-10', text: 'Rain all week; the level was let down twice.' } },
  })
}

async function openSeason(page: Page): Promise<void> {
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'season.json',
      mimeType: 'application/json',
      buffer: Buffer.from(season()),
    })
  await page.locator('.rail h1', { hasText: 'a season' }).waitFor()
  await ready(page)
  await page.evaluate(() => {
    location.hash = '#record'
  })
  await page.locator('.record .record-lines').waitFor()
}

describe('the pool’s record', () => {
  test.each([
    [1440, false],
    [1440, true],
    [768, false],
    [390, false],
  ])('at %i, dark %s: reads well, breaks no rule a checker knows', async (width, dark) => {
    const { page, errors } = await open(browser, { path: '#notebooks', width, height: 1000, dark })
    await openSeason(page)
    await page.locator('.trends figure').first().waitFor()
    await eventually(() => page.locator('.proposal').count()).toBeGreaterThan(0)
    await page.evaluate(axe.source)
    const found = await page.evaluate(() =>
      (
        globalThis as unknown as {
          axe: { run: (context: unknown) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
        }
      ).axe.run(document.querySelector('.record')),
    )
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([])
    const wide = await page.evaluate(() => {
      const box = document.getElementById('page')
      return box === null ? 0 : box.scrollWidth - box.clientWidth
    })
    expect(wide).toBeLessThanOrEqual(1)
    await page.screenshot({ path: resolve(SHOTS, `record-${width}${dark ? '-dark' : ''}.png`) })
    await page.locator('.page').evaluate((box) => box.scrollTo(0, 900))
    await page.screenshot({ path: resolve(SHOTS, `record-${width}${dark ? '-dark' : ''}-2.png`) })
    await page.locator('.page').evaluate((box) => box.scrollTo(0, 99_999))
    await page.screenshot({ path: resolve(SHOTS, `record-${width}${dark ? '-dark' : ''}-3.png`) })
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('by keyboard: a volume is taken over, an addition and a note go in, lines are read out, all is there after a reload', async () => {
    const { page, errors } = await open(browser, { path: '#notebooks' })
    await openSeason(page)
    await eventually(() => page.locator('.proposal').first().textContent()).toMatch(/^The volume lies between/)
    expect(await page.locator('.record').textContent()).toMatch(
      /what it was worked out with has changed.*LANGELIER_INDEX/,
    )
    await page.getByRole('button', { name: /^Take it over: The volume lies/ }).focus()
    await page.keyboard.press('Enter')
    await eventually(() => page.locator('.record-lines .kind').first().textContent()).toBe('Learned')
    expect(await page.locator('.record-lines li').first().textContent()).toMatch(/Volume .* by the record/)

    // 3 mg/L in 10 h in 20.02 m³ are 6.0 g/h (by hand)
    await page.locator('.night summary').focus()
    await page.keyboard.press('Enter')
    for (const figure of ['2', '5', '10', '1']) {
      await page.keyboard.press('Tab')
      await page.keyboard.type(figure)
    }
    await page.keyboard.press('Enter')
    await page.getByText('The cell makes 6.0 g/h at full setting').waitFor()
    await page.getByRole('button', { name: /^Take it over: The cell makes/ }).focus()
    await page.keyboard.press('Enter')
    await eventually(() => page.locator('.record-lines').textContent()).toMatch(
      /Cell output 6\.0 g\/h by an overnight test/,
    )
    expect(await page.getByText('The cell makes 6.0 g/h').count()).toBe(1)
    await page.getByRole('button', { name: /^Take it over: The cell’s salt display/ }).focus()
    await page.keyboard.press('Enter')
    await page.getByText('700 ppm NaCl is added to what it shows').waitFor()
    expect(await page.locator('.proposal').count()).toBe(0)

    await page.getByRole('button', { name: 'Write down what was added' }).focus()
    await page.keyboard.press('Enter')
    await tabTo(page, 'input[name=amount]')
    await page.keyboard.type('2')
    await page.keyboard.press('Enter')
    await eventually(() => page.locator('.record-lines').textContent()).toMatch(/2 US gal of /)
    await page.getByRole('button', { name: 'Write a note' }).focus()
    await page.keyboard.press('Enter')
    await tabTo(page, 'textarea[name=text]')
    await page.keyboard.type('Skimmer basket was full.')
    await tabTo(page, 'button[type=submit]')
    await page.keyboard.press('Enter')
    await eventually(() => page.locator('.record-lines .written').allTextContents()).toContain(
      'Skimmer basket was full.',
    )

    await page.locator('.trends svg').first().focus()
    await page.keyboard.press('ArrowLeft')
    await eventually(() => page.locator('.trends svg').first().getAttribute('aria-label')).toMatch(
      /^pH 7\.90 on Jul 4, 2026/,
    )
    await page.keyboard.press('ArrowLeft')
    await page.keyboard.press('ArrowLeft')
    await eventually(() => page.locator('.trends svg').first().getAttribute('aria-label')).toMatch(
      /7\.60 on .*foretold 7\.80/,
    )

    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save samples and additions as CSV' }).click()
    const csv = readFileSync((await (await download).path()) ?? '', 'utf8')
    expect(csv.split('\n')[0]).toMatch(/^date,sample,product,amount,unit,strength,basis,note,.*ph/)
    expect(csv).toContain('2026-06-02,,salt,60,kg')

    await page.reload()
    await page.locator('.record .record-lines').waitFor()
    expect(await page.locator('.record-lines').textContent()).toContain('Skimmer basket was full.')
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('a plan is kept as given, stays so when the water changes, and its steps are marked as done', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await page.locator('.rail a[href="#plan"]').first().click()
    await page.locator('.plan[aria-busy=false] .swim').waitFor()
    await page.getByRole('button', { name: 'Keep this plan as given' }).click()
    await page.getByText('In the record as given on').waitFor()
    const first = await page.locator('.steps .says').first().textContent()
    await page
      .getByRole('button', { name: /^Mark as done: / })
      .first()
      .click()
    await page
      .getByText(/^Done on/)
      .first()
      .waitFor()
    await page.getByRole('link', { name: 'See the record' }).click()
    await page.locator('.record summary', { hasText: 'step' }).click()
    expect(await page.locator('.given-steps li p').first().textContent()).toBe(first)
    expect(await page.locator('.record-lines .kind').allTextContents()).toEqual(['Added', 'Plan given', 'Test'])
    // another day can be put, and whoever marks one step after the other stays in the unfolded plan
    const steps = page.locator('.given-steps .step-done')
    const next = steps.filter({ has: page.locator('button') }).first()
    await next.locator('input').fill('2026-05-01T09:30')
    await next.getByRole('button').press('Enter')
    await page.locator('.given-steps', { hasText: 'Done on May 1, 2026' }).waitFor()
    expect(await page.evaluate(() => document.activeElement?.closest('.given-steps') !== null)).toBe(true)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('samples chosen from a lab file go into the record of the pool that is open', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    await page.locator('input[type=file]').setInputFiles({
      name: 'visits.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from('Sample,Date,pH,Salt (mg/L)\nV-1,2026-07-01,7.4,3100\nV-2,2026-07-08,7.6,3150\n'),
    })
    await page.locator('.account').waitFor()
    await page.locator('table.samples thead input[type=checkbox]').check()
    await page.getByText('samples only, for the record').click()
    await page.locator('#page .switch').getByText('Little Heron').click()
    await page.getByRole('button', { name: /^Take 2 samples in/ }).click()
    await page.locator('.rail a[href="#record"]').click()
    // the example's bottle is always today's
    await eventually(() => page.locator('.record-lines .name').allTextContents()).toEqual([
      'The first bottle',
      'V-2',
      'V-1',
    ])
    await eventually(() => page.locator('.trends figcaption .name').allTextContents()).toEqual(['pH', 'Salt'])
    expect(errors).toEqual([])
    await page.context().close()
  })
})
