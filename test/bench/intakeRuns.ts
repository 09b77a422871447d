import Papa from 'papaparse'
import { createBatchJob } from '../../src/engine/batchJob'
import { importFile, understand } from '../../src/intake/job'
import { knownQuantities } from '../../src/intake/known'
import { labImportOf } from '../../src/ui/lab/labImport'
import { orderOf } from '../../src/ui/results/orderOf'
import { shippedCatalog } from '../../src/worksheet/shippedCatalog'

/** What any reading of the file costs at least: cells as texts, nothing understood. */
export function parse(text: string): number {
  return Papa.parse<string[]>(text, { header: false }).data.length
}

/** The whole way, as the page's two workers go it: bytes to columns, columns to results. Answers with what each half took. */
export async function importAndEvaluate(
  text: string,
  wanted: readonly string[],
): Promise<{ imported: number; evaluated: number; samples: number }> {
  const start = performance.now()
  const file = new Blob([text])
  const known = knownQuantities(shippedCatalog().worksheets).filter((one) => one.accept || one.choices)
  const understanding = await understand(file, known, {})
  const imported = await importFile(file, understanding, { progress: () => {}, cancelled: () => false })
  if (imported === null || 'code' in imported) throw new Error('the file was not read')
  const source = labImportOf({ name: 'bench.csv', size: file.size }, understanding, imported, 0)
  const between = performance.now()
  let samples = 0
  const answer = createBatchJob((message) => {
    if (message.kind === 'evaluated') samples = message.results.count
  })
  const order = orderOf(source, wanted, 'leave_out', [], { worksheets: {}, rows: {} })
  await answer({ kind: 'evaluate', id: 1, order })
  return { imported: between - start, evaluated: performance.now() - between, samples }
}
