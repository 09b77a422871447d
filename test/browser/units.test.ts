import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { asNumber, cell, enter, eventually, ready, select, shown } from './grid'
import { launch, open } from './open'

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** Of one metric unit: factor and zero shift, by definition of the customary units (NIST Handbook 44, appendix C). */
const CUSTOMARY: Readonly<Record<string, readonly [metric: string, factor: number, shift?: number]>> = {
  '°F': ['°C', 1.8, 32],
  ft: ['m', 1 / 0.3048],
  in: ['m', 1 / 0.0254],
  'ft²': ['m²', 1 / 0.3048 ** 2],
  'US gal': ['m³', 1000 / 3.785411784],
  'US gal/min': ['m³/h', 1000 / 3.785411784 / 60],
  'US gal/day': ['L/day', 1 / 3.785411784],
  lb: ['kg', 1 / 0.45359237],
  'US fl oz': ['L', 128 / 3.785411784],
  'US qt': ['L', 4 / 3.785411784],
  mph: ['m/s', 3600 / 1609.344],
  'ft/min': ['m/s', 60 / 0.3048],
}

interface Figure {
  readonly id: string
  readonly unit: string
  readonly text: string
  readonly difference: string
}

const figures = (page: Page): Promise<Figure[]> =>
  page.locator('.cell:has(.whole)').evaluateAll((cells) =>
    cells.map((cell) => {
      const fraction = cell.querySelector('.fraction')?.cloneNode(true) as Element
      for (const other of fraction.querySelectorAll('.mark, .unseen')) other.remove()
      return {
        id: cell.id,
        unit: (cell.closest('.row')?.querySelector('[role=gridcell].unit')?.textContent ?? '').trim(),
        text: `${cell.querySelector('.whole')?.textContent}${fraction.textContent}`,
        difference: cell.querySelector('.difference')?.textContent ?? '',
      }
    }),
  )

/** Half of the last decimal that is shown. */
const rounding = (text: string) => 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0) * 1.0001

describe('units', () => {
  test('the switch changes how every number is shown, and not one quantity', async () => {
    const { page, errors } = await open(browser)
    await ready(page)
    await enter(page, 'pool/air_temperature', 0, '75')
    await enter(page, 'pool/wind_speed', 0, '2')
    await enter(page, 'salt/target_salt', 0, '5000')
    await enter(page, 'ph_alkalinity/target_ph', 0, '7.4')
    await eventually(() => shown(page, 'salt/salt_mass')).not.toMatch(/needs|^$/)
    const us = await figures(page)
    await page.getByText('Metric', { exact: true }).click()
    await eventually(async () => (await figures(page)).find(({ id }) => id.startsWith('sample/temp'))?.unit).toBe('°C')
    const metric = new Map((await figures(page)).map((figure) => [figure.id, figure]))
    expect(us.length).toBeGreaterThan(150)

    let converted = 0
    for (const { id, unit, text, difference } of us) {
      const other = metric.get(id)
      if (!other) throw new Error(`${id} shows no figure in metric units`)
      if (text === '–') {
        expect(other.text, id).toBe(text)
        continue
      }
      // In water a ppm is a mg/L; in air it is a ppm in both systems.
      const same = unit === other.unit || unit.replace(/^ppm/, 'mg/L') === other.unit
      const [expected, factor, shift = 0] = same ? [other.unit, 1] : (CUSTOMARY[unit] ?? ['?', Number.NaN])
      expect(other.unit, `${id}, ${unit}`).toBe(expected)
      if (factor !== 1) converted++
      const close = (a: string, b: string, zero: number) =>
        Math.abs(asNumber(a) - (asNumber(b) * factor + zero)) <= rounding(a) + rounding(b) * factor
      expect(close(text, other.text, shift), `${id}: ${text} ${unit} and ${other.text} ${other.unit}`).toBe(true)
      if (/\d/.test(difference) && /\d/.test(other.difference)) {
        expect(
          close(difference, other.difference, 0),
          `${id}: ${difference} ${unit} and ${other.difference} ${other.unit} from the baseline`,
        ).toBe(true)
      }
    }
    expect(converted).toBeGreaterThan(25)

    await page.getByText('US customary', { exact: true }).click()
    await eventually(() => figures(page)).toEqual(us)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('ppm, degrees and gallons are accepted in any cell, in either system', async () => {
    const { page } = await open(browser)
    await ready(page)
    await page.getByText('Metric', { exact: true }).click()
    for (const [row, entered, shownAs] of [
      ['sample/temperature', '59 °F', 15],
      ['sample/temperature', '300 K', 26.9],
      ['sample/total_alkalinity', '80 ppm', 80],
      // 1 °dH is 17.848 mg/L as CaCO3 (ISO 6059)
      ['sample/calcium_hardness', '10 °dH', 178],
      ['pool/measured_volume', '10,000 US gal', 37.9],
      ['pool/measured_volume', '1000 cu ft', 28.3],
      ['pool/diameter', '15 ft', 4.57],
      ['pool/pump_flow', '30 gpm', 6.8],
    ] as const) {
      await enter(page, row, 0, entered)
      await eventually(async () => Math.abs(asNumber(await shown(page, row)) - shownAs), {
        message: entered,
      }).toBeLessThan(0.06)
    }
    // a gallon is asked for where both gallons are about
    await enter(page, 'pool/measured_volume', 0, '10000 gal')
    await eventually(() => page.locator('.cell .editor [role=alert]').textContent()).toMatch(/US gal/)
    await page.keyboard.press('Escape')
    await page.context().close()
  })

  test('one row can be shown in a unit of its own', async () => {
    const { page } = await open(browser)
    await ready(page)
    await select(page, 'pool/volume')
    const choice = page.locator('#margin select')
    await choice.selectOption({ label: 'm³' })
    await eventually(async () => asNumber(await shown(page, 'pool/volume'))).toBeCloseTo(20, 0)
    expect(await cell(page, 'pool/volume').locator('xpath=..').locator('[role=gridcell].unit').textContent()).toBe('m³')
    await choice.selectOption({ label: 'the usual unit' })
    await eventually(async () => asNumber(await shown(page, 'pool/volume'))).toBeCloseTo(5287, -1)
    await page.context().close()
  })
})
