import type { Notebook } from '../../notebook/notebook'
import type { StoredExport } from '../../storage/records'
import { isProblem } from '../../words/problem'
import type { ImportBody, ImportHead } from '../lab/labImport'
import { withLabStore } from '../lab/labStore'
import { isAbout, rowsAbout } from '../lab/rowsAbout'
import { withExports } from './exported'

/** A kept lab file that holds rows of a pool. */
export interface TakenFrom {
  readonly head: ImportHead
  readonly body: ImportBody
  /** as a spreadsheet shows them; none where only rows that were refused speak of it */
  readonly rows: ReadonlySet<number>
}

/** What would stay of a notebook after it is deleted, unless it is dealt with. */
export interface LeftBehind {
  readonly imports: readonly TakenFrom[]
  /** files saved of it, and of everything since it was there */
  readonly files: readonly StoredExport[]
  readonly backups: readonly StoredExport[]
}

/** @param notebook null where it cannot be read: then only its name is known */
export async function leftBehind(id: string, name: string, notebook: Notebook | null): Promise<LeftBehind> {
  const exported = await withExports((exports) => exports.list())
  const all = isProblem(exported) ? [] : exported
  return {
    imports: await importsOf(name, notebook),
    files: all.filter((saved) => saved.notebook === id),
    backups: all.filter((saved) => saved.notebook === null),
  }
}

async function importsOf(name: string, notebook: Notebook | null): Promise<readonly TakenFrom[]> {
  const heads = await withLabStore((store) => store.list())
  if (isProblem(heads)) return []
  const origins = Object.values(notebook?.samples ?? {}).flatMap(({ origin }) => (origin ? [origin] : []))
  const found: TakenFrom[] = []
  for (const head of heads) {
    const taken = origins.filter((origin) =>
      origin.import === undefined ? origin.file === head.name : origin.import === head.id,
    )
    const body = await withLabStore((store) => store.body(head.id))
    if (isProblem(body)) continue
    const names = [name, notebook?.place ?? '']
    const rows = new Set([...taken.map(({ row }) => row), ...rowsAbout(body.columns, names)])
    if (rows.size > 0 || isAbout(body.refusedCsv, names)) found.push({ head, body, rows })
  }
  return found
}
