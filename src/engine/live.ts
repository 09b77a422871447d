import { apply } from '../notebook/apply'
import type { CellPlace } from '../notebook/cellPlace'
import type { Edit, SimpleEdit } from '../notebook/edit'
import type { Cell, Notebook } from '../notebook/notebook'
import { baselineOf, inOrder } from '../notebook/order'
import { resolve } from '../notebook/resolve'
import { isProblem } from '../words/problem'
import type { Catalog } from '../worksheet/catalog'
import { catalogUnits } from '../worksheet/catalogUnits'
import type { Expression } from '../worksheet/formula'
import { withOwnWorksheets } from '../worksheet/ownWorksheets'
import { parseFormula } from '../worksheet/parse'
import { shippedCatalog } from '../worksheet/shippedCatalog'
import { unitFlags } from '../worksheet/unitCheck'
import type { Change } from './client'
import { Columns } from './columns'
import { layoutFor } from './layout'
import { withMissing } from './missing'
import { hasValue, type Outcome } from './outcome'
import type { Content } from './sheets'

/**
 * A notebook in the engine: every scenario a column, kept in step with the document by the same edits. Before one that
 * has worksheets of its own, or gets them, comes `prepareOwnWorksheets`.
 */
export class Live {
  #notebook: Notebook
  #catalog: Catalog
  #columns: Columns
  /** scenario → column; the baseline is column 0, and a removed scenario's column is used again */
  #columnOf = new Map<string, number>()
  #free: number[] = []
  /** what the page was last told, by column, then quantity */
  #told: Map<string, Outcome>[] = []

  constructor(notebook: Notebook) {
    this.#notebook = notebook
    this.#catalog = catalogOf(notebook)
    this.#columns = this.#build()
  }

  /** Every cell. */
  all(): Change[] {
    this.#told = []
    return this.#news(
      [...this.#columnOf.values()].flatMap((column) => this.#names().map((name) => [column, name] as const)),
    )
  }

  /** Follows edits that the document has taken; answers with the cells whose outcome changed. */
  edit(edits: readonly Edit[]): Change[] {
    const simple = edits.flatMap((edit): readonly SimpleEdit[] => (edit.type === 'together' ? edit.edits : [edit]))
    for (const edit of edits) {
      const applied = apply(this.#notebook, edit)
      if (!isProblem(applied)) this.#notebook = applied.notebook
    }
    if (simple.some(({ type }) => REBUILDS.has(type))) {
      this.#catalog = catalogOf(this.#notebook)
      this.#columns.destroy()
      this.#columns = this.#build()
      return this.all()
    }
    return this.#news(
      this.#columns.change(() => this.#write(simple)),
      !simple.every(entersValue),
    )
  }

  /**
   * What the rows' own formulas would give in cells where something was typed over them, each by itself while all other
   * cells stay as they are. Afterwards everything is as it was.
   */
  formulasUnder(cells: readonly CellPlace[]): Change[] {
    return cells.flatMap(({ scenario, quantity }): Change[] => {
      const column = this.#columnOf.get(scenario)
      if (column === undefined || !this.#catalog.quantities.get(quantity)?.formula) return []
      this.#columns.change(() => this.#columns.put(column, quantity, { kind: 'own' }))
      const outcome = withMissing(
        this.#catalog,
        quantity,
        (name) => this.#columns.outcome(column, name),
        (name) => (name === quantity ? undefined : this.#entered(scenario, name)),
      )
      this.#columns.change(() => this.#put(scenario, quantity))
      return [{ scenario, quantity, outcome }]
    })
  }

  close(): void {
    this.#columns.destroy()
  }

  #build(): Columns {
    const scenarios = inOrder(this.#notebook)
    this.#columnOf = new Map(scenarios.map(({ id }, column) => [id, column]))
    this.#free = []
    return new Columns(
      layoutFor(this.#catalog),
      scenarios.map(
        ({ id }) =>
          (quantity: string) =>
            this.#content(id, quantity),
      ),
      (scenario) => this.#columnOf.get(scenario),
    )
  }

  #write(edits: readonly SimpleEdit[]): void {
    const cells = edits.filter((edit) => edit.type === 'set_cell')
    const harmless = edits.every((edit) => edit.type === 'set_cell' || leavesValues(edit))
    if (!harmless) {
      this.#rewrite()
      return
    }
    const baseline = baselineOf(this.#notebook).id
    for (const { scenario, quantity } of cells) {
      // What the baseline has decides whether a later scenario refers to it or stands alone.
      const touched = scenario === baseline ? this.#columnOf.keys() : [scenario]
      for (const id of touched) this.#put(id, quantity)
    }
  }

  /** Everything anew; cells whose content is as it was are not written again. */
  #rewrite(): void {
    const gone = [...this.#columnOf].filter(([id]) => !Object.hasOwn(this.#notebook.scenarios, id))
    for (const [id] of gone) this.#columnOf.delete(id)
    const added = inOrder(this.#notebook).filter(({ id }) => !this.#columnOf.has(id))
    for (const { id } of added)
      this.#columnOf.set(id, this.#free.pop() ?? this.#columnOf.size + gone.length + this.#free.length)
    const fresh = new Set(added.map(({ id }) => id))
    for (const id of this.#columnOf.keys()) if (!fresh.has(id)) for (const name of this.#names()) this.#put(id, name)
    for (const { id } of added) {
      const column = this.#columnOf.get(id)
      if (column !== undefined) this.#columns.add(column, (quantity) => this.#content(id, quantity))
    }
    for (const [, column] of gone) {
      this.#columns.clear(column)
      this.#told[column] = new Map()
      this.#free.push(column)
    }
  }

  #entered(scenario: string, quantity: string): Expression | undefined {
    const content = this.#content(scenario, quantity)
    return content.kind === 'formula' ? content.tree : undefined
  }

  #put(scenario: string, quantity: string): void {
    const column = this.#columnOf.get(scenario)
    if (column !== undefined) this.#columns.put(column, quantity, this.#content(scenario, quantity))
  }

  #content(scenario: string, quantity: string): Content {
    const source = resolve(this.#notebook, this.#catalog, scenario, quantity)
    if (source.from === 'baseline') return { kind: 'inherit' }
    if (source.cell) return contentOf(source.cell, this.#catalog, quantity)
    return this.#catalog.quantities.get(quantity)?.formula ? { kind: 'own' } : { kind: 'missing' }
  }

  /** Of the cells that computed, those whose outcome is another than the page was told. */
  #news(computed: Iterable<readonly [column: number, quantity: string]>, rewired = true): Change[] {
    const scenarioOf = new Map([...this.#columnOf].map(([id, column]) => [column, id]))
    const byColumn = new Map<number, Set<string>>()
    for (const [column, quantity] of computed) {
      const names = byColumn.get(column)
      if (names) names.add(quantity)
      else byColumn.set(column, new Set([quantity]))
    }
    const changes: Change[] = []
    for (const [column, quantities] of byColumn) {
      const scenario = scenarioOf.get(column)
      if (scenario === undefined) continue
      const told = this.#told[column] ?? new Map<string, Outcome>()
      this.#told[column] = told
      const outcomes = new Map<string, Outcome>()
      const outcomeOf = (name: string): Outcome => {
        const known = outcomes.get(name) ?? this.#columns.outcome(column, name)
        outcomes.set(name, known)
        return known
      }
      // A cell that waits for readings keeps its error while the list of what it waits for grows shorter; that list
      // can change only where a cell came to have an answer or lost it, or reads others than before (`rewired`).
      const stirred = rewired || [...quantities].some((name) => stands(told.get(name)) !== stands(outcomeOf(name)))
      if (stirred) for (const [name, outcome] of told) if (!hasValue(outcome)) quantities.add(name)
      for (const quantity of quantities) {
        const before = told.get(quantity)
        if (!stirred && before && !hasValue(before)) continue
        const outcome = withMissing(this.#catalog, quantity, outcomeOf, (name) => this.#entered(scenario, name))
        if (before && same(before, outcome)) continue
        told.set(quantity, outcome)
        changes.push({ scenario, quantity, outcome })
      }
    }
    return changes
  }

  #names(): string[] {
    return [...this.#catalog.quantities.keys()]
  }
}

/** What changes the worksheets themselves. */
const REBUILDS: ReadonlySet<SimpleEdit['type']> = new Set([
  'put_worksheet',
  'remove_worksheet',
  'put_row',
  'remove_row',
  'go_back',
])

function catalogOf(notebook: Notebook): Catalog {
  return withOwnWorksheets(notebook)?.catalog ?? shippedCatalog()
}

function contentOf(cell: Cell, catalog: Catalog, quantity: string): Content {
  switch (cell.kind) {
    case 'value':
      return { kind: 'value', value: cell.canonical }
    case 'choice':
      return { kind: 'value', value: cell.id }
    case 'not_taken':
      return { kind: 'missing' }
    case 'limit':
      return { kind: 'refused', code: 'only_a_limit', name: '' }
    case 'formula': {
      const formula = parseFormula(cell.text)
      if (isProblem(formula)) return { kind: 'refused', code: formula.code, name: '' }
      const unit = catalog.quantities.get(quantity)?.row.unit ?? null
      const agrees = unitFlags(formula.tree, catalogUnits(catalog), unit).length === 0
      return agrees
        ? { kind: 'formula', tree: formula.tree }
        : { kind: 'refused', code: 'units_flagged', name: quantity }
    }
  }
}

/** Whether an edit only puts a value into a cell, so that every cell reads the cells that it read before. */
function entersValue(edit: SimpleEdit): boolean {
  return edit.type === 'set_cell' && (edit.cell?.kind === 'value' || edit.cell?.kind === 'choice')
}

/** Whether an edit changes only what is said about the values. */
function leavesValues(edit: SimpleEdit): boolean {
  switch (edit.type) {
    case 'change_notebook':
    case 'set_unit':
    case 'computed_with':
    case 'put_product':
    case 'remove_product':
    case 'put_chart':
    case 'remove_chart':
    case 'set_precision':
    case 'put_plan_record':
    case 'remove_plan_record':
    case 'put_addition':
    case 'remove_addition':
    case 'put_remark':
    case 'remove_remark':
    case 'put_lesson':
    case 'remove_lesson':
      return true
    case 'change_scenario':
      return edit.set.sample === undefined
    default:
      return false
  }
}

/** What others can wait for in an outcome: that it has an answer, or why it has none. */
function stands(outcome: Outcome | undefined): string {
  if (outcome === undefined) return ''
  if (hasValue(outcome)) return 'value'
  const { code, facts } = outcome.problem
  return code === 'missing' ? code : `${code} ${JSON.stringify(facts)}`
}

function same(a: Outcome, b: Outcome): boolean {
  if (a.notices.join(' ') !== b.notices.join(' ')) return false
  if (hasValue(a)) return hasValue(b) && a.value === b.value
  return (
    !hasValue(b) &&
    a.problem.code === b.problem.code &&
    JSON.stringify(a.problem.facts) === JSON.stringify(b.problem.facts)
  )
}
