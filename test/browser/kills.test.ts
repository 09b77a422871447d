import { once } from 'node:events'
import { mkdtempSync } from 'node:fs'
import { rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { asNumber, enter, eventually, isSaved, ready, shown } from './grid'
import { startChromium } from './killable'
import { open } from './open'

const KILLS = process.env.LONG ? 100 : 5
const SEED = 20260501
/** The browser lives so long after the first act, at most, in milliseconds. */
const LIFE = 2_500

const ROWS = ['sample/ph', 'sample/salt', 'sample/cyanuric_acid'] as const

/** What the rows show in the baseline: the notebook, as far as this session changes it. */
type View = readonly number[]

/** A page of numbers between 0 and 1 that is the same each time (mulberry32). */
function dice(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

async function viewOf(page: Page): Promise<View> {
  const figures = []
  for (const row of ROWS) figures.push(asNumber(await shown(page, row)))
  return figures
}

test(
  `all that was shown as saved is there after each of ${KILLS} kills`,
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'basinbook-profile-'))
    const random = dice(SEED)
    /** what the notebook was, step by step, and the last step after which the page said that all is saved */
    let steps: View[] = []
    let saved = 0
    let acts = 0
    for (let kill = 0; kill <= KILLS; kill++) {
      const running = await startChromium(folder)
      const ended = once(running.process, 'exit')
      const { page } = await open(running.browser, { context: running.browser.contexts()[0] })
      await ready(page)
      await eventually(async () => (await viewOf(page)).every((figure) => !Number.isNaN(figure))).toBe(true)
      if (kill > 0) {
        const may = steps.slice(saved).map((step) => step.join())
        await eventually(async () => may.includes((await viewOf(page)).join()), {
          message: `after kill ${kill}: one of ${may.join(' | ')}`,
        }).toBe(true)
      }
      steps = [await viewOf(page)]
      saved = 0
      if (kill === KILLS) {
        running.process.kill()
        await ended
        break
      }
      const life = random() * LIFE
      await session(page, random, steps, {
        // no word of farewell: nothing that runs when a page or a browser closes may be needed
        begun: () => setTimeout(() => running.process.kill('SIGKILL'), life),
        saved: (at) => {
          saved = at
        },
      }).catch(() => undefined)
      await ended
      acts += steps.length - 1
    }
    // helpers of the killed browsers may still be closing their files: what they leave is the temporary folder's to clear
    await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 }).catch(() => undefined)
    // the kills came into the midst of work
    expect(acts).toBeGreaterThan(KILLS)
  },
  KILLS * 30_000,
)

interface Heard {
  /** the first act is done */
  readonly begun: () => void
  /** the page says that all is saved up to this step */
  readonly saved: (step: number) => void
}

/** Enters, takes back and enters again until the browser is gone. A step is noted before it is taken. */
async function session(page: Page, random: () => number, steps: View[], heard: Heard): Promise<void> {
  const past: View[] = []
  for (let act = 0; ; act++) {
    if (act === 1) heard.begun()
    const now = steps.at(-1) ?? []
    const before = random() < 0.25 ? past.pop() : undefined
    if (before !== undefined) {
      steps.push(before)
      await page.keyboard.press('Control+z')
    } else {
      const row = Math.floor(random() * ROWS.length)
      const figure = row === 0 ? Math.round(66 + random() * 18) / 10 : Math.round(40 + random() * 60)
      past.push(now)
      steps.push(now.map((old, at) => (at === row ? figure : old)))
      await enter(page, ROWS[row] ?? 'sample/ph', 0, String(figure))
    }
    if (random() < 0.7 && (await isSaved(page))) heard.saved(steps.length - 1)
  }
}
