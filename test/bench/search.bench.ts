import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, test } from 'vitest'
import { createFinder } from '../../src/storage/finder'
import { folded } from '../../src/storage/folded'
import { launch, open } from '../browser/open'
import { longestTask } from './longestTask'
import { median, report } from './report'

const POOLS = 10_000

const FIRST = ['Adela', 'Bruno', 'Chloé', 'Dário', 'Elin', 'Farid', 'Grażyna', 'Hiro', 'Inés', 'Jürgen', 'Kaja', 'Liam']
const LAST = ['Alvarez', 'Bjørnson', 'Castellanos', 'Dubois', 'Eriksen', 'Fernández', 'Großmann', 'Hawthorne', 'Ibarra']
const STREET = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm', 'Fir', 'Gull', 'Hazel', 'Iris', 'Juniper', 'Kestrel']

/** Invented customers, each with a place and a line of notes. */
const pools = Array.from({ length: POOLS }, (_, i) => {
  const name = `${FIRST[i % FIRST.length]} ${LAST[(i * 7) % LAST.length]} ${i}`
  const place = `${(i * 13) % 400} ${STREET[(i * 5) % STREET.length]} Lane`
  return { name, place, words: folded(`${name} ${place} vinyl, salt cell, gate at the side, dog is friendly`) }
})

/** What somebody types, letter by letter: a name, a number, one with a slip, one that is nowhere. */
const TYPED = ['gras', 'grazyna dub', '4711', 'castelanos', 'kestrel lane', 'zzzz'].flatMap((text) =>
  Array.from(text, (_, i) => text.slice(0, i + 1)),
)

let browser: Browser
beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

/** For each key the median of twenty rounds: one round may be disturbed by anything. */
function times(search: (query: string) => unknown): number[] {
  return TYPED.map((query) => {
    const rounds = Array.from({ length: 20 }, () => {
      const start = performance.now()
      search(query)
      return performance.now() - start
    })
    return median(rounds)
  })
}

/** Puts the pools into the store as they would stand there, at once. */
async function fill(page: Page): Promise<void> {
  await page.evaluate(async (entries) => {
    const database = await new Promise<IDBDatabase>((done) => {
      const request = indexedDB.open('basinbook')
      request.onsuccess = () => done(request.result)
    })
    const writing = database.transaction('notebooks', 'readwrite')
    entries.forEach((entry, i) => {
      writing.objectStore('notebooks').put({ ...entry, id: `many-${i}`, changed: i, head: 0, snapshot: 0 })
    })
    await new Promise((done) => {
      writing.oncomplete = done
    })
    database.close()
  }, pools)
}

describe('search over ten thousand pools', () => {
  test('a key typed, against Array.filter and includes over the same names', () => {
    const finder = createFinder(pools)
    finder.find('warm up castelanos')
    const ours = times((query) => finder.find(query))
    const names = pools.map(({ words }) => words)
    const plain = times((query) => names.filter((name) => name.includes(query)))
    report(
      'search over ten thousand pools: a key, median',
      `${median(ours).toFixed(2)} ms`,
      `filter, includes ${median(plain).toFixed(2)} ms`,
      median(ours) / median(plain),
    )
    report('  the slowest key (a slip: one letter off)', `${Math.max(...ours).toFixed(1)} ms`, '', null, 'under 50 ms')
  })

  test('in the page: list read, and keys typed', async () => {
    const { page } = await open(browser)
    await page.locator('.cell .whole').first().waitFor()
    await fill(page)
    const opening = await longestTask(page, async () => {
      await page.locator('.rail a[href="#notebooks"]').click()
      await page.locator('.lines-box .name').first().waitFor()
      await page.waitForTimeout(500)
    })
    report('  opening the list of them, longest main-thread task', `${opening.toFixed(1)} ms`, '', null, 'under 50 ms')
    const find = page.locator('[role=search] input')
    await find.focus()
    const typing = await longestTask(page, async () => {
      for (const text of ['grazyna dub', 'castelanos']) {
        await find.fill('')
        await page.keyboard.type(text, { delay: 60 })
        await page.waitForTimeout(200)
      }
    })
    report('  typing into it, longest main-thread task', `${typing.toFixed(1)} ms`, '', null, 'under 50 ms')
    await page.context().close()
  })
})
