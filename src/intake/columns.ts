import { readUnit } from '../units/readUnit'
import { reported } from '../units/reported'
import { isUnit } from '../units/unit'
import { isProblem } from '../words/problem'
import { type Heading, readHeading } from './heading'
import type { Known } from './known'
import { type LabUnit, labUnit } from './labUnit'
import { ROLES } from './roles'
import { spelling } from './spelling'
import type { Column, ColumnAnswer, Question, Why } from './understanding'
import { unsaidUnits } from './unsaidUnits'

/** A column as far as its heading tells, and what is still open about it. */
export interface Matched {
  readonly column: Column
  readonly question: Question | null
  /** where the heading names no unit: those that laboratories use for it, the likeliest first; readings decide */
  readonly units: readonly LabUnit[]
}

/** What else the file shows that bears on one column. */
export interface Beside {
  /** other dissolved metals are listed as themselves, so that `Calcium mg/L` is calcium too */
  readonly ions: boolean
  /** French titres are listed, where TA is not total alkalinity */
  readonly french: boolean
  /** the heading's unit from a row or a column of its own */
  readonly unit: string | null
}

/** Matches one heading (or analyte) with a quantity and a unit, or with a role, or keeps it as a note and says why. */
export function matchColumn(
  index: number,
  heading: string,
  known: ReadonlyMap<string, Known>,
  beside: Beside,
  answer: ColumnAnswer = {},
): Matched {
  const note = (why: readonly Why[]): Matched =>
    settled({ index, heading, role: 'note', quantity: null, unitText: beside.unit, unit: null, confidence: 0, why })
  if (answer.role !== undefined) {
    return settled({
      index,
      heading,
      role: answer.role,
      quantity: null,
      unitText: beside.unit,
      unit: null,
      confidence: 1,
      why: [ANSWERED],
    })
  }
  const role = heading.trim().startsWith('@') ? undefined : ROLES.get(spelling(heading))
  if (role !== undefined && answer.quantity === undefined) {
    return settled({
      index,
      heading,
      role,
      quantity: null,
      unitText: beside.unit,
      unit: null,
      confidence: 0.95,
      why: [{ code: 'role', facts: { role } }],
    })
  }
  const read = readHeading(heading, known)
  const frenchTa = beside.french && /^ta\b/i.test(heading.trim())
  if (frenchTa && answer.quantity === undefined) return note([{ code: 'not_total_alkalinity', facts: {} }])
  if (answer.quantity === undefined && isSalinity(heading, read.unit ?? beside.unit))
    return note([{ code: 'salinity', facts: {} }])
  const quantities = answer.quantity === undefined ? (read.meaning?.quantities ?? []) : [answer.quantity]
  const known_ = fitting(
    quantities.flatMap((name) => known.get(name) ?? []),
    answer.unit ?? read.unit ?? beside.unit,
    beside.french && spelling(heading).startsWith('tac'),
  )
  const [first] = known_
  if (first === undefined) return note(read.why.length > 0 ? read.why : [{ code: 'unknown', facts: {} }])
  const why = answer.quantity === undefined ? read.why : [ANSWERED]
  const confidence = answer.quantity === undefined ? read.confidence : 1
  const column: Column = {
    index,
    heading,
    role: 'quantity',
    quantity: first.name,
    unitText: beside.unit,
    unit: null,
    confidence,
    why,
  }
  if (known_.length > 1) {
    return {
      column: { ...column, quantity: null },
      units: [],
      question: asked('which_quantity', heading, {}, quantities),
    }
  }
  if (isWord(first)) return note([{ code: 'worked_out_word', facts: { quantity: first.name } }])
  return withUnit(column, first, read, beside, answer)
}

/** A choice or a yes-or-no that the worksheets work out: our own table of all worksheets has such columns, and no laboratory measures one. */
function isWord({ unit, choices }: Known): boolean {
  return unit === 'truth' || (unit === 'choice' && choices === undefined)
}

/** Of what a name can stand for, the one that the unit or the language tells; all of them where neither does. */
function fitting(named: readonly Known[], unit: string | null, titre: boolean): readonly Known[] {
  if (named.length < 2) return named
  const fit = named.filter((one) =>
    titre ? one.name === 'total_alkalinity' : unit !== null && !isProblem(labUnit(unit, one)),
  )
  return fit.length === 1 ? fit : named
}

/** Salinity as oceanographers count it: grams of sea salt in a kilogram of water, not milligrams of NaCl in a litre. */
function isSalinity(heading: string, unit: string | null): boolean {
  return /^salini[tdn]/i.test(spelling(heading)) && /ppt|psu|g\/kg|‰|per ?mil/i.test(`${heading} ${unit ?? ''}`)
}

const ANSWERED: Why = { code: 'answered', facts: {} }

function withUnit(column: Column, known: Known, read: Heading, beside: Beside, answer: ColumnAnswer): Matched {
  if (known.choices !== undefined) return settled(column)
  if (answer.unit !== undefined) {
    const unit = isUnit(answer.unit) ? labUnit(answer.unit, known) : labUnit(answer.unit, known, read.at)
    return isProblem(unit) ? refused(column, unit.code, answer.unit) : settled({ ...column, unit })
  }
  const basisOnly = read.unit?.startsWith('as ') === true
  const said = basisOnly ? (beside.unit === null ? null : `${beside.unit} ${read.unit}`) : (read.unit ?? beside.unit)
  const meaning = read.meaning ?? { quantities: [known.name] }
  if (said === null && !basisOnly) {
    if (meaning.bases !== undefined) return byBasis(column, 'mg/L', known, meaning.bases, beside)
    return unsaid(column, known, read, meaning.basis)
  }
  const text = said ?? `mg/L ${read.unit}`
  if (meaning.bases?.some((basis) => statesNoBasis(text, basis, known))) {
    return byBasis(column, text, known, meaning.bases, beside)
  }
  const based = meaning.basis === undefined ? null : labUnit(`${text} as ${meaning.basis}`, known, read.at)
  const unit = based !== null && !isProblem(based) ? based : labUnit(text, known, read.at)
  if (!isProblem(unit)) return settled({ ...column, unit })
  if (unit.code !== 'ambiguous_unit') return refused(column, unit.code, text)
  const choices = Array.isArray(unit.facts.choices) ? unit.facts.choices.map(String) : []
  return {
    column,
    units: [],
    question: asked('which_unit', column.heading, { found: text, quantity: known.name }, choices),
  }
}

/** `Calcium mg/L` can be counted as Ca or as CaCO3, two and a half times apart: other ions in the file tell, or the reader. */
function byBasis(column: Column, text: string, known: Known, bases: readonly string[], beside: Beside): Matched {
  const units = bases.flatMap((basis) => {
    const unit = labUnit(`${text} as ${basis}`, known)
    return isProblem(unit) ? [] : [unit]
  })
  const [first] = units
  if (first !== undefined && (beside.ions || text.startsWith('mmol'))) {
    return settled({
      ...column,
      unit: first,
      confidence: 0.8,
      why: [...column.why, { code: 'among_ions', facts: { unit: first.code } }],
    })
  }
  const choices = units.map((unit) => unit.code)
  return {
    column,
    units: [],
    question: asked('which_unit', column.heading, { found: text, quantity: known.name }, choices),
  }
}

function statesNoBasis(text: string, basis: string, known: Known): boolean {
  return !isProblem(labUnit(`${text} as ${basis}`, known))
}

/** No unit in the heading: the canonical one, unless laboratories use another and the readings say so. */
function unsaid(column: Column, known: Known, read: Heading, basis: string | undefined): Matched {
  const own = basis === undefined ? known.unit : `mg/L as ${basis}`
  const codes = [own, ...unsaidUnits(known.name)]
  const units = codes.flatMap((code) => {
    const unit = labUnit(code, known, read.at)
    return isProblem(unit) ? [] : [unit]
  })
  const bare = known.unit === 'pH' || known.unit === '1' || read.confidence === 1
  const confidence = bare ? column.confidence : Math.min(column.confidence, 0.8)
  const why = bare ? column.why : [...column.why, { code: 'unit_unsaid', facts: { unit: own } }]
  const unit = units[0] ?? { code: known.unit, times: 1 }
  // a contract name means the contract's unit
  const open = read.confidence === 1 ? [unit] : units
  return { column: { ...column, unit, confidence, why }, question: null, units: open }
}

function refused(column: Column, code: string, found: string): Matched {
  const why: Why = { code: `unit_${code}`, facts: { found, quantity: column.quantity ?? '' } }
  return settled({ ...column, role: 'note', quantity: null, confidence: 0, why: [why] })
}

function settled(column: Column): Matched {
  return { column, question: null, units: column.unit === null ? [] : [column.unit] }
}

function asked(
  code: Question['code'],
  heading: string,
  facts: Question['facts'],
  choices: readonly string[],
): Question {
  return { code, heading, facts: { heading, ...facts }, choices }
}

/** Whether a text is a unit of anything that we know: how a row of units under the header is told. */
export function isAnyUnit(text: string, known: ReadonlyMap<string, Known>): boolean {
  const bare = text.trim().replace(/^[[(](.*)[\])]$/, '$1')
  if (bare === '' || /^[-–—]+$/.test(bare) || bare.length > 40) return false
  for (const one of known.values()) {
    if (one.choices === undefined && !isProblem(labUnit(bare, one))) return true
    const own = readUnit(bare, one.unit, { profile: 'metric', quantity: one.name })
    if (
      isProblem(own) &&
      (own.code === 'ambiguous_unit' || (own.code === 'wrong_basis' && reported(one.name).bases.length > 0))
    )
      return true
  }
  return false
}
