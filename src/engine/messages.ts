import type { CellPlace } from '../notebook/cellPlace'
import type { Edit } from '../notebook/edit'
import type { Notebook } from '../notebook/notebook'
import type { Problem } from '../words/problem'
import type { Change } from './client'

/** What the page asks of the worker; each request has a number that its answer carries. */
export type Request =
  | { readonly id: number; readonly ask: 'open'; readonly notebook: Notebook }
  | { readonly id: number; readonly ask: 'edit'; readonly edits: readonly Edit[] }
  | { readonly id: number; readonly ask: 'formulas_under'; readonly cells: readonly CellPlace[] }

/** A long answer comes in parts; `more` says that another follows. */
export type Answer =
  | { readonly id: number; readonly changes: readonly Change[]; readonly more: boolean }
  | { readonly id: number; readonly problem: Problem }
