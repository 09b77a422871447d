import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Live } from '../../src/engine/live'
import { fromFile } from '../../src/notebook/file'
import { cellKey, type Notebook } from '../../src/notebook/notebook'
import { inOrder } from '../../src/notebook/order'
import { cell, edited, number } from '../notebook/samples'

const EXAMPLE = fromFile(readFileSync('examples/little-heron.json', 'utf8'), 'little-heron.json') as Notebook
const IDS = inOrder(EXAMPLE).map(({ id }) => id)

const all = (live: Live) =>
  new Map(live.all().map(({ scenario, quantity, outcome }) => [cellKey(scenario, quantity), outcome]))

/** Removing the assumption and computing anew is the other way to the same answer. */
test('what a formula would give is what it gives when the assumption is removed, and asking changes nothing', () => {
  const quantity = fc.constantFrom('volume', 'lsi', 'salt_used', 'salt_mass', 'drain_fraction')
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(fc.constantFrom(...IDS), quantity, fc.double({ min: 0.1, max: 0.9, noNaN: true })), {
        minLength: 1,
        maxLength: 4,
        selector: ([id, name]) => `${id}/${name}`,
      }),
      (assumed) => {
        const edits = assumed.map(([id, name, value]) => cell(id, name, number(value, '')))
        const live = new Live(edited(EXAMPLE, ...edits))
        const before = all(live)
        const given = live.formulasUnder(assumed.map(([scenario, name]) => ({ scenario, quantity: name })))
        expect(all(live)).toEqual(before)
        live.close()
        expect(given).toHaveLength(assumed.length)
        assumed.forEach(([id, name], i) => {
          // Without this one; in a later scenario the baseline's, which it would follow, goes too.
          const others = edits.filter(
            (_, at) => at !== i && !(assumed[at]?.[0] === IDS[0] && assumed[at]?.[1] === name),
          )
          const without = new Live(edited(EXAMPLE, ...others))
          expect(given[i]?.outcome).toEqual(all(without).get(cellKey(id, name)))
          without.close()
        })
      },
    ),
    { seed: 4, numRuns: Number(process.env.LONG ?? 0) > 0 ? 40 : 3 },
  )
}, 120_000)
