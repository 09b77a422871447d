import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sentence } from '../../src/words/say'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Catalog } from '../../src/worksheet/catalog'
import type { Definition, Row } from '../../src/worksheet/definition'
import { dependencyOrder, LONGEST_CHAIN } from '../../src/worksheet/dependencyOrder'
import type { Source } from '../../src/worksheet/source'
import { choice, computed, definition, input, own, registry, shipped } from './definitions'

function said(...sources: Source[]): string {
  const catalog = buildCatalog(sources, registry)
  return isCatalog(catalog) ? 'built' : catalog.map(sentence).join('\n')
}

function saidOfRows(...rows: (Row | string)[]): string {
  return said(own(definition('mine', rows)))
}

function built(...sources: Source[]): Catalog {
  const catalog = buildCatalog(sources, registry)
  if (!isCatalog(catalog)) throw new Error(catalog.map(sentence).join('\n'))
  return catalog
}

const solves = [{ id: 'pair', function: 'BOTH', inputs: { x: 'a', y: 'b' } }]

describe('a catalog', () => {
  const first = definition('first', [input('a'), input('b'), computed('c', 'a + pair.sum')], {
    solves,
    takes: [],
  })
  const second = definition('second', ['c', computed('d', 'c * pair.product')], { takes: ['c', 'pair.product'] })
  const catalog = built(shipped(first), own(second))

  test('has every quantity once, in the order of the worksheets', () => {
    expect([...catalog.quantities.values()].map((q) => [q.name, q.worksheet, q.index])).toEqual([
      ['a', 'first', 0],
      ['b', 'first', 1],
      ['c', 'first', 2],
      ['d', 'second', 3],
    ])
  })

  test('knows what reads what, through solves too', () => {
    expect(catalog.quantities.get('d')?.reads).toEqual(['c', 'a', 'b'])
    expect(catalog.quantities.get('a')?.readBy).toEqual(['c', 'd'])
    expect(catalog.solves.get('pair')).toEqual({
      id: 'pair',
      worksheet: 'first',
      function: 'BOTH',
      inputs: ['a', 'b'],
      outputs: ['sum', 'product'],
    })
  })

  test('orders quantities after what they read', () => {
    expect(catalog.order).toEqual(['a', 'b', 'c', 'd'])
  })

  test('leaves out of `reads` what only a check reads, so that a check may read its own row', () => {
    const checks = [{ notice: 'disagree:e', when: 'e > a' }]
    const e = built(own(definition('mine', [input('a'), computed('e', '1', { checks })]))).quantities.get('e')
    expect(e?.reads).toEqual([])
    expect(e?.checks.map((check) => check.notice)).toEqual(['disagree:e'])
  })
})

describe('is refused with file, path and reason', () => {
  test('formulas', () => {
    expect(
      [
        saidOfRows(computed('a', '1 +')),
        saidOfRows(computed('a', 'b * 2')),
        saidOfRows(input('ph'), computed('a', 'PH * 2')),
        saidOfRows(computed('a', 'pair.sum')),
        saidOfRows(computed('a', "baseline.b + 'As tested'.c")),
        saidOfRows(computed('a', 'IFERROR(1; 2)')),
        saidOfRows(computed('a', 'NOSUCH(1)')),
        saidOfRows(computed('a', 'SQRT(1; 2) + IF(TRUE; 1) + PI(3) + MAX()')),
        saidOfRows(computed('a', 'TWICE()')),
        saidOfRows(computed('a', 'TWICE(1; 2; 3)')),
        saidOfRows(computed('a', 'BOTH(1; 2)')),
        saidOfRows(computed('a', 'a + 1')),
        saidOfRows(computed('a', 'b'), computed('b', 'c'), computed('c', 'a'), computed('d', 'a')),
        saidOfRows(computed('a', 'baseline.a + 1')),
        saidOfRows(input('a'), computed('b', 'a', { checks: [{ notice: 'disagree:b', when: 'x > 1' }] })),
        saidOfRows(input('a'), computed('b', '1', { when_missing: { of: 'a', value: 0, source: 's' } })),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "mine.json, groups[0].rows[0].formula: the formula ends after “+”, where a number, a quantity or a function has to follow.
      mine.json, groups[0].rows[0].formula: “b” at character 1 is no quantity.
      mine.json, groups[0].rows[1].formula: “PH” at character 1 is no quantity; names are written in small letters: “ph”.
      mine.json, groups[0].rows[0].formula: “pair.sum” at character 1 is no quantity.
      mine.json, groups[0].rows[0].formula: “b” at character 1 is no quantity.
      mine.json, groups[0].rows[0].formula: “c” at character 14 is no quantity.
      mine.json, groups[0].rows[0].formula: “IFERROR” at character 1 is no function that formulas may use.
      mine.json, groups[0].rows[0].formula: “NOSUCH” at character 1 is no function that formulas may use.
      mine.json, groups[0].rows[0].formula: SQRT at character 1 has 2 arguments; it takes 1.
      mine.json, groups[0].rows[0].formula: IF at character 14 has 2 arguments; it takes 3.
      mine.json, groups[0].rows[0].formula: PI at character 28 has 1 argument; it takes 0.
      mine.json, groups[0].rows[0].formula: MAX at character 36 has 0 arguments; it takes 1–30.
      mine.json, groups[0].rows[0].formula: TWICE at character 1 has 0 arguments; it takes 1–2.
      mine.json, groups[0].rows[0].formula: TWICE at character 1 has 3 arguments; it takes 1–2.
      mine.json, groups[0].rows[0].formula: “BOTH” at character 1 gives many results; declare it under “solves” and read its outputs by name.
      mine.json, groups[0].rows[0].formula: the formulas go round in a circle: a → a.
      mine.json, groups[0].rows[0].formula: the formulas go round in a circle: a → b → c → a.
      mine.json, groups[0].rows[0].formula: the formulas go round in a circle: a → a.
      mine.json, groups[0].rows[1].checks[0].when: “x” at character 1 is no quantity.
      mine.json, groups[0].rows[1].when_missing.of: the row’s formula does not read “a”."
    `)
  })

  test('names', () => {
    const ours = shipped(definition('pool', [input('volume')]))
    const sheet = (rows: (Row | string)[], more: Partial<Definition> = {}) => own(definition('mine', rows, more))
    expect(
      [
        said(sheet([input('a'), input('a')])),
        said(sheet([input('a')]), own(definition('other', [computed('a', '1')]))),
        said(sheet([input('a')]), own(definition('mine', [input('b')]))),
        said(ours, own(definition('pool', [input('b')]))),
        said(ours, sheet([computed('volume', '1')])),
        said(sheet([input('min')])),
        said(sheet([input('twice')])),
        said(shipped(definition('ours', [input('twice')]))),
        said(sheet([input('true'), input('baseline')])),
        said(sheet([input('pair'), input('b')], { solves: [{ id: 'pair', function: 'BOTH', inputs: { x: 'b' } }] })),
        said(ours, sheet([computed('a', 'volume')])),
        said(ours, sheet(['volume'])),
        said(ours, sheet(['depth'])),
        said(ours, sheet([input('a')], { takes: ['depth', 'pair.sum', 'volume'] })),
        said(shipped(definition('ours', [input('a'), computed('b', 'baseline.a')]))),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "mine.json, groups[0].rows[1].name: “a” is there already, in mine.json; a name means one quantity in all worksheets.
      other.json, groups[0].rows[0].name: “a” is there already, in mine.json; a name means one quantity in all worksheets.
      mine.json, id: there is a worksheet “mine” already, in mine.json; give this one another id.
      pool.json, id: “pool” is a worksheet that comes with the app and cannot be replaced; give this one another id.
      mine.json, groups[0].rows[0].name: “volume” comes with the app, in pool.json, and cannot be replaced; use another name, such as my_volume.
      mine.json, groups[0].rows[0].name: “min” is a function and cannot be the name of a quantity.
      mine.json, groups[0].rows[0].name: “twice” is a function and cannot be the name of a quantity.
      built
      mine.json, groups[0].rows[0].name: “true” means something else in formulas and cannot be the name of a quantity.
      mine.json, groups[0].rows[1].name: “baseline” means something else in formulas and cannot be the name of a quantity.
      mine.json, groups[0].rows[0].name: “pair” is there already, in mine.json; a name means one quantity in all worksheets.
      mine.json, groups[0].rows[0].formula: “volume” at character 1 belongs to another worksheet; list it under “takes”.
      mine.json, groups[0].rows[0]: “volume” belongs to another worksheet; list it under “takes”.
      mine.json, groups[0].rows[0]: there is no quantity “depth”.
      mine.json, takes[0]: no worksheet gives “depth”.
      mine.json, takes[1]: no worksheet gives “pair.sum”.
      ours.json, groups[0].rows[1].formula: “a” at character 1 reads another scenario, which a worksheet that comes with the app may not."
    `)
  })

  test('solves', () => {
    const solve = (name: string, inputs: Record<string, string>) =>
      said(
        own(
          definition('mine', [input('a'), computed('c', 'w.sum')], { solves: [{ id: 'w', function: name, inputs }] }),
        ),
      )
    expect(
      [
        solve('BOTH', { x: 'a' }),
        solve('NOSUCH', { x: 'a' }),
        solve('TWICE', { x: 'a' }),
        solve('BOTH', { x: 'a', z: 'a' }),
        solve('BOTH', { y: 'a' }),
        solve('BOTH', { x: 'nothing' }),
        solve('BOTH', { x: 'c' }),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "built
      mine.json, solves[0].function: there is no locked function “NOSUCH”.
      mine.json, solves[0].function: TWICE gives one result; call it in a formula.
      mine.json, solves[0].inputs.z: BOTH has no input “z”; it has x, y.
      mine.json, solves[0].inputs: BOTH needs an input “x”.
      mine.json, solves[0].inputs.x: there is no quantity “nothing”.
      mine.json, groups[0].rows[1].formula: the formulas go round in a circle: c → c."
    `)
  })

  test('rows', () => {
    const band = (more: object) => input('a', { target: [{ source: 's', ...more }] })
    expect(
      [
        saidOfRows(input('a', { unit: 'furlong' })),
        saidOfRows(input('a', { accept: [5, 5] })),
        saidOfRows(input('a', { range: [9, 1] })),
        saidOfRows(input('a', { plausible: [-1, 200] })),
        saidOfRows(input('a', { default: 200 })),
        saidOfRows(choice('a', ['x', 'y'], { default: 'z' })),
        saidOfRows(band({})),
        saidOfRows(band({ low: 2, high: 1 })),
        saidOfRows(band({ low: 2, when: { nothing: ['x'] } })),
        saidOfRows(choice('c', ['x', 'y']), band({ low: 2, when: { c: ['x', 'z'] } })),
        saidOfRows(choice('c', ['x', 'y']), band({ low: 2, when: { c: { below: 2 } } })),
        saidOfRows(input('c'), band({ low: 2, when: { c: ['x'] } })),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "mine.json, groups[0].rows[0].unit: “furlong” is no unit that is known here; write it as in “mg/L as CaCO3”, “°C” or “m³”.
      mine.json, groups[0].rows[0].accept: the low end, 5, is not under the high end, 5.
      mine.json, groups[0].rows[0].range: the low end, 9, is not under the high end, 1.
      mine.json, groups[0].rows[0].plausible: this reaches outside what the row accepts, 0 to 100.
      mine.json, groups[0].rows[0].default: 200 is outside what the row accepts, 0 to 100.
      mine.json, groups[0].rows[0].default: “z” is not one of the choices x, y.
      mine.json, groups[0].rows[0].target[0]: a band needs a low end, a high end, or both.
      mine.json, groups[0].rows[0].target[0]: the low end, 2, is not under the high end, 1.
      mine.json, groups[0].rows[0].target[0].when.nothing: there is no quantity “nothing”.
      mine.json, groups[0].rows[1].target[0].when.c: “z” is not one of the choices x, y.
      mine.json, groups[0].rows[1].target[0].when.c: a condition on a choice is a list of ids, and one on a number is “from” and “below”.
      mine.json, groups[0].rows[1].target[0].when.c: a condition on a choice is a list of ids, and one on a number is “from” and “below”."
    `)
  })

  test('a chain without end', () => {
    const chain = (length: number) =>
      saidOfRows(...Array.from({ length }, (_, i) => computed(`r${i}`, i === 0 ? '1' : `r${i - 1}`)))
    expect(chain(LONGEST_CHAIN + 1)).toBe('built')
    expect(chain(LONGEST_CHAIN + 9)).toMatchInlineSnapshot(
      `"mine.json, groups[0].rows[201].formula: “r201” stands at the end of a chain of more than 200 formulas that read one another."`,
    )
  })
})

describe('dependency order', () => {
  const graph = fc
    .array(fc.array(fc.nat({ max: 11 }), { maxLength: 3 }), { minLength: 12, maxLength: 12 })
    .map((reads) => new Map(reads.map((read, i) => [String(i), [...new Set(read.map(String))]])))

  test('law: each name comes after all that it reads; a circle is one of the graph; nothing is lost', () => {
    fc.assert(
      fc.property(graph, (reads) => {
        const { order, circles } = dependencyOrder(reads)
        const inCircle = new Set(circles.flat())
        const place = new Map(order.map((name, i) => [name, i]))
        const after = order.every((name) =>
          (reads.get(name) ?? []).every(
            (other) => inCircle.has(other) || (place.get(other) ?? 99) < (place.get(name) ?? -1),
          ),
        )
        const closed = circles.every((circle) =>
          circle.every((name, i) => reads.get(name)?.includes(circle[(i + 1) % circle.length] ?? '')),
        )
        return after && closed && order.length + inCircle.size === reads.size
      }),
      { seed: 4, numRuns: 2_000 },
    )
  })
})
