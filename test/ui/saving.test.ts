import { describe, expect, test } from 'vitest'
import type { Edit } from '../../src/notebook/edit'
import { createSaver } from '../../src/ui/shell/saving'
import { type Problem, problem } from '../../src/words/problem'

const rename = (name: string): Edit => ({ type: 'change_notebook', set: { name } })

/** A store that answers when it is told to. */
function slowStore() {
  const batches: (readonly Edit[])[] = []
  const answers: ((trouble?: Problem) => void)[] = []
  return {
    batches,
    append: (edits: readonly Edit[]) => {
      batches.push(edits)
      return new Promise<undefined | Problem>((answer) => answers.push(answer))
    },
    async answer(trouble?: Problem) {
      answers.shift()?.(trouble)
      await new Promise((turn) => setTimeout(turn))
    },
  }
}

describe('createSaver', () => {
  test('says "saved" only when the store has confirmed', async () => {
    const store = slowStore()
    const saver = createSaver(store.append)
    saver.put([rename('a')])
    expect(saver.saving().state).toBe('saving')
    await store.answer()
    expect(saver.saving().state).toBe('saved')
  })

  test('keeps the order: what comes meanwhile is the next batch', async () => {
    const store = slowStore()
    const saver = createSaver(store.append)
    saver.put([rename('a')])
    saver.put([rename('b')])
    saver.put([rename('c')])
    await store.answer()
    expect(saver.saving().state).toBe('saving')
    await store.answer()
    expect(store.batches).toEqual([[rename('a')], [rename('b'), rename('c')]])
    expect(saver.saving().state).toBe('saved')
  })

  test('after a failure the same edits go first', async () => {
    const store = slowStore()
    const saver = createSaver(store.append)
    const full = problem('storage_full')
    saver.put([rename('a')])
    await store.answer(full)
    expect(saver.saving()).toEqual({ state: 'failed', why: full })
    saver.put([rename('b')])
    await store.answer()
    expect(store.batches.at(-1)).toEqual([rename('a'), rename('b')])
    expect(saver.saving().state).toBe('saved')
  })

  test('a store that throws is a failure, not an end', async () => {
    const saver = createSaver(() => Promise.reject(new Error('gone')))
    saver.put([rename('a')])
    await saver.settled()
    expect(saver.saving()).toMatchObject({ state: 'failed', why: { code: 'not_saved' } })
  })
})
