import type { Notebook } from './notebook'
import { inOrder } from './order'

/** The notebook as a file: UTF-8 JSON, one entry a line, the same text for the same content. */
export function toFile(notebook: Notebook): string {
  const scenarios = Object.fromEntries(inOrder(notebook).map((scenario) => [scenario.id, scenario]))
  const { format, version, id, name, place, note, profile, worksheets } = notebook
  const file: Notebook = {
    format,
    version,
    id,
    name,
    place,
    note,
    profile,
    units: sorted(notebook.units),
    scenarios,
    samples: sorted(notebook.samples),
    cells: sorted(notebook.cells),
    shelf: sorted(notebook.shelf),
    charts: sorted(notebook.charts),
    precisions: sorted(notebook.precisions),
    worksheets,
    rows: sorted(notebook.rows),
    plans: sorted(notebook.plans),
    additions: sorted(notebook.additions),
    remarks: sorted(notebook.remarks),
    lessons: sorted(notebook.lessons),
    cases: sorted(notebook.cases),
    rules: sorted(notebook.rules),
    computedWith: sorted(notebook.computedWith),
  }
  return `${JSON.stringify(file, null, 2)}\n`
}

function sorted<T>(record: Readonly<Record<string, T>>): Readonly<Record<string, T>> {
  return Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)))
}
