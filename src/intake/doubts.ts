import { unitsOfKind } from '../units/unit'
import { isProblem, type Problem, problem } from '../words/problem'
import { numbersOf, share } from './evidence'
import type { Known } from './known'
import { canonical } from './labUnit'
import type { RawColumn } from './layout'
import type { Column, Understanding } from './understanding'

/**
 * Columns most of whose readings are unlikely for the quantity in the unit that was matched: "calcium 7.4? this column
 * looks like pH". Code `lab_looks_wrong`; facts `heading`, `quantity`, `unit`, `median` in that unit as read, and `looks_like`: a
 * quantity's name, a unit's code, or empty.
 */
export function doubtsOf(
  columns: readonly Column[],
  raw: readonly RawColumn[],
  known: ReadonlyMap<string, Known>,
  decimal: Understanding['decimal'],
): readonly Problem[] {
  const ph = known.get('ph')
  const phIsThere = columns.some(({ quantity }) => quantity === 'ph')
  return columns.flatMap((column, i) => {
    const one = known.get(column.quantity ?? '')
    const range = one?.plausible ?? one?.accept
    if (one === undefined || column.unit === null || range === undefined) return []
    const unit = column.unit
    const values = numbersOf(raw[i]?.texts ?? [], decimal)
    if (values.length === 0 || share(values, unit, one, range) > 0.5) return []
    const likeUnit = unitsOfKind(unit.code).find(
      ({ code }) =>
        code !== unit.code &&
        !isProblem(canonical(1, { code, times: 1 }, one)) &&
        share(values, { code, times: 1 }, one, range) > 0.9,
    )
    const likePh =
      !phIsThere && ph?.plausible !== undefined && share(values, { code: 'pH', times: 1 }, ph, ph.plausible) > 0.9
    const median = [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
    const facts = { heading: column.heading, quantity: one.name, unit: unit.code, median }
    return [
      problem('lab_looks_wrong', [column.heading], { ...facts, looks_like: likePh ? 'ph' : (likeUnit?.code ?? '') }),
    ]
  })
}
