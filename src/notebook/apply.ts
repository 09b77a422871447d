import { isProblem, type Problem, problem } from '../words/problem'
import type { Applied, SimplyApplied } from './applied'
import { putCase, removeCase, setRule } from './applyCase'
import { setCells } from './applyCells'
import { applyRecord } from './applyRecord'
import { putRow, removeRow } from './applyRow'
import { addScenario, changeScenario, removeScenario } from './applyScenario'
import { putChart, removeChart, setPrecision } from './applyStudy'
import { putWorksheet, removeWorksheet } from './applyWorksheet'
import type { ChangeNotebook, Edit, GoBack, PutProduct, PutSample, RemoveSample, SetCell, SimpleEdit } from './edit'
import { held } from './held'
import { LIMITS } from './limits'
import type { Notebook } from './notebook'
import { own, withEntry, withoutEntry } from './own'
import { nameFault } from './scenarioName'
import { unsound } from './soundness'

/**
 * The document after an edit, and the way back. Pure: the document given is never changed, and what the edit does not
 * touch is shared with the new one. An edit that cannot be is refused whole, with the reason.
 *
 * It keeps the document sound (one baseline, ids that exist, names that differ, sizes); whether a value suits its
 * quantity is asked of `checkEdit`, which knows the worksheets.
 */
export function apply(notebook: Notebook, edit: Edit): Applied | Problem {
  if (edit.type !== 'together') return applySimple(notebook, edit)
  const applied = together(notebook, edit.edits)
  return isProblem(applied) || !edit.of_itself ? applied : { ...applied, history: 'none' }
}

function together(notebook: Notebook, edits: readonly SimpleEdit[]): Applied | Problem {
  if (edits.length > LIMITS.together) return problem('too_many_edits', [], { most: LIMITS.together })
  const inverses: SimpleEdit[] = []
  let now = notebook
  let remembered = false
  let at = 0
  for (let edit = edits[at]; edit !== undefined; edit = edits[at]) {
    const entries = entriesFrom(edits, at)
    const applied = entries.length > 0 ? setCells(now, entries) : applySimple(now, edit)
    if (isProblem(applied)) return applied
    const taken = 'inverses' in applied ? applied.inverses : [applied.inverse]
    now = applied.notebook
    for (const inverse of taken) inverses.push(inverse)
    remembered ||= applied.history !== 'none'
    at += taken.length
  }
  const inverse: Edit = { type: 'together', edits: inverses.reverse() }
  return { notebook: now, inverse, history: remembered ? 'step' : 'none' }
}

/** The entries that follow one another from here on. */
function entriesFrom(edits: readonly SimpleEdit[], at: number): readonly SetCell[] {
  const entries: SetCell[] = []
  for (let edit = edits[at]; edit?.type === 'set_cell'; edit = edits[at + entries.length]) entries.push(edit)
  return entries
}

function applySimple(notebook: Notebook, edit: SimpleEdit): SimplyApplied | Problem {
  switch (edit.type) {
    case 'set_cell':
      return setCell(notebook, edit)
    case 'add_scenario':
      return addScenario(notebook, edit)
    case 'remove_scenario':
      return removeScenario(notebook, edit)
    case 'change_scenario':
      return changeScenario(notebook, edit)
    case 'put_sample':
      return putSample(notebook, edit)
    case 'remove_sample':
      return removeSample(notebook, edit)
    case 'change_notebook':
      return changeNotebook(notebook, edit)
    case 'set_unit':
      return setUnit(notebook, edit.quantity, edit.unit)
    case 'put_product':
      return putProduct(notebook, edit)
    case 'remove_product':
      return removeProduct(notebook, edit.product)
    case 'put_chart':
      return putChart(notebook, edit)
    case 'remove_chart':
      return removeChart(notebook, edit.chart)
    case 'set_precision':
      return setPrecision(notebook, edit)
    case 'put_worksheet':
      return putWorksheet(notebook, edit)
    case 'remove_worksheet':
      return removeWorksheet(notebook, edit.id)
    case 'put_row':
      return putRow(notebook, edit)
    case 'remove_row':
      return removeRow(notebook, edit.row)
    case 'put_plan_record':
    case 'remove_plan_record':
    case 'put_addition':
    case 'remove_addition':
    case 'put_remark':
    case 'remove_remark':
    case 'put_lesson':
    case 'remove_lesson':
      return applyRecord(notebook, edit)
    case 'put_case':
      return putCase(notebook, edit)
    case 'remove_case':
      return removeCase(notebook, edit.id)
    case 'set_rule':
      return setRule(notebook, edit.rule, edit.value)
    case 'computed_with': {
      const inverse: SimpleEdit = { type: 'computed_with', versions: notebook.computedWith }
      return { notebook: { ...notebook, computedWith: edit.versions }, inverse, history: 'none' }
    }
    case 'go_back':
      return goBack(notebook, edit)
  }
}

function setCell(notebook: Notebook, edit: SetCell): SimplyApplied | Problem {
  const applied = setCells(notebook, [edit])
  if (isProblem(applied)) return applied
  const [inverse = edit] = applied.inverses
  return { notebook: applied.notebook, inverse, history: applied.history }
}

function putSample(notebook: Notebook, { sample }: PutSample): SimplyApplied | Problem {
  const fault = nameFault(sample.name)
  if (fault !== null) return fault
  const before = own(notebook.samples, sample.id)
  if (before === undefined && Object.keys(notebook.samples).length >= LIMITS.samples)
    return problem('too_many_samples', [], { most: LIMITS.samples })
  const inverse: SimpleEdit =
    before === undefined ? { type: 'remove_sample', sample: sample.id } : { type: 'put_sample', sample: before }
  const samples = withEntry(notebook.samples, sample.id, sample)
  return { notebook: { ...notebook, samples }, inverse, history: 'step' }
}

function removeSample(notebook: Notebook, edit: RemoveSample): SimplyApplied | Problem {
  const before = own(notebook.samples, edit.sample)
  if (before === undefined) return problem('sample_gone')
  const tied = Object.values(notebook.scenarios).filter((scenario) => scenario.sample === edit.sample)
  if (tied.length > 0)
    return problem('sample_in_use', [], { name: before.name, scenarios: tied.map((scenario) => scenario.name) })
  const samples = withoutEntry(notebook.samples, edit.sample)
  return { notebook: { ...notebook, samples }, inverse: { type: 'put_sample', sample: before }, history: 'step' }
}

function putProduct(notebook: Notebook, { product }: PutProduct): SimplyApplied | Problem {
  const before = own(notebook.shelf, product.id)
  if (before === undefined && Object.keys(notebook.shelf).length >= LIMITS.products)
    return problem('too_many_products', [], { most: LIMITS.products })
  const inverse: SimpleEdit =
    before === undefined ? { type: 'remove_product', product: product.id } : { type: 'put_product', product: before }
  return { notebook: { ...notebook, shelf: withEntry(notebook.shelf, product.id, product) }, inverse, history: 'step' }
}

function removeProduct(notebook: Notebook, id: string): SimplyApplied | Problem {
  const before = own(notebook.shelf, id)
  if (before === undefined) return problem('product_gone')
  const shelf = withoutEntry(notebook.shelf, id)
  return { notebook: { ...notebook, shelf }, inverse: { type: 'put_product', product: before }, history: 'step' }
}

function changeNotebook(notebook: Notebook, edit: ChangeNotebook): SimplyApplied | Problem {
  const { name, note } = edit.set
  const fault = name === undefined ? null : nameFault(name)
  if (fault !== null) return fault
  if (note !== undefined && note.length > LIMITS.note) return problem('note_too_long', [], { most: LIMITS.note })
  const inverse: SimpleEdit = { type: 'change_notebook', set: held(notebook, edit.set) }
  const onlyNote = Object.keys(edit.set).every((key) => key === 'note')
  return { notebook: { ...notebook, ...edit.set }, inverse, history: onlyNote ? 'join' : 'step' }
}

function setUnit(notebook: Notebook, quantity: string, unit: string | null): SimplyApplied | Problem {
  const before = own(notebook.units, quantity) ?? null
  const inverse: SimpleEdit = { type: 'set_unit', quantity, unit: before }
  if (before === unit) return { notebook, inverse, history: 'none' }
  if (before === null && Object.keys(notebook.units).length >= LIMITS.entries)
    return problem('too_many_units', [], { most: LIMITS.entries })
  const units = unit === null ? withoutEntry(notebook.units, quantity) : withEntry(notebook.units, quantity, unit)
  return { notebook: { ...notebook, units }, inverse, history: 'step' }
}

function goBack(notebook: Notebook, { to }: GoBack): SimplyApplied | Problem {
  if (to.id !== notebook.id) return problem('state_of_another')
  const [fault] = unsound(to, [to.name])
  if (fault !== undefined) return fault
  return { notebook: to, inverse: { type: 'go_back', to: notebook }, history: 'step' }
}
