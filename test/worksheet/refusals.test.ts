import { describe, expect, test } from 'vitest'
import { Batch } from '../../src/engine/batch'
import { hasValue } from '../../src/engine/outcome'
import { LOCKED } from '../../src/functions/registry'
import { hasWords, sentence } from '../../src/words/say'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Definition } from '../../src/worksheet/definition'
import { REASONS } from '../../src/worksheet/refusalProblem'
import { SHIPPED } from '../../src/worksheet/shipped'
import { computed, definition, input, own } from './definitions'

const sheet = (more: object, whole: Partial<Definition> = {}) =>
  buildCatalog([own(definition('mine', [input('a'), input('b'), computed('total', 'a + 1', more)], whole))], LOCKED)

function sum(given: Record<string, number>, more: object, whole: Partial<Definition> = {}) {
  const catalog = sheet(more, whole)
  if (!isCatalog(catalog)) throw new Error(catalog.map(sentence).join('\n'))
  const batch = new Batch(catalog, ['total'], 1)
  const outcome = batch.evaluate([new Map(Object.entries(given))])[0]?.[0]
  if (!outcome) throw new Error('no outcome')
  return hasValue(outcome) ? outcome.value : sentence(outcome.problem)
}

const over = { problem: 'b is over 5, says "the maker" \\', when: 'b > 5' }

test('every reason of the shipped worksheets is known, and the catalogue has a sentence for each', () => {
  const refusals = SHIPPED.flatMap(({ definition }) => [
    ...(definition.refuses ?? []),
    ...definition.groups.flatMap(({ rows }) =>
      rows.flatMap((row) => (typeof row === 'string' || !('refuses' in row) ? [] : (row.refuses ?? []))),
    ),
  ])
  expect(new Set(refusals.map(({ problem }) => problem))).toEqual(REASONS)
  expect([...REASONS].filter((reason) => !hasWords(`problem.${reason.replace(':', '.')}`))).toEqual([])
})

describe('a row that refuses', () => {
  test('has no value but the reason, in the definition’s own words or the catalogue’s', () => {
    expect(sum({ a: 1, b: 6 }, { refuses: [over] })).toBe('No answer here: b is over 5, says "the maker" \\')
    expect(sum({ a: 1, b: 6 }, { refuses: [{ problem: 'dry:acid_product', when: 'b > 5' }] })).toBe(
      'A dry acid is weighed; see its mass.',
    )
  })

  test('is as always where the condition is false or has no answer', () => {
    expect(sum({ a: 1, b: 5 }, { refuses: [over] })).toBe(2)
    expect(sum({ a: 1 }, { refuses: [over] })).toBe(2)
    expect(sum({ a: 1, b: 0 }, { refuses: [{ problem: 'no', when: '1 / b > 0' }] })).toBe(2)
  })

  test('tells the first reason that holds, the worksheet’s before its own', () => {
    const whole = { refuses: [{ problem: 'the whole sheet', when: 'a > 50' }] }
    const own = { refuses: [over, { problem: 'second', when: 'b > 4' }] }
    expect(sum({ a: 60, b: 6 }, own, whole)).toContain('the whole sheet')
    expect(sum({ a: 1, b: 6 }, own, whole)).toContain('b is over 5')
    expect(sum({ a: 1, b: 4.5 }, own, whole)).toContain('second')
  })

  test('is read in its condition too, and a condition may not read its own row', () => {
    const catalog = sheet({ refuses: [over] })
    expect(isCatalog(catalog) && catalog.quantities.get('total')?.reads).toEqual(['a', 'b'])
    const circle = sheet({ refuses: [{ problem: 'no', when: 'total > 1' }] })
    expect(isCatalog(circle) ? [] : circle.map(({ code }) => code)).toEqual(['formula_circle'])
    const unknown = sheet({ refuses: [{ problem: 'no', when: 'c > 1' }] })
    expect(isCatalog(unknown) ? [] : unknown.map(sentence)).toEqual([
      'mine.json, groups[0].rows[2].refuses[0].when: “c” at character 1 is no quantity.',
    ])
  })
})
