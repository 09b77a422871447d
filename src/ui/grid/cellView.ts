import { hasValue, type Notice, type Outcome } from '../../engine/outcome'
import { planOf } from '../../notebook/planLink'
import type { Source } from '../../notebook/resolve'
import { convert } from '../../units/convert'
import { formatDifference, formatValue } from '../../units/format'
import type { Fact, Problem } from '../../words/problem'
import { factsInWords, hasWords, say, sentence } from '../../words/say'
import type { Band, Row } from '../../worksheet/definition'
import { judge, type Side } from '../../worksheet/judge'
import { decimalsOf } from '../decimalsOf'
import { labelInside } from '../labelOf'
import { decimalsWritten, type Figures, figures } from './figures'
import { limitText } from './limitText'
import { noticesOf } from './noticesOf'

/** Everything that one cell shows, worked out from data alone. */
export interface CellView {
  readonly kind: 'number' | 'text' | 'needs' | 'refused' | 'not_taken' | 'empty'
  /** of a number */
  readonly figures: Figures | null
  /** what stands there, when it is not a number; short */
  readonly text: string
  /** against the baseline: '' in the baseline itself */
  readonly difference: string
  readonly side: Side | null
  readonly notices: readonly Notice[]
  /** entered in this very scenario, or read from its sample */
  readonly here: boolean
  /** a computed row with something typed over it */
  readonly assumed: boolean
  /** for a screen reader, after the value */
  readonly said: string
  /** what it stands on, for a screen reader; empty where the notebook worked it out */
  readonly state: string
}

export interface CellFacts {
  readonly row: Row
  readonly outcome: Outcome | undefined
  /** undefined in the baseline */
  readonly base: Outcome | undefined
  readonly source: Source
  readonly unit: string
  readonly band: Band | undefined
  /** why the row's own formula is refused */
  readonly refused?: Problem | undefined
}

export function cellView(facts: CellFacts): CellView {
  const { row, outcome, source } = facts
  // what follows a plan nobody entered
  const here = source.from === 'sample' || (source.from === 'typed' && planOf(source.cell) === null)
  const assumed = 'formula' in row && source.cell !== null
  const notices = noticesOf(row, outcome)
  const bare = {
    figures: null,
    text: '',
    difference: '',
    side: null,
    notices,
    here,
    assumed,
    said: '',
    state: stateOf(source, assumed),
  }

  if (outcome === undefined) return { ...bare, kind: 'empty' }
  if (!hasValue(outcome)) return { ...bare, ...withoutValue(facts, outcome.problem) }
  const { value } = outcome
  if (typeof value !== 'number') {
    const text = wordOf(row.name, value, row)
    return { ...bare, kind: 'text', text, difference: same(facts) ? '·' : '' }
  }
  const side = facts.band ? judge(value, facts.band) : null
  return {
    ...bare,
    kind: 'number',
    figures: figures(written(facts, value)),
    difference: difference(facts, value),
    side,
    said: side === null || side === 'within' ? '' : say(`page.side.${side}`),
  }
}

function stateOf({ from, cell }: Source, assumed: boolean): string {
  if (from === 'typed' && planOf(cell) !== null) return say('page.state.plan')
  if (from === 'none' || from === 'lacking') return ''
  return say(`page.state.${assumed && from === 'typed' ? 'assumed' : from}`)
}

/** More decimals than a person writes: a third, as a machine has it. */
const MACHINE = 7

/** A number as this row shows it. What a person wrote in this unit keeps the decimals that they wrote. */
function written({ row, source, unit }: CellFacts, value: number): string {
  const { cell } = source
  if (cell?.kind === 'value' && cell.unit === unit) {
    const decimals = decimalsWritten(cell.entered)
    const shown = convert(value, row.unit, unit)
    if (decimals !== null && decimals < MACHINE && typeof shown === 'number')
      return formatValue(shown, unit, unit, decimals)
  }
  return formatValue(value, row.unit, unit, decimalsOf(row))
}

function difference({ row, base, unit }: CellFacts, value: number): string {
  if (base === undefined || !hasValue(base) || typeof base.value !== 'number') return ''
  if (base.value === value) return '·'
  const text = formatDifference(value - base.value, row.unit, unit, decimalsOf(row))
  return /[1-9]/.test(text) ? text : '·'
}

function same({ outcome, base }: CellFacts): boolean {
  return (
    base !== undefined && hasValue(base) && outcome !== undefined && hasValue(outcome) && base.value === outcome.value
  )
}

function withoutValue(
  { row, source, unit, refused }: CellFacts,
  trouble: Problem,
): Partial<CellView> & Pick<CellView, 'kind'> {
  if (source.cell?.kind === 'limit') {
    return { kind: 'text', text: limitText(source.cell, row, unit), said: sentence(trouble) }
  }
  if ('input' in row && trouble.code === 'missing') {
    return source.cell?.kind === 'not_taken' || source.from === 'lacking'
      ? { kind: 'not_taken', figures: { whole: '–', fraction: '' }, said: say('page.not_taken') }
      : { kind: 'empty', text: '', said: say('page.nothing_entered') }
  }
  if (trouble.code === 'missing') {
    return needs(trouble.facts.names)
  }
  // Of the row itself the very reason; what reads it only says which row it waits for.
  const why = refused && trouble.code === 'units_flagged' && trouble.facts.name === row.name ? refused : trouble
  return { kind: 'refused', text: unitsApart(why) ?? shortOf(trouble), said: sentence({ ...why, path: [] }) }
}

function shortOf({ code }: Problem): string {
  const short = `page.short.${code}`
  return hasWords(short) ? say(short) : say('page.no_answer')
}

/** The two units that do not go together; null where the units are not what tells them apart. */
function unitsApart({ code, facts }: Problem): string | null {
  if (!code.startsWith('units_') || code.endsWith('_difference')) return null
  const [left_unit, right_unit] = [facts.wanted_unit ?? facts.left_unit, facts.found_unit ?? facts.right_unit]
  if (left_unit === undefined || right_unit === undefined) return null
  return say('page.short.units_of', factsInWords({ code, facts: { left_unit, right_unit } }))
}

/** In the cell the first two readings that are missing; all of them in what is read out, and in the margin. */
function needs(names: Fact | undefined): Pick<CellView, 'kind' | 'text' | 'said'> {
  const list = Array.isArray(names) ? (names as readonly string[]) : []
  const all = say('page.needs', { names: missingLabels(list) })
  if (list.length <= 2) return { kind: 'needs', text: all, said: '' }
  const first = missingLabels(list.slice(0, 2))
  return { kind: 'needs', text: say('page.needs_more', { names: first, count: list.length - 2 }), said: all }
}

/** `salt|chloride` is any one of them. */
export function missingLabels(names: Fact | undefined): string {
  const list = Array.isArray(names) ? (names as readonly string[]) : []
  return list
    .map((name) =>
      name
        .split('|')
        .map((one) => labelInside(one))
        .join(say('page.or')),
    )
    .join(', ')
}

export function wordOf(quantity: string, value: string | boolean, row?: Row): string {
  if (typeof value === 'boolean') return say(value ? 'page.yes' : 'page.no')
  const key = `choice.${quantity}.${value}`
  if (hasWords(key)) return say(key)
  return (row && 'labels' in row ? row.labels?.[value] : undefined) ?? value
}
