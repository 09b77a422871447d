import { describe, expect, test } from 'vitest'
import { LOCKED } from '../../src/functions/registry'
import { sentence } from '../../src/words/say'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import { withChangedRow, withMovedRow, withNewRow, withoutRow } from '../../src/worksheet/changedDefinition'
import { copyWorksheet } from '../../src/worksheet/copyWorksheet'
import type { Definition } from '../../src/worksheet/definition'
import { isDefinition, readDefinition } from '../../src/worksheet/readDefinition'
import { SHIPPED } from '../../src/worksheet/shipped'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

const shipped = shippedCatalog()
const words = {
  label: 'Mine',
  help: '',
  labelOf: ({ name }: { name: string }) => `The ${name}`,
  helpOf: () => '',
  groupLabel: (group: string) => group,
}
const isTaken = (name: string) => shipped.quantities.has(name) || shipped.solves.has(name)

function copyOf(id: string): Definition {
  const original = SHIPPED.find(({ definition }) => definition.id === id)?.definition
  if (!original) throw new Error(id)
  return copyWorksheet(original, words, isTaken)
}

function builtWith(definition: Definition) {
  const built = buildCatalog([...SHIPPED, { definition, file: 'mine', shipped: false }], LOCKED)
  if (!isCatalog(built)) throw new Error(built.map(sentence).join('\n'))
  return built
}

describe('a copy of every shipped worksheet', () => {
  test.each(SHIPPED.map(({ definition }) => definition.id))(
    '%s stands beside the original, under names of its own',
    (id) => {
      const copy = copyOf(id)
      const read = readDefinition(JSON.parse(JSON.stringify(copy)), 'mine')
      expect(isDefinition(read) ? [] : read.map(sentence)).toEqual([])
      const built = builtWith(copy)
      const originals = [...shipped.quantities.values()].filter(({ worksheet }) => worksheet === id)
      const copies = [...built.quantities.values()].filter(({ worksheet }) => worksheet === copy.id)
      expect(copies.map(({ name }) => name)).toEqual(originals.map(({ name }) => `my_${name}`))
      // What a row read in its own worksheet its copy reads in the copy; the rest of the pool stays the pool.
      const theirs = new Set(originals.map(({ name }) => name))
      const renamed = (name: string) => (theirs.has(name) ? `my_${name}` : name)
      // The solids of a copied sample stay those of the pool's own solve.
      const ofOthersSolve = (name: string) => name.endsWith('tds_used') && id === 'sample'
      expect(copies.filter(({ name }) => !ofOthersSolve(name)).map(({ reads }) => [...reads].sort())).toEqual(
        originals.filter(({ name }) => !ofOthersSolve(name)).map(({ reads }) => reads.map(renamed).sort()),
      )
      for (const { name } of originals)
        expect(built.quantities.get(name)?.formula?.text).toBe(shipped.quantities.get(name)?.formula?.text)
    },
  )

  test('draws its own rows', () => {
    const { charts } = copyOf('salt')
    expect(charts).toMatchObject([{ input: 'my_target_salt', outputs: ['my_salt_mass', 'my_salt_bags_whole'] }])
  })

  test('keeps what its formulas say', () => {
    const copy = builtWith(copyOf('saturation'))
    expect(copy.quantities.get('my_lsi')?.formula?.text).toBe('my_water.lsi')
    expect(copy.quantities.get('my_ryznar')?.formula?.text).toBe('RYZNAR_INDEX(my_ph_saturation; ph)')
    expect(copy.solves.get('my_water')?.inputs).toContain('my_cyanuric_acid_used')
    const salt = builtWith(copyOf('salt'))
    expect(salt.quantities.get('my_salt_mass')?.formula?.text).toBe(
      'SALT_MASS(volume; salt_used; my_target_salt_used; my_salt_purity)',
    )
  })
})

describe('a worksheet of one’s own is changed', () => {
  test('with a row goes what charts drew of it', () => {
    const drawn = (...taken: readonly string[]) =>
      taken.reduce(withoutRow, copyOf('salt')).charts?.map(({ outputs }) => outputs)
    expect(drawn('my_salt_bags_whole')).toEqual([['my_salt_mass']])
    expect(drawn('my_salt_bags_whole', 'my_salt_mass')).toEqual([])
    expect(drawn('my_target_salt')).toEqual([])
    expect(drawn('volume')).toEqual([['my_salt_mass', 'my_salt_bags_whole']])
  })

  const copy = copyOf('salt')
  const names = (definition: Definition) =>
    definition.groups.flatMap(({ rows }) => rows.map((row) => (typeof row === 'string' ? row : row.name)))

  test('a new row stands under the one it was added to, and what it reads is listed', () => {
    const row = { name: 'my_rate', unit: 'mg/L as NaCl', formula: 'my_salt_shortfall * lsi' }
    const changed = withNewRow(copy, 'my_salt_mass', row)
    const at = names(changed).indexOf('my_salt_mass')
    expect(names(changed)[at + 1]).toBe('my_rate')
    expect(changed.takes).toContain('lsi')
    expect(builtWith(changed).quantities.get('my_rate')?.reads).toEqual(['my_salt_shortfall', 'lsi'])
  })

  test('a row gets another formula, and is taken out', () => {
    const changed = withChangedRow(copy, 'my_salt_after_bags', { name: 'x', unit: 'kg', formula: 'my_bag_mass * 2' })
    expect(builtWith(changed).quantities.get('my_salt_after_bags')?.formula?.text).toBe('my_bag_mass * 2')
    expect(names(withoutRow(copy, 'my_salt_after_bags'))).toEqual(
      names(copy).filter((name) => name !== 'my_salt_after_bags'),
    )
  })

  test('a row moves through all groups and back', () => {
    const [first = ''] = names(copy).filter((name) => name.startsWith('my_'))
    let now = copy
    const seen = new Set<string>()
    for (let step = 0; step < 80; step++) {
      const next = withMovedRow(now, first, 1)
      if (next === now) break
      now = next
      expect([...names(now)].sort()).toEqual([...names(copy)].sort())
      seen.add(names(now).join())
    }
    expect(names(now).at(-1)).toBe(first)
    expect(seen.size).toBeGreaterThan(10)
  })
})

test('a solve of one’s own that is fed in another unit is refused', () => {
  const copy = copyOf('saturation')
  const swapped = {
    ...copy,
    takes: [...copy.takes, 'temperature'],
    solves: (copy.solves ?? []).map((solve) =>
      solve.id === 'my_water' ? { ...solve, inputs: { ...solve.inputs, calcium_hardness: 'temperature' } } : solve,
    ),
  }
  const built = buildCatalog([...SHIPPED, { definition: swapped, file: 'mine', shipped: false }], LOCKED)
  expect(isCatalog(built) ? [] : built.map(sentence)).toEqual([
    'mine, solves[0].inputs.calcium_hardness: WATER takes calcium_hardness in mg/L as CaCO3; the quantity given is in °C.',
  ])
})
