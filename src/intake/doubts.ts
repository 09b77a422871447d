import { unitsOfKind } from '../units/unit'
import { isProblem, type Problem, problem } from '../words/problem'
import { numbersOf, share } from './evidence'
import type { Known } from './known'
import { canonical, type LabUnit, labUnit } from './labUnit'
import type { RawColumn } from './layout'
import { isLikely, likelyRange } from './likely'
import type { Column, Understanding } from './understanding'
import { unsaidUnits } from './unsaidUnits'

/**
 * Columns with readings that are unlikely for the quantity in the unit that was matched: "calcium 7.4? this column looks
 * like pH". Code `lab_looks_wrong` where most are; facts `heading`, `quantity`, `unit`, `median` in that unit as read, and
 * `looks_like`: a quantity's name, a unit's code, or empty. Code `lab_some_look_wrong` where some are that would be likely
 * in another unit that laboratories use; facts `count` and `found`, the first of them, in place of `median`.
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
    const range = one === undefined ? undefined : likelyRange(one)
    if (one === undefined || column.unit === null || range === undefined) return []
    const unit = column.unit
    const values = numbersOf(raw[i]?.texts ?? [], decimal)
    const unlikely = values.filter((value) => {
      const meant = canonical(value, unit, one)
      return isProblem(meant) || !isLikely(meant, one, range)
    })
    const facts = { heading: column.heading, quantity: one.name, unit: unit.code }
    if (unlikely.length === 0) return []
    if (unlikely.length * 2 < values.length) return someLookWrong(unlikely, unit, one, range, facts)
    const likeUnit = otherUnits(unit, one).find((other) => share(unlikely, other, one, range) > 0.9)
    const likePh =
      !phIsThere && ph?.plausible !== undefined && share(values, { code: 'pH', times: 1 }, ph, ph.plausible) > 0.9
    const median = [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
    const like = likePh ? 'ph' : (likeUnit?.code ?? '')
    return [problem('lab_looks_wrong', [column.heading], { ...facts, median, looks_like: like })]
  })
}

function someLookWrong(
  unlikely: readonly number[],
  unit: LabUnit,
  known: Known,
  range: readonly [number, number],
  facts: Problem['facts'],
): readonly Problem[] {
  for (const other of usualUnits(unit, known)) {
    const found = unlikely.filter((value) => share([value], other, known, range) === 1)
    const [first] = found
    if (first === undefined) continue
    const more = { ...facts, count: found.length, found: first, looks_like: other.code }
    return [problem('lab_some_look_wrong', [String(facts.heading)], more)]
  }
  return []
}

/** Other units that laboratories use, the canonical one first. */
function usualUnits(unit: LabUnit, known: Known): readonly LabUnit[] {
  return [known.unit, ...unsaidUnits(known.name)].flatMap((code) => {
    const other = labUnit(code, known)
    return isProblem(other) || other.code === unit.code ? [] : [other]
  })
}

function otherUnits(unit: LabUnit, known: Known): readonly LabUnit[] {
  const kin = unitsOfKind(unit.code).flatMap(({ code }): readonly LabUnit[] => {
    const other = { code, times: 1 }
    return code === unit.code || isProblem(canonical(1, other, known)) ? [] : [other]
  })
  return [...usualUnits(unit, known), ...kin]
}
