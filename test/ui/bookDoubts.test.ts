import { describe, expect, test } from 'vitest'
import { hasValue } from '../../src/engine/outcome'
import type { Cell, Notebook } from '../../src/notebook/notebook'
import { doubtsOf } from '../../src/study/doubtsOf'
import { restsOn } from '../../src/study/restsOn'
import { uncertainty } from '../../src/study/uncertainty'
import { bookDoubts } from '../../src/ui/study/bookDoubts'
import { studyColumn } from '../../src/ui/study/studyColumn'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'
import { cell, EMPTY, edited, number, scenario } from '../notebook/samples'
import { evaluateWith } from '../study/evaluateWith'
import { bookFor } from './bookFor'

/** A box of 5 x 3 m, 1.335 m deep: 20.0 m³ or 5290 US gal. */
const SHAPE: Readonly<Record<string, Cell>> = {
  shape: { kind: 'choice', id: 'rectangle' },
  length: number(5, 'm'),
  width: number(3, 'm'),
  depth_shallow: number(1.335, 'm'),
  depth_deep: number(1.335, 'm'),
  salt: number(2000, 'mg/L as NaCl'),
  target_salt: number(3200, 'mg/L as NaCl'),
}
const POOL = edited(
  EMPTY,
  ...Object.entries(SHAPE).map(([name, content]) => cell('first', name, content)),
  scenario('second', 'a1'),
)
/** 9000 US gal */
const TYPED = number(34.0687, 'm³')

async function sureness(notebook: Notebook, id: string, output: string) {
  const book = bookFor(notebook)
  const column = studyColumn(book, id, [output])
  const now = book.outcome(id, output)
  if (!column || !hasValue(now) || typeof now.value !== 'number') throw new Error(`${output} has no value`)
  const doubts = bookDoubts(book, id, column, restsOn(book.catalog(), output), {})
  const [interval] = await uncertainty(evaluateWith(), { column, doubts, outputs: [output], count: 200 })
  return { value: now.value, ends: interval?.ends ?? [Number.NaN, Number.NaN], doubted: doubts.map((d) => d.quantity) }
}

describe('a volume that is typed over', () => {
  const typed = edited(POOL, cell('first', 'volume', TYPED))

  test('as it is worked out it is in doubt', async () => {
    const { doubted, value, ends } = await sureness(POOL, 'first', 'volume')
    expect(doubted).toContain('volume')
    expect(ends[0]).toBeLessThan(value)
    expect(ends[1]).toBeGreaterThan(value)
  })

  test.each(['first', 'second'])(
    'has no doubt of its own, in the baseline and where it is followed: %s',
    async (id) => {
      for (const output of ['volume', 'salt_mass']) {
        const { doubted, value, ends } = await sureness(typed, id, output)
        expect(doubted).not.toContain('volume')
        expect(ends[0]).toBeLessThanOrEqual(value)
        expect(ends[1]).toBeGreaterThanOrEqual(value)
      }
    },
  )

  test('is in doubt between ends that were taken over with it', async () => {
    const ends = [cell('first', 'volume_low', number(30, 'm³')), cell('first', 'volume_high', number(38, 'm³'))]
    const found = await sureness(edited(typed, ...ends), 'second', 'volume')
    expect(found.doubted).toContain('volume')
    expect(found.ends[0]).toBeGreaterThanOrEqual(30)
    expect(found.ends[0]).toBeLessThan(found.value)
    expect(found.ends[1]).toBeLessThanOrEqual(38)
  })

  test('is contained by its interval though one end lies beside it', async () => {
    const found = await sureness(edited(typed, cell('first', 'volume_low', number(19, 'm³'))), 'first', 'volume')
    expect(found.ends[0]).toBeLessThan(found.value)
    expect(found.ends[1]).toBeGreaterThanOrEqual(found.value)
  })
})

test('ends that leave the volume out are moved to it', () => {
  const readings = {
    column: new Map([['volume', 34]]),
    catalog: shippedCatalog(),
    precisions: {},
    methods: new Map<string, string>(),
  }
  const [doubt] = doubtsOf({ ...readings, volume: { value: 34, low: 19, high: 21 } }, new Set(['volume']))
  expect(doubt).toMatchObject({ least: 19, most: 34 })
})
