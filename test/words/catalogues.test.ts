import { describe, expect, test } from 'vitest'
import { en } from '../../src/words/en/catalogue'
import { es } from '../../src/words/es/catalogue'

/** The places in a text: `{name}`, and `{count|one|many}` by its name. */
const places = (text: string) => [...text.matchAll(/\{(\w+)/g)].map((match) => match[1]).sort()

describe('the Spanish catalogue', () => {
  test('has the keys of the English one, and no others', () => {
    expect(Object.keys(en).filter((key) => !(key in es))).toEqual([])
    expect(Object.keys(es).filter((key) => !(key in en))).toEqual([])
  })

  test('says in each text what the English one says: the same facts in it, and something', () => {
    const wrong = Object.entries(en).filter(([key, text]) => {
      const other = es[key]
      return other !== undefined && (String(places(other)) !== String(places(text)) || (text !== '' && other === ''))
    })
    expect(wrong.map(([key]) => key)).toEqual([])
  })
})
