import { convert } from '../units/convert'
import { unit as unitOf } from '../units/unit'
import { isProblem, type Problem, problem } from '../words/problem'
import { hasWords, say } from '../words/say'
import type { Outline, OutlineQuantity } from '../worksheet/catalog'
import type { ChoiceRow, NumberRow } from '../worksheet/definition'
import type { Cell, Notebook, Reading } from './notebook'

type Value = Extract<Cell, { kind: 'value' | 'limit' }>

/** `checkFormula`, which is handed in: a page without formulas has no need of their parser. */
export type FormulaCheck = (notebook: Notebook, catalog: Outline, stored: string, unit?: string) => Problem | null

/** Why a cell of this quantity cannot hold this; null when it can. */
export function checkCell(
  notebook: Notebook,
  catalog: Outline,
  name: string,
  cell: Cell,
  checkFormula: FormulaCheck,
): Problem | null {
  const quantity = catalog.quantities.get(name)
  if (quantity === undefined) return problem('quantity_unknown', [], { quantity: name })
  if (cell.kind === 'formula') return checkFormula(notebook, catalog, cell.text, quantity.row.unit)
  if ('input' in quantity.row) return cell.kind === 'not_taken' ? null : checkInput(quantity.row, quantity, cell)
  if (cell.kind === 'not_taken') return problem('computed_not_taken', [], about(quantity))
  if (cell.kind === 'choice' || cell.kind === 'limit') return problem('wants_number', [], about(quantity))
  return checkKind(quantity, cell)
}

/** Why a sample cannot have this reading; null when it can. */
export function checkReading(catalog: Pick<Outline, 'quantities'>, name: string, reading: Reading): Problem | null {
  const quantity = catalog.quantities.get(name)
  if (quantity === undefined) return problem('quantity_unknown', [], { quantity: name })
  return 'input' in quantity.row
    ? checkInput(quantity.row, quantity, reading)
    : problem('reading_of_computed', [], about(quantity))
}

/** Why a row cannot be shown in this unit; null when it can. */
export function checkUnit(catalog: Pick<Outline, 'quantities'>, name: string, unit: string): Problem | null {
  const quantity = catalog.quantities.get(name)
  if (quantity === undefined) return problem('quantity_unknown', [], { quantity: name })
  const converted = convert(1, unit, quantity.row.unit)
  return isProblem(converted) ? converted : null
}

function checkInput(row: NumberRow | ChoiceRow, quantity: OutlineQuantity, cell: Reading): Problem | null {
  if (row.input === 'choice') {
    const choices = row.choices.map((id) => wordsOr(`choice.${quantity.name}.${id}`, id))
    const facts = { ...about(quantity), choices }
    if (cell.kind !== 'choice') return problem('wants_choice', [], facts)
    return row.choices.includes(cell.id) ? null : problem('choice_unknown', [], { ...facts, found: cell.id })
  }
  if (cell.kind === 'choice') return problem('wants_number', [], about(quantity))
  return checkKind(quantity, cell) ?? checkRange(row, quantity, cell)
}

/** The unit that it was entered in is one of this quantity's kind. */
function checkKind({ row }: OutlineQuantity, { unit, canonical }: Value): Problem | null {
  if (!Number.isFinite(canonical)) return problem('not_finite', [], { found: String(canonical), unit })
  const converted = convert(canonical, unit, row.unit)
  return isProblem(converted) ? converted : null
}

/** Outside `accept` no water and no pool is; the sentence speaks in the unit that was entered. */
function checkRange(row: NumberRow, quantity: OutlineQuantity, { entered, unit, canonical }: Value): Problem | null {
  const [least, most] = row.accept
  if (canonical >= least && canonical <= most) return null
  const [low, high] = [convert(least, row.unit, unit), convert(most, row.unit, unit)]
  if (isProblem(low) || isProblem(high)) return isProblem(low) ? low : null
  const symbol = unitOf(unit)?.symbol ?? unit
  const facts = { found: entered, low, high, unit: symbol === '' ? '' : ` ${symbol}` }
  return problem('outside_accept', [], { ...about(quantity), ...facts })
}

function about({ name, row }: OutlineQuantity): { quantity: string; label: string } {
  return { quantity: name, label: row.label ?? wordsOr(`quantity.${name}.label`, name) }
}

/** The catalogue's words, where a shipped worksheet has them; a reader's own says itself what it shows. */
function wordsOr(key: string, otherwise: string): string {
  return hasWords(key) ? say(key) : otherwise
}
