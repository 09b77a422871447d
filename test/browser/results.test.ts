import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { ready, scenarioNames } from './grid'
import { launch, open } from './open'

const FILE = resolve('examples/lab-forty.csv')

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** A lab file of so many invented samples; every hundredth cannot be read, every tenth lacks calcium. */
function labText(samples: number): string {
  const rows = ['Sample,Date,pH,Water temp (°C),Free Cl (mg/L),TA (mg/L),Ca hardness (mg/L),CYA (mg/L),Salt (g/L)']
  for (let i = 1; i <= samples; i++) {
    const ph = i % 100 === 0 ? 'torn off' : (7 + (i % 9) / 10).toFixed(2)
    const calcium = i % 10 === 0 ? '' : 150 + (i % 300)
    rows.push(
      `N-${i},2026-06-${String(1 + (i % 28)).padStart(2, '0')},${ph},${20 + (i % 11)},1.50,90,${calcium},40,3.10`,
    )
  }
  return `${rows.join('\n')}\n`
}

async function choose(page: Page, name: string, text: string | Buffer): Promise<void> {
  await page
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: typeof text === 'string' ? Buffer.from(text) : text })
}

/** The texts of one column, in the rows that are drawn, top first. */
function shownIn(page: Page, heading: string): Promise<string[]> {
  return page.locator('table.samples').evaluate((table, wanted) => {
    const heads = [...table.querySelectorAll('thead th')]
    const at = heads.findIndex((head) => head.querySelector('.label')?.textContent === wanted)
    const rows = [...table.querySelectorAll('tbody tr')]
    rows.sort((a, b) => Number(a.getAttribute('aria-rowindex')) - Number(b.getAttribute('aria-rowindex')))
    return rows.map((row) => row.children[at]?.childNodes[0]?.textContent ?? '')
  }, heading)
}

const workOut = async (page: Page) => {
  await page.getByRole('button', { name: /^Work out/ }).click()
  // columns are drawn a few a frame: until the last of them is there, the table is busy
  await page.locator('table.samples[aria-busy=false] td.result').first().waitFor()
}

describe('the samples of a lab file', () => {
  test('are worked out, sorted, held to conditions and traced to the file', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    await choose(page, 'lab-forty.csv', readFileSync(FILE))
    await workOut(page)
    const index = await shownIn(page, 'Langelier index')
    expect(index.filter((text) => /^−?\d\.\d\d$/.test(text)).length).toBe(30)
    // TB-008 has no stabilizer: the index takes it as none, active chlorine waits for it
    const names = await shownIn(page, 'Sample')
    expect((await shownIn(page, 'Active chlorine (HOCl)'))[names.indexOf('TB-008')]).toBe('needs cyanuric acid')

    await page.getByRole('button', { name: /^pH/ }).click()
    await expect.poll(async () => (await shownIn(page, 'pH'))[0]).toBe('7.14')
    const ph = (await shownIn(page, 'pH')).map(Number)
    expect(ph).toEqual([...ph].sort((a, b) => a - b))
    expect(await page.getByRole('columnheader', { name: /^pH/ }).getAttribute('aria-sort')).toBe('ascending')
    await page.getByRole('button', { name: /^pH/ }).click()
    await expect.poll(async () => (await shownIn(page, 'pH'))[0]).toBe('7.84')

    await page.getByLabel('Show only samples where').selectOption({ label: 'pH' })
    await page.getByRole('textbox', { name: 'at least' }).fill('7.80')
    await page.getByRole('button', { name: 'Show these' }).click()
    await expect.poll(() => shownIn(page, 'Sample')).toHaveLength(4)
    await page.getByText('4 of 33 samples').waitFor()
    await page.getByRole('button', { name: 'Leave out the condition: pH at least 7.80' }).click()
    await expect.poll(() => shownIn(page, 'Sample')).toHaveLength(33)

    // TB-004 stands in row 5 of the file, its alkalinity under “TA (mmol/L)”
    await page.getByLabel('Show only samples where').selectOption({ label: 'anything of the sample' })
    await page.getByRole('textbox', { name: 'Text' }).fill('TB-004')
    await page.getByRole('button', { name: 'Show these' }).click()
    await expect.poll(() => shownIn(page, 'Sample')).toEqual(['TB-004'])
    await page.locator('table.samples td.reading').nth(2).click()
    expect(await page.locator('.trace').textContent()).toContain('lab-forty.csv, row 5, column “TA (mmol/L)”')
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('are gone through by the keyboard alone, and the chosen ones become samples of the notebook', async () => {
    const { page } = await open(browser, { path: '#lab' })
    await choose(page, 'many.csv', labText(3_000))
    await page.locator('table.samples tbody tr').first().waitFor()
    const grid = page.getByRole('grid', { name: 'Samples and results' })
    // the heading is the first row; thirty rows of the file cannot be read
    expect(await grid.getAttribute('aria-rowcount')).toBe('2971')
    await grid.focus()
    const at = () => grid.getAttribute('aria-activedescendant')
    await page.keyboard.press('Control+End')
    await expect.poll(at).toMatch(/^sample-2969-/)
    await page.locator('table.samples td.at').waitFor()
    expect(await shownIn(page, 'Sample').then((names) => names.at(-1))).toBe('N-2999')
    await page.keyboard.press('Space')
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Space')
    await page.keyboard.press('Control+Home')
    await expect.poll(at).toBe('sample-0-0')
    await page.getByText('2 are chosen.').waitFor()
    expect(await page.locator('table.samples tbody tr').count()).toBeLessThan(60)

    await page.getByText('samples only').click()
    await page.getByRole('button', { name: 'Take 2 samples in' }).click()
    await page.getByText('None is chosen yet').waitFor()
    await page.getByText('Kept in this browser.').waitFor()
    await page.goto(`${page.url().split('#')[0]}#worksheets`)
    await ready(page)
    expect(await scenarioNames(page)).toHaveLength(3)
    await page.locator('#worksheet-pool .head .scenario button').nth(1).click()
    expect(await page.getByRole('menuitemradio').allTextContents()).toEqual(
      expect.arrayContaining([expect.stringContaining('N-2999'), expect.stringContaining('N-2998')]),
    )
    await page.context().close()
  })

  test('are saved as CSV in contract names, as they are shown', async () => {
    const { page } = await open(browser, { path: '#lab' })
    await choose(page, 'many.csv', labText(250))
    await workOut(page)
    await page.getByRole('button', { name: /^pH/ }).click()
    await expect.poll(async () => (await shownIn(page, 'pH'))[0]).toBe('7.00')
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save the shown rows as CSV' }).click()
    const saved = await download
    expect(saved.suggestedFilename()).toBe('many.results.csv')
    const lines = readFileSync((await saved.path()) ?? '', 'utf8')
      .trimEnd()
      .split('\n')
    expect(lines).toHaveLength(249)
    const [header = '', ...rows] = lines.map((line) => line.split(','))
    expect(header.slice(0, 5)).toEqual(['row', 'sample', 'date', 'ph', 'temperature'])
    const ph = rows.map((cells) => Number(cells[3]))
    expect(ph).toEqual([...ph].sort((a, b) => a - b))
    await page.context().close()
  })

  test('have a summary and a chart', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    await choose(page, 'many.csv', labText(1_000))
    await workOut(page)
    const line = page.locator('table.summary tr', { hasText: 'Calcium hardness' })
    // ninety of a hundred have calcium, but every hundredth row of the file was refused for its pH
    await expect.poll(() => line.locator('td').nth(1).textContent()).toBe('900')
    expect(await line.locator('td').nth(2).textContent()).toBe('90')
    await page.getByLabel('Up').selectOption({ label: 'Langelier index' })
    await page.getByLabel('Across').selectOption({ label: 'Calcium hardness' })
    await expect
      .poll(() => page.locator('.chart .readout').textContent())
      .toBe('Langelier index against Calcium hardness, 900 samples')
    const inked = await page.locator('.chart canvas').evaluate((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement
      const { data } = (canvas as HTMLCanvasElement).getContext('2d')?.getImageData(0, 0, width, height) ?? { data: [] }
      return data.filter((_, i) => i % 4 === 3).filter((alpha) => alpha > 0).length
    })
    expect(inked).toBeGreaterThan(900)
    await page.locator('.chart canvas').focus()
    await page.keyboard.press('ArrowRight')
    expect(await page.locator('.chart .readout').textContent()).toMatch(/^N-1, Langelier index −?\d\.\d\d/)
    expect(errors).toEqual([])
    await page.context().close()
  })
})

describe('a long file', () => {
  const text = labText(100_000)

  test('is read in with rows and time left to see, and a cancel leaves nothing of it', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    await choose(page, 'long.csv', text)
    await page.locator('progress').waitFor()
    await expect.poll(() => page.locator('.progress').textContent()).toMatch(/\d+ rows/)
    await page.getByRole('button', { name: 'Cancel' }).click()
    await expect.poll(() => page.locator('progress').count()).toBe(0)
    expect(await page.locator('.account').count()).toBe(0)
    expect(await page.locator('table.samples').count()).toBe(0)
    expect(await page.evaluate(() => indexedDB.databases().then((all) => all.map(({ name }) => name)))).toEqual([
      'basinbook',
    ])
    await page.reload()
    expect(await page.getByText('Lab files that are kept').count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('is worked out beside the page, and a cancel takes nothing over', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    await choose(page, 'long.csv', text)
    await page.locator('.account').waitFor()
    expect(await page.locator('.account').textContent()).toBe('100000 rows: 99000 samples, 1000 refused, 0 skipped.')
    await page.getByRole('button', { name: /^Work out/ }).click()
    await expect.poll(() => page.locator('.progress').textContent()).toMatch(/[1-9]\d* of 99000.*left/)
    // the page answers all the while
    await page.getByRole('button', { name: /^Total alkalinity/ }).click()
    await page.getByRole('button', { name: 'Cancel' }).click()
    await expect.poll(() => page.locator('progress').count()).toBe(0)
    expect(await page.locator('table.samples td.result').count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })
})

describe('a lab file that is kept', () => {
  test('is there after a reload with its account, samples and refused rows, until it is deleted', async () => {
    const { page, errors } = await open(browser, { path: '#lab' })
    await choose(page, 'lab-forty.csv', readFileSync(FILE))
    await page.getByRole('button', { name: 'Keep in this browser' }).click()
    await page.locator('.facts').getByText('Kept in this browser.').waitFor()
    await page.reload()
    await page.getByRole('link', { name: 'Open lab-forty.csv' }).click()
    await page.locator('.account').waitFor()
    expect(await page.locator('.account').textContent()).toBe('41 rows: 33 samples, 7 refused, 1 skipped.')
    await expect.poll(() => shownIn(page, 'Sample')).toHaveLength(33)
    expect((await shownIn(page, 'Free chlorine')).slice(0, 3)).toEqual(['1.13', '1.12', '<0.2'])
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save these rows as a file' }).click()
    const refused = readFileSync((await (await download).path()) ?? '', 'utf8')
    expect(refused.split('\n')[0]).toBe('row,column,found,why,cells')
    expect(refused).toContain('siehe Rückseite')

    const asItCame = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save the file as it came' }).click()
    expect(readFileSync((await (await asItCame).path()) ?? '')).toEqual(readFileSync(FILE))

    await page.getByRole('link', { name: 'All lab files' }).click()
    await page.getByRole('button', { name: 'Delete lab-forty.csv' }).click()
    await page.getByRole('button', { name: 'Delete, for good lab-forty.csv' }).click()
    await expect.poll(() => page.getByText('Lab files that are kept').count()).toBe(0)
    expect(errors).toEqual([])
    await page.context().close()
  })

  test('and how one laboratory’s files are read is known again by their headings', async () => {
    const { page } = await open(browser, { path: '#lab' })
    await choose(page, 'first.csv', 'Sample,pH,Chlorine (ppm)\nA,7.4,1.5\n')
    await page.locator('.questions').waitFor()
    await page.getByRole('radio', { name: 'Free chlorine' }).click()
    await page.locator('table.samples tbody tr').first().waitFor()
    await page.getByLabel('Read files like this one so again, under the name').fill('Bench at Nowhere')
    await page.getByRole('button', { name: 'Keep this reading' }).click()
    await page.locator('#page').getByText('will be read as “Bench at Nowhere”').waitFor()
    await choose(page, 'second.csv', 'Sample,pH,Chlorine (ppm)\nB,7.6,2.5\n')
    await page.locator('#page').getByText('read as you said for “Bench at Nowhere”').waitFor()
    await expect.poll(() => shownIn(page, 'Free chlorine')).toEqual(['2.5'])
    expect(await page.locator('.questions').count()).toBe(0)
    await page.getByRole('button', { name: 'Read them anew' }).click()
    await page.locator('.questions').waitFor()
    await page.context().close()
  })
})
