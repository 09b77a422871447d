import { describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { type BatchMessage, type BatchOrder, createBatchJob } from '../../src/engine/batchJob'
import { RESULT, type Results } from '../../src/engine/results'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

/** Invented samples: pH and temperature in all, calcium in every other one, stabilizer in none. */
function orderOf(count: number, wanted: readonly string[]): BatchOrder {
  const column = (quantity: string, value: (i: number) => number, taken: (i: number) => boolean) => ({
    quantity,
    values: Float64Array.from({ length: count }, (_, i) => (taken(i) ? value(i) : Number.NaN)),
    taken: Uint8Array.from({ length: count }, (_, i) => (taken(i) ? 1 : 0)),
  })
  const always = () => true
  return {
    count,
    columns: [
      column('ph', (i) => 7 + (i % 10) / 10, always),
      column('temperature', (i) => 20 + (i % 7), always),
      column('total_alkalinity', () => 90, always),
      column(
        'calcium_hardness',
        (i) => 200 + i,
        (i) => i % 2 === 0,
      ),
      { ...column('alkalinity_bottle', () => 0, always), choices: ['plain', 'chlorine_counted', 'thiosulfate'] },
    ],
    constant: [['salt', 3_000]],
    wanted,
    worksheets: {},
    rows: {},
  }
}

async function run(order: BatchOrder, heard: (message: BatchMessage) => void = () => {}): Promise<Results | null> {
  let results: Results | null = null
  const answer = createBatchJob((message) => {
    heard(message)
    if (message.kind === 'evaluated') results = message.results
  })
  await answer({ kind: 'evaluate', id: 1, order })
  return results
}

describe('a long run', () => {
  test('gives what a batch gives, sample by sample', async () => {
    const wanted = ['lsi', 'table_index', 'hocl']
    const order = orderOf(150, wanted)
    const results = await run(order)
    const batch = new Batch(shippedCatalog(), wanted)
    for (const i of [0, 1, 64, 149]) {
      const given = new Map<string, number | string>(order.constant as [string, number][])
      for (const { quantity, values, taken, choices } of order.columns) {
        const value = values[i] ?? 0
        if (taken[i] === 1) given.set(quantity, choices?.[value] ?? value)
      }
      const [outcomes = []] = batch.evaluate([given])
      outcomes.forEach((outcome, at) => {
        const column = results?.columns[at]
        const value = column?.values[i] ?? Number.NaN
        if ('value' in outcome) {
          expect(column?.states[i]).toBe(RESULT.number)
          expect(value).toBe(outcome.value)
        } else {
          expect(column?.states[i]).toBe(RESULT.problem)
          expect(results?.problems[value]).toEqual(outcome.problem)
        }
      })
      expect(results?.noticeSets[results.notices[i] ?? 0]).toEqual([...batch.notices(0)])
    }
  })

  test('keeps each problem and each set of notices once', async () => {
    const results = await run(orderOf(400, ['lsi', 'hocl']))
    expect(results?.problems.map(({ code, facts }) => [code, facts.names])).toEqual([
      ['missing', ['free_chlorine', 'cyanuric_acid']],
      ['missing', ['calcium_hardness']],
    ])
    expect(results?.noticeSets.length).toBeLessThan(4)
  })

  test('says how far it is, and leaves nothing when it is cancelled', async () => {
    const heard: BatchMessage[] = []
    const answer = createBatchJob((message) => {
      heard.push(message)
      if (message.kind === 'progress') void answer({ kind: 'cancel', id: 1 })
    })
    await answer({ kind: 'evaluate', id: 1, order: orderOf(60_000, ['lsi', 'ccpp', 'ph_for_target_lsi']) })
    expect(heard.map(({ kind }) => kind)).toEqual(['progress', 'cancelled'])
  })

  test('that cannot be begun is a problem', async () => {
    const heard: BatchMessage[] = []
    const order = { ...orderOf(2, ['lsi']), columns: null as never }
    await run(order, (message) => heard.push(message))
    expect(heard).toMatchObject([{ kind: 'failed', problem: { code: 'engine_failed' } }])
  })
})
