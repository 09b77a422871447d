import shipped from './methods.json'

/**
 * A test for one quantity and how exact it is: a reading lies within the half width of the water (canonical unit), or within `share`
 * of the reading where that is more.
 */
export interface TestMethod {
  /** `method.<id>` of the catalogue */
  readonly method: string
  readonly half: number
  readonly share: number
  readonly source: string
  /** read in the source, from memory, or common practice without a source */
  readonly mark: 'read' | 'memory' | 'practice'
}

const TABLE: ReadonlyMap<string, readonly TestMethod[]> = new Map(
  Object.entries(shipped.quantities as Readonly<Record<string, readonly Entry[]>>).map(([quantity, entries]) => [
    quantity,
    entries.map(({ method, half_width: half, share = 0, source, mark }) => ({ method, half, share, source, mark })),
  ]),
)

interface Entry {
  readonly method: string
  readonly half_width: number
  readonly share?: number
  readonly source: string
  readonly mark: TestMethod['mark']
}

/** The tests for a quantity, the usual one first; none where its value is not read by a test. */
export function methodsOf(quantity: string): readonly TestMethod[] {
  return TABLE.get(quantity) ?? []
}

/** The quantities that have tests, in the order of the table. */
export const TESTED: readonly string[] = [...TABLE.keys()]
