import { describe, expect, test, vi } from 'vitest'
import { claim } from '../../src/storage/lock'

/** Web Locks of one browser (exclusive ones only, as used here): a line for each name. */
function browserLocks(): LockManager {
  const lines = new Map<string, (() => void)[]>()
  const next = (name: string) => {
    const line = lines.get(name) ?? []
    const first = line.shift()
    if (first) first()
    else lines.delete(name)
  }
  const request = async (
    name: string,
    options: LockOptions,
    work: (lock: Lock | null) => unknown,
  ): Promise<unknown> => {
    const line = lines.get(name)
    if (line && options.ifAvailable) return work(null)
    if (!line) lines.set(name, [])
    else {
      await new Promise<void>((turn, refuse) => {
        line.push(turn)
        options.signal?.addEventListener('abort', () => {
          const at = line.indexOf(turn)
          if (at < 0) return
          line.splice(at, 1)
          refuse(new DOMException('', 'AbortError'))
        })
      })
    }
    try {
      return await work({ name, mode: 'exclusive' })
    } finally {
      next(name)
    }
  }
  return { request, query: async () => ({}) } as unknown as LockManager
}

describe('claiming a notebook', () => {
  test('the first tab writes, the next one reads, another notebook is free', async () => {
    const locks = browserLocks()
    expect((await claim('one', undefined, locks)).role).toBe('writer')
    expect((await claim('one', undefined, locks)).role).toBe('reader')
    expect((await claim('two', undefined, locks)).role).toBe('writer')
  })

  test('it is free again when the writer gives it up', async () => {
    const locks = browserLocks()
    const writer = await claim('one', undefined, locks)
    writer.release()
    await vi.waitFor(async () => expect((await claim('one', undefined, locks)).role).toBe('writer'))
  })

  test('a waiting reader learns of it, and then holds the notebook', async () => {
    const locks = browserLocks()
    const writer = await claim('one', undefined, locks)
    const gone = vi.fn()
    const reader = await claim('one', gone, locks)
    const later = vi.fn()
    const last = await claim('one', later, locks)
    expect(gone).not.toHaveBeenCalled()
    writer.release()
    await vi.waitFor(() => expect(gone).toHaveBeenCalledOnce())
    expect((await claim('one', undefined, locks)).role).toBe('reader')
    expect(later).not.toHaveBeenCalled()
    reader.release()
    await vi.waitFor(() => expect(later).toHaveBeenCalledOnce())
    last.release()
  })

  test('a reader that has left is not called', async () => {
    const locks = browserLocks()
    const writer = await claim('one', undefined, locks)
    const gone = vi.fn()
    const reader = await claim('one', gone, locks)
    reader.release()
    writer.release()
    await vi.waitFor(async () => expect((await claim('one', undefined, locks)).role).toBe('writer'))
    expect(gone).not.toHaveBeenCalled()
  })

  test('without locks, or where they are refused, a tab writes', async () => {
    expect((await claim('one', undefined, undefined)).role).toBe('writer')
    const refusing = { request: () => Promise.reject(new DOMException('', 'SecurityError')) } as unknown as LockManager
    expect((await claim('one', undefined, refusing)).role).toBe('writer')
  })
})
