import type { Value } from '../functions/define'
import type { Outline } from '../worksheet/catalog'
import type { Cell, Notebook } from './notebook'
import { alone } from './planLink'
import { resolve } from './resolve'
import { valueCell } from './valueCell'

/** A value as a cell of its own; one that is the source's reading still keeps what was written down then. */
export function asRead(notebook: Notebook, catalog: Outline, source: string, quantity: string, value: Value): Cell {
  const { cell } = resolve(notebook, catalog, source, quantity)
  const same = cell?.kind === 'value' ? cell.canonical === value : cell?.kind === 'choice' && cell.id === value
  return same && cell !== null ? alone(cell) : valueCell(catalog, quantity, value)
}
