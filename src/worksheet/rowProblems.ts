import { isUnit } from '../units/unit'
import { type Problem, problem } from '../words/problem'
import type { Band, Row } from './definition'
import type { Path } from './place'

type Span = readonly [number, number]

/** What is wrong with a row by itself: its unit, the order of its spans, its default, its bands. */
export function rowProblems(row: Row, path: Path, rowOf: (name: string) => Row | undefined): Problem[] {
  const problems: Problem[] = []
  if (!isUnit(row.unit) && !(row.unit === 'truth' && 'formula' in row)) {
    problems.push(problem('unit_unknown', [...path, 'unit'], { found: row.unit }))
  }
  const spans: [string, Span | undefined][] = [['range', row.range]]
  if ('accept' in row) spans.push(['accept', row.accept], ['plausible', row.plausible])
  for (const [key, span] of spans) {
    if (span && !(span[0] < span[1]))
      problems.push(problem('span_order', [...path, key], { low: span[0], high: span[1] }))
  }
  if ('input' in row) problems.push(...inputProblems(row, path))
  row.target?.forEach((band, i) => {
    problems.push(...bandProblems(band, [...path, 'target', i], rowOf))
  })
  return problems
}

function inputProblems(row: Exclude<Row, { formula: string }>, path: Path): Problem[] {
  if (row.input === 'choice') {
    const unknown = row.default !== undefined && !row.choices.includes(row.default)
    return unknown
      ? [problem('default_not_a_choice', [...path, 'default'], { found: row.default ?? '', accepted: row.choices })]
      : []
  }
  const problems: Problem[] = []
  const [low, high] = row.accept
  if (row.default !== undefined && !inside(row.default, row.accept)) {
    problems.push(problem('default_outside', [...path, 'default'], { found: row.default, low, high }))
  }
  if (row.plausible && !row.plausible.every((end) => inside(end, row.accept))) {
    problems.push(problem('plausible_outside', [...path, 'plausible'], { low, high }))
  }
  return problems
}

function inside(value: number, [low, high]: Span): boolean {
  return value >= low && value <= high
}

/** What is wrong with a band: its ends, and what its conditions name. */
export function bandProblems(
  band: Omit<Band, 'source'>,
  path: Path,
  rowOf: (name: string) => Row | undefined,
): Problem[] {
  const problems: Problem[] = []
  const { low, high } = band
  if (low === undefined && high === undefined) problems.push(problem('band_without_ends', path))
  if (low !== undefined && high !== undefined && !(low < high))
    problems.push(problem('span_order', path, { low, high }))
  for (const [name, wanted] of Object.entries(band.when ?? {})) {
    const here = [...path, 'when', name]
    const row = rowOf(name)
    if (!row) problems.push(problem('row_not_known', here, { name }))
    else if (Array.isArray(wanted) !== (row.unit === 'choice'))
      problems.push(problem('when_of_wrong_kind', here, { name }))
    else if (Array.isArray(wanted) && 'choices' in row) {
      const accepted = row.choices
      for (const found of wanted.filter((id) => !accepted.includes(id))) {
        problems.push(problem('when_not_a_choice', here, { found, accepted }))
      }
    }
  }
  return problems
}
