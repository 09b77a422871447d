import type { Precision } from '../notebook/notebook'
import type { Outline } from '../worksheet/catalog'
import type { Doubt } from './doubt'
import type { Column } from './evaluate'
import { methodsOf, type TestMethod } from './methods'

/** How exact a reading is taken to be, and on whose word. */
export interface Exactness {
  readonly half: number
  readonly by: { readonly kind: 'test'; readonly test: TestMethod } | { readonly kind: 'reader' }
}

/**
 * The precision of a reading: what the reader of the notebook says of its quantity, else the test that took this reading, else the test
 * that the notebook names, else the usual test. Null where no test is known: the value is then taken as it is.
 * @param method the test that took the reading, where it is known
 */
export function exactnessOf(
  quantity: string,
  value: number,
  precision: Precision | undefined,
  method?: string,
): Exactness | null {
  if (precision?.kind === 'value') return { half: precision.canonical, by: { kind: 'reader' } }
  const tests = methodsOf(quantity)
  const named = (id: string | undefined) =>
    tests.find(
      (test) =>
        test.method ===
        id
          ?.trim()
          .toLowerCase()
          .replace(/[^a-z0-9]+/g, '_'),
    )
  const test = named(method) ?? named(precision?.method) ?? tests[0]
  return test ? { half: Math.max(test.half, test.share * Math.abs(value)), by: { kind: 'test', test } } : null
}

export interface Readings {
  readonly column: Column
  readonly catalog: Pick<Outline, 'quantities'>
  readonly precisions: Readonly<Record<string, Precision>>
  /** the tests that took readings of this scenario, where they are known */
  readonly methods: ReadonlyMap<string, string>
  /** the volume with both ends, alike where it is an assumption; null where it has none */
  readonly volume: { readonly value: number; readonly low: number; readonly high: number } | null
}

/**
 * What is in doubt of all that `names` name. A reading that was not taken stays so; the volume's half width is that of its interval. A
 * worked-out row has no doubt of its own, nor has one of an assumption: it is what it was said to be.
 */
export function doubtsOf(
  { column, catalog, precisions, methods, volume }: Readings,
  names: ReadonlySet<string>,
): readonly Doubt[] {
  const doubts: Doubt[] = []
  for (const name of names) {
    const row = catalog.quantities.get(name)?.row
    if (name === 'volume' && volume && volume.high > volume.low) {
      const half = (volume.high - volume.low) / 2
      // ends that leave the value out are moved to it: no interval lies beside what it is the interval of
      const [least, most] = [Math.min(volume.low, volume.value), Math.max(volume.high, volume.value)]
      doubts.push({ quantity: name, value: volume.value, half, ...EVEN, least, most })
      continue
    }
    const value = column.get(name)
    if (!row || !('accept' in row) || typeof value !== 'number') continue
    const half =
      exactnessOf(name, value, Object.hasOwn(precisions, name) ? precisions[name] : undefined, methods.get(name))
        ?.half ?? 0
    if (half > 0) doubts.push({ quantity: name, value, half, ...EVEN, least: row.accept[0], most: row.accept[1] })
  }
  return doubts
}

const EVEN = { distribution: 'rectangular' } as const
