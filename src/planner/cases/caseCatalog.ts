import { LOCKED } from '../../functions/registry'
import { type Problem, problem } from '../../words/problem'
import { buildCatalog, isCatalog } from '../../worksheet/buildCatalog'
import type { Catalog } from '../../worksheet/catalog'
import type { Definition, Row, TargetSet } from '../../worksheet/definition'
import { SHIPPED } from '../../worksheet/shipped'
import { shippedCatalog } from '../../worksheet/shippedCatalog'
import type { Source } from '../../worksheet/source'
import type { PlanRules } from '../rules'
import type { CaseDefinition, CaseSource } from './caseDefinition'

/** A formula of a case: where it stands in its file, and the hidden row that works it out. */
export interface CaseRow {
  readonly path: readonly (string | number)[]
  readonly row: string
}

export interface CaseCatalog {
  /** the shipped worksheets with a hidden row for every formula of the cases and for every value of the rules */
  readonly catalog: Catalog
  /** those that are sound, each with its rows */
  readonly cases: readonly { readonly source: CaseSource; readonly rows: readonly CaseRow[] }[]
  readonly rules: PlanRules
  /** what is wrong with the others, with file, place and reason */
  readonly refused: readonly Problem[]
}

/**
 * Cases beside the shipped worksheets: their formulas are written in the one formula language and worked out by the same engine.
 * Beside every quantity they may read `rule_<rule>_<value>`, `test_error_<quantity>`, and `range_low_<quantity>` or
 * `range_high_<quantity>` for the ends of the range that holds for this pool. A case that is not sound is left out.
 * @param sets sound sets of ranges of the reader's own, beside the shipped ones
 */
export function caseCatalog(
  sources: readonly CaseSource[],
  rules: PlanRules,
  sets: readonly TargetSet[] = [],
): CaseCatalog {
  const refused: Problem[] = []
  const base = baseSource(rules, sets)
  const visible = [...shippedCatalog().quantities.keys(), ...namesOf(base)]
  let left = distinct(sources, refused).map((source, i) => ({ source, ...compiled(source, i, visible) }))
  refused.push(...left.flatMap(({ source }) => strangers(source)))
  const strange = new Set(refused.map(({ path }) => path[0]))
  left = left.filter(({ source }) => !strange.has(source.file))
  for (;;) {
    const built = buildCatalog([...SHIPPED, base, ...left.map(({ worksheet }) => worksheet)], LOCKED)
    if (isCatalog(built))
      return { catalog: built, rules, cases: left.map(({ source, rows }) => ({ source, rows })), refused }
    const bad = new Set(built.map(({ path }) => path[0]))
    refused.push(...built.map((fault) => inCase(fault, left)))
    const kept = left.filter(({ source }) => !bad.has(source.file))
    if (kept.length === left.length) throw new RangeError(built.map((fault) => JSON.stringify(fault)).join('\n'))
    left = kept
  }
}

/** A case replaces none that is there already. */
function distinct(sources: readonly CaseSource[], refused: Problem[]): readonly CaseSource[] {
  const first = new Map<string, CaseSource>()
  for (const source of sources) {
    const other = first.get(source.definition.id)
    if (other)
      refused.push(problem('case_twice', [source.file, 'id'], { name: source.definition.id, other: other.file }))
    else first.set(source.definition.id, source)
  }
  return [...first.values()]
}

/** The values of the rules, and the ends of the ranges, as rows. */
function baseSource(rules: PlanRules, sets: readonly TargetSet[]): Source {
  const quantities = shippedCatalog().quantities
  const rows: Row[] = []
  for (const { id, values, units } of rules.rules.values()) {
    for (const [name, value] of Object.entries(values)) {
      rows.push({ name: `rule_${id}_${name}`, unit: units[name] ?? '1', formula: String(value) })
    }
  }
  for (const [name, value] of rules.testErrors) {
    rows.push({ name: `test_error_${name}`, unit: quantities.get(name)?.row.unit ?? '1', formula: String(value) })
  }
  for (const { row } of quantities.values()) {
    if (!row.target) continue
    for (const end of ['low', 'high']) {
      rows.push({ name: `range_${end}_${row.name}`, unit: row.unit, input: 'number', accept: [-1e9, 1e9] })
    }
  }
  const definition = { ...worksheet('case_values', rows, []), targets: [...sets] }
  return { definition, file: 'rules.json', shipped: false }
}

function worksheet(id: string, rows: readonly Row[], takes: readonly string[]): Definition {
  return {
    format: 'basinbook-worksheet',
    version: 1,
    id,
    edition: 1,
    takes: [...takes],
    groups: [{ id: 'hidden', rows: [...rows], hidden: true }],
  }
}

function namesOf({ definition }: Source): readonly string[] {
  return definition.groups.flatMap(({ rows }) => rows.flatMap((row) => (typeof row === 'string' ? [] : [row.name])))
}

interface Compiled {
  readonly worksheet: Source
  readonly rows: readonly CaseRow[]
}

function compiled({ definition, file }: CaseSource, number: number, takes: readonly string[]): Compiled {
  const rows: CaseRow[] = []
  const of = (path: CaseRow['path'], unit: string, formula: string): Row => {
    const row = `case_${number}_${rows.length}`
    rows.push({ path, row })
    return { name: row, unit, formula }
  }
  const quantities = shippedCatalog().quantities
  const formulas = formulasOf(definition).map(({ path, formula, sets }) =>
    of(path, sets === undefined ? 'truth' : (quantities.get(sets)?.row.unit ?? '1'), formula),
  )
  return { worksheet: { definition: worksheet(`case_${number}`, formulas, takes), file, shipped: false }, rows }
}

interface Written {
  readonly path: CaseRow['path']
  readonly formula: string
  /** the target that it sets; else it is a condition */
  readonly sets?: string
}

function formulasOf({ when, gates = [], steps, done = [], sets = {} }: CaseDefinition): readonly Written[] {
  return [
    ...(when === undefined ? [] : [{ path: ['when'], formula: when }]),
    ...gates.map((gate, i) => ({ path: ['gates', i, 'when'], formula: gate.when })),
    ...steps.flatMap((step, i) =>
      'id' in step && step.when !== undefined ? [{ path: ['steps', i, 'when'], formula: step.when }] : [],
    ),
    ...done.map((end, i) => ({ path: ['done', i, 'when'], formula: end.when })),
    ...Object.entries(sets).map(([name, formula]) => ({ path: ['sets', name], formula, sets: name })),
  ]
}

/** Names outside formulas that nothing has: quantities asked, told or set, and products barred. */
function strangers({ definition, file }: CaseSource): readonly Problem[] {
  const quantities = shippedCatalog().quantities
  const unknown = (names: readonly string[], ...path: (string | number)[]) =>
    names.flatMap((name, i) => (quantities.has(name) ? [] : [problem('row_not_known', [file, ...path, i], { name })]))
  const products = quantities.get('step_product')?.row
  const sold: readonly string[] = products && 'choices' in products ? products.choices : []
  return [
    ...unknown(definition.asks ?? [], 'asks'),
    ...definition.steps.flatMap((step, i) =>
      'id' in step
        ? [...unknown(step.tells ?? [], 'steps', i, 'tells'), ...unknown(step.retest ?? [], 'steps', i, 'retest')]
        : [],
    ),
    ...Object.keys(definition.sets ?? {}).flatMap((name) =>
      /^(target|most)_/.test(name) && quantities.has(name)
        ? []
        : [problem('case_sets_no_target', [file, 'sets', name], { name })],
    ),
    ...(definition.bars ?? []).flatMap((name, i) =>
      sold.includes(name) ? [] : [problem('case_bars_nothing', [file, 'bars', i], { name, accepted: [...sold] })],
    ),
  ]
}

/** A fault of a hidden row as one of the place in the case's file. */
function inCase(fault: Problem, cases: readonly { readonly source: CaseSource; readonly rows: readonly CaseRow[] }[]) {
  const [file = '', groups, , , row] = fault.path
  const of = cases.find(({ source }) => source.file === file)
  const at = groups === 'groups' && typeof row === 'number' ? of?.rows[row] : undefined
  return at ? { ...fault, path: [file, ...at.path] } : fault
}
