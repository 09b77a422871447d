import { afterEach, expect, test, vi } from 'vitest'
import { createArrangement, NARROWEST, WIDEST } from '../../src/ui/shell/arrangement'

afterEach(() => vi.unstubAllGlobals())

/** What the browser has kept for one notebook. */
function kept(text: string | null) {
  const written = new Map<string, string>()
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => (key === 'basinbook.arrangement.mine' ? text : null),
    setItem: (key: string, value: string) => void written.set(key, value),
  })
  return written
}

test('whatever stands in the browser’s storage, what can be read of it is taken and the rest left', () => {
  for (const text of [null, '', 'nonsense', 'null', '[]', '7', '{"folded":3,"widths":null}']) {
    kept(text)
    const arrangement = createArrangement('mine')
    expect([...arrangement.folded()], String(text)).toEqual([])
    expect(arrangement.widths(), String(text)).toEqual({})
  }
  kept('{"folded":["salt",4,"pool/shape"],"widths":{"a":200,"b":"wide","c":1e9,"d":-5,"e":null}}')
  const arrangement = createArrangement('mine')
  expect([...arrangement.folded()]).toEqual(['salt', 'pool/shape'])
  expect(arrangement.widths()).toEqual({ a: 200, c: WIDEST, d: NARROWEST })
})

test('a width stays within its bounds, and goes when the usual one is wanted again', () => {
  const written = kept('{"folded":["salt"],"widths":{"b":100}}')
  createArrangement('mine').setWidth('a', 10_000)
  expect(JSON.parse(written.get('basinbook.arrangement.mine') ?? '')).toEqual({
    folded: ['salt'],
    widths: { a: WIDEST, b: 100 },
  })
  createArrangement('mine').setWidth('b', null)
  expect(JSON.parse(written.get('basinbook.arrangement.mine') ?? '')).toEqual({ folded: ['salt'], widths: {} })
})
