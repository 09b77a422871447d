import type { Value } from '../functions/define'
import type { Catalog } from '../worksheet/catalog'
import { Columns } from './columns'
import { closure, layoutFor } from './layout'
import { withMissing } from './missing'
import type { Notice, Outcome } from './outcome'
import type { Content } from './sheets'

/** A column from outside a notebook: what is given, by quantity. A computed quantity that is given replaces its formula. */
export type Given = ReadonlyMap<string, Value>

/** How many columns one engine holds; more than 32 cost more to recompute together than they save. */
const WIDTH = 32

/**
 * Evaluates any number of independent columns for the wanted quantities. The engine is built once, with only the rows
 * that those quantities need, and is refilled.
 */
export class Batch {
  readonly wanted: readonly string[]
  readonly #catalog: Catalog
  readonly #columns: Columns
  /** for each wanted quantity, all that it rests on: where its notices come from */
  readonly #rests: readonly (readonly string[])[]

  constructor(catalog: Catalog, wanted: readonly string[], width = WIDTH) {
    this.#catalog = catalog
    this.wanted = wanted
    const layout = layoutFor(catalog, wanted)
    this.#rests = wanted.map((name) => [...closure(catalog, [name])])
    this.#columns = new Columns(
      layout,
      Array.from({ length: width }, () => (quantity) => content(catalog, NOTHING, quantity)),
    )
    this.#names = layout.quantities.map((q) => q.name)
    this.#width = width
  }

  readonly #names: readonly string[]
  readonly #width: number

  /** Outcomes by column, in the order of `wanted`. */
  evaluate(columns: readonly Given[]): (readonly Outcome[])[] {
    const results: (readonly Outcome[])[] = []
    for (let start = 0; start < columns.length; start += this.#width) {
      const part = columns.slice(start, start + this.#width)
      this.#columns.change(() => {
        part.forEach((given, column) => {
          for (const name of this.#names) this.#columns.put(column, name, content(this.#catalog, given, name))
        })
      })
      part.forEach((_, column) => {
        results.push(
          this.wanted.map((name) => withMissing(this.#catalog, name, (q) => this.#columns.outcome(column, q))),
        )
      })
    }
    return results
  }

  /** The notices of everything that a wanted quantity of the last `evaluate` rests on, itself included. */
  notices(column: number): Set<Notice> {
    const found = new Set<Notice>()
    for (const name of new Set(this.#rests.flat())) {
      for (const notice of this.#columns.outcome(column, name).notices) found.add(notice)
    }
    return found
  }

  close(): void {
    this.#columns.destroy()
  }
}

const NOTHING: Given = new Map()

function content(catalog: Catalog, given: Given, quantity: string): Content {
  const value = given.get(quantity)
  if (value !== undefined) return { kind: 'value', value }
  const row = catalog.quantities.get(quantity)?.row
  if (!row || 'formula' in row) return { kind: 'own' }
  return row.default === undefined ? { kind: 'missing' } : { kind: 'value', value: row.default }
}
