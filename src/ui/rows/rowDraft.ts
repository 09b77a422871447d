import { isUnit } from '../../units/unit'
import { type Problem, problem } from '../../words/problem'
import type { Row } from '../../worksheet/definition'
import type { OwnFormulaRow } from '../../worksheet/ownRow'
import { QUANTITY_NAME } from '../../worksheet/quantityName'

/** A row as it stands in the form: texts, not yet read. */
export interface RowDraft {
  readonly label: string
  readonly name: string
  readonly unit: string
  /** of a worked-out row */
  readonly formula: string
  readonly asSaid: boolean
  readonly decimals: string
  readonly from: string
  readonly to: string
  /** what an entered number is accepted between */
  readonly acceptFrom: string
  readonly acceptTo: string
}

export const EMPTY_DRAFT: RowDraft = {
  label: '',
  name: '',
  unit: '1',
  formula: '',
  asSaid: false,
  decimals: '2',
  from: '',
  to: '',
  acceptFrom: '',
  acceptTo: '',
}

/** @param formula as a reader sees it */
export function draftOf(row: Row, label: string, formula: string): RowDraft {
  const [from = '', to = ''] = (row.range ?? []).map(String)
  const [acceptFrom = '', acceptTo = ''] = ('accept' in row ? row.accept : []).map(String)
  const asSaid = 'units_as_said' in row && row.units_as_said === true
  const decimals = row.decimals === undefined ? '' : String(row.decimals)
  return { label, name: row.name, unit: row.unit, formula, asSaid, decimals, from, to, acceptFrom, acceptTo }
}

/** A name for formulas out of a label: `My dose, kg` becomes `my_dose_kg`. */
export function nameFrom(label: string): string {
  const plain = label
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
  const name = plain.replace(/[^a-z0-9]+/g, '_').replace(/^[_0-9]+|_+$/g, '')
  return name.slice(0, 64)
}

/** A worked-out row with its formula as it is kept; or the first field that cannot be read. */
export function formulaRowOf(draft: RowDraft, formula: string): OwnFormulaRow | Problem {
  const look = lookOf(draft)
  if ('code' in look) return look
  const { name, label, unit, decimals, range } = look
  return {
    name,
    ...(label !== '' && { label }),
    unit,
    ...(decimals !== undefined && { decimals }),
    ...(range && { range }),
    formula,
    ...(draft.asSaid && { units_as_said: true as const }),
  }
}

interface Look {
  readonly name: string
  readonly label: string
  readonly unit: string
  readonly decimals: number | undefined
  readonly range: readonly [number, number] | undefined
}

export function lookOf(draft: RowDraft): Look | Problem {
  const name = draft.name.trim()
  if (!QUANTITY_NAME.test(name)) return problem('rows_name', [], { found: name })
  const unit = draft.unit.trim() === '' ? '1' : draft.unit.trim()
  if (!isUnit(unit) && unit !== 'truth' && unit !== 'choice') return problem('rows_unit', [], { found: unit })
  const decimals = draft.decimals.trim() === '' ? undefined : Number(draft.decimals)
  if (decimals !== undefined && !(Number.isInteger(decimals) && decimals >= 0 && decimals <= 6))
    return problem('rows_decimals', [], { found: draft.decimals })
  const range = spanOf(draft.from, draft.to)
  if (range && 'code' in range) return range
  return { name, label: draft.label.trim(), unit, decimals, range }
}

/** Two ends, neither or both; the low one under the high one. */
export function spanOf(from: string, to: string): readonly [number, number] | undefined | Problem {
  if (from.trim() === '' && to.trim() === '') return undefined
  const ends = [from, to].map((text) =>
    text.trim() === '' ? Number.NaN : Number(text.trim().replace('−', '-').replace(',', '.')),
  )
  const [low = Number.NaN, high = Number.NaN] = ends
  const wrong = [from, to].find((_, i) => !Number.isFinite(ends[i]))
  if (wrong !== undefined) return problem('rows_number', [], { found: wrong })
  return low < high ? [low, high] : problem('span_order', [], { low, high })
}
