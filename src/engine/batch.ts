import type { Value } from '../functions/define'
import type { Catalog } from '../worksheet/catalog'
import { type Calculator, createCalculator } from './calculator'
import { Columns } from './columns'
import { closure, type Layout, layoutFor } from './layout'
import { createMissingMemo } from './missingMemo'
import type { Notice, Outcome } from './outcome'
import type { Content } from './sheets'

/** A column from outside a notebook: what is given, by quantity. A computed quantity that is given replaces its formula. */
export type Given = ReadonlyMap<string, Value>

/** How many columns one engine holds; more than 32 cost more to recompute together than they save. */
const WIDTH = 32

interface Worked {
  readonly outcomes: readonly Outcome[]
  readonly notices: Set<Notice>
}

/**
 * Evaluates any number of independent columns for the wanted quantities, with only the rows that those need. The
 * formulas run as nested functions; a column that these do not cover goes through the formula engine, which is built
 * when it is first needed. `by: 'engine'` sends all columns there: the reference that the functions are held to.
 */
export class Batch {
  readonly wanted: readonly string[]
  readonly #catalog: Catalog
  readonly #layout: Layout
  readonly #calculator: Calculator | null
  readonly #width: number
  /** all that a wanted quantity rests on: where its notices come from */
  readonly #rests: readonly string[]
  readonly #missing: ReturnType<typeof createMissingMemo>
  #columns: Columns | null = null
  #worked: (Worked | undefined)[] = []

  constructor(catalog: Catalog, wanted: readonly string[], width = WIDTH, by: 'functions' | 'engine' = 'functions') {
    this.#catalog = catalog
    this.wanted = wanted
    this.#width = width
    this.#layout = layoutFor(catalog, wanted)
    const rests = new Map(wanted.map((name) => [name, [...closure(catalog, [name])]]))
    this.#rests = [...new Set([...rests.values()].flat())]
    this.#missing = createMissingMemo(catalog, rests)
    this.#calculator = by === 'functions' ? createCalculator(this.#layout) : null
  }

  /** Outcomes by column, in the order of `wanted`. */
  evaluate(columns: readonly Given[]): (readonly Outcome[])[] {
    const calculator = this.#calculator
    this.#worked = columns.map((given) =>
      calculator?.run((name) => valueIn(given, name)) ? this.#read(calculator) : undefined,
    )
    const left = columns.flatMap((_, i) => (this.#worked[i] ? [] : [i]))
    for (let start = 0; start < left.length; start += this.#width) {
      this.#throughEngine(columns, left.slice(start, start + this.#width))
    }
    return this.#worked.map((worked) => worked?.outcomes ?? [])
  }

  /** The notices of everything that a wanted quantity of the last `evaluate` rests on, itself included. */
  notices(column: number): Set<Notice> {
    return this.#worked[column]?.notices ?? new Set()
  }

  close(): void {
    this.#columns?.destroy()
    this.#columns = null
  }

  #throughEngine(columns: readonly Given[], part: readonly number[]): void {
    const engine = this.#columns ?? this.#engine()
    this.#columns = engine
    engine.change(() => {
      part.forEach((i, at) => {
        const given = columns[i] ?? NOTHING
        for (const { name } of this.#layout.quantities) engine.put(at, name, content(this.#catalog, given, name))
      })
    })
    part.forEach((i, at) => {
      const outcome = (name: string) => engine.outcome(at, name)
      this.#worked[i] = this.#read({ outcome, notices: (name) => outcome(name).notices })
    })
  }

  #engine(): Columns {
    const empty = (quantity: string) => content(this.#catalog, NOTHING, quantity)
    return new Columns(
      this.#layout,
      Array.from({ length: this.#width }, () => empty),
      () => undefined,
      null,
    )
  }

  #read({ outcome, notices }: Pick<Calculator, 'outcome' | 'notices'>): Worked {
    const raised = new Set<Notice>()
    for (const name of this.#rests) for (const notice of notices(name)) raised.add(notice)
    return { outcomes: this.wanted.map((name) => this.#missing(name, outcome)), notices: raised }
  }
}

/** There is one zero: minus zero is read as it. */
function valueIn(given: Given, quantity: string): Value | undefined {
  const value = given.get(quantity)
  return value === 0 ? 0 : value
}

const NOTHING: Given = new Map()

function content(catalog: Catalog, given: Given, quantity: string): Content {
  const value = valueIn(given, quantity)
  if (value !== undefined) return { kind: 'value', value }
  const row = catalog.quantities.get(quantity)?.row
  if (!row || 'formula' in row) return { kind: 'own' }
  return row.default === undefined ? { kind: 'missing' } : { kind: 'value', value: row.default }
}
