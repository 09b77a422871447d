import { afterEach, describe, expect, test, vi } from 'vitest'
import { askToKeep, promised, room } from '../../src/storage/promise'

/** A browser whose storage answers so. */
const browser = (storage: object | undefined) => vi.stubGlobal('navigator', { storage })
afterEach(() => vi.unstubAllGlobals())

describe('what the browser promises', () => {
  test('is told as it says it', async () => {
    browser({
      persisted: async () => false,
      persist: async () => true,
      estimate: async () => ({ usage: 5, quota: 50 }),
    })
    expect(await promised()).toBe('may_be_cleared')
    expect(await askToKeep()).toBe('kept')
    expect(await room()).toEqual({ used: 5, quota: 50 })
  })

  test('is not known where it does not say, or will not be asked', async () => {
    for (const storage of [
      undefined,
      {},
      {
        persisted: () => Promise.reject(new DOMException('', 'SecurityError')),
        persist: () => Promise.reject(new DOMException('', 'SecurityError')),
        estimate: () => Promise.reject(new DOMException('', 'SecurityError')),
      },
    ]) {
      browser(storage)
      expect(await promised()).toBe('unknown')
      expect(await askToKeep()).toBe('unknown')
      expect(await room()).toBeNull()
    }
  })
})
