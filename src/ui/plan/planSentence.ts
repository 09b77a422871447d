import type { Value } from '../../functions/define'
import type { Column } from '../../planner/bench'
import type { RuleChanges } from '../../planner/changeRules'
import type { Amount, Say, Step } from '../../planner/step'
import { formatValue } from '../../units/format'
import type { Profile } from '../../units/profile'
import type { Fact, Problem } from '../../words/problem'
import { hasWords, say, sentence } from '../../words/say'
import { numberText } from '../../words/written'
import type { Outline } from '../../worksheet/catalog'
import { decimalsOf } from '../decimalsOf'
import { missingLabels } from '../grid/cellView'
import { labelInside, labelOf } from '../labelOf'
import { unitWords } from '../unitWords'

/** What a plan's sentences need to know of the reader and the water. */
export interface Reader {
  readonly catalog: Outline
  readonly profile: Profile
  /** the unit in which a quantity is shown */
  readonly unit: (quantity: string) => string
  /** the readings that sentences speak of */
  readonly water: Column
  /** values of the rules that this notebook changed */
  readonly changes: RuleChanges
}

/** A sentence of the plan: products, readings and amounts in the reader's words and units. */
export function planSentence(reader: Reader, { key, facts }: Say): string {
  const words: Record<string, Fact> = { ...facts }
  const unit = facts.unit as Amount['unit'] | undefined
  const quantity = typeof facts.quantity === 'string' ? facts.quantity : undefined
  for (const [name, fact] of Object.entries(facts)) {
    if (name === 'product') words[name] = productWords(String(fact))
    else if (Array.isArray(fact))
      words[name] = fact.map((one) => labelInside(one, reader.catalog.quantities.get(one)?.row))
    else if (name === 'reading') words[name] = readingWords(reader, String(fact))
    else if (name === 'rule') words[name] = keptBy(String(fact))
    else if (name === 'sanitizer') words[name] = say(`choice.sanitizer.${fact}`)
    else if (typeof fact !== 'number') continue
    else if (name === 'centimetres')
      words[name] = reader.profile === 'us' ? `${Math.floor(fact / 2.54)} in` : `${fact} cm`
    else if (unit && AMOUNTS.has(name)) words[name] = amountWords(fact, unit, reader.profile)
    else if (quantity && TARGETS.has(name)) words[name] = quantityWords(reader, quantity, fact)
    else if (!COUNTS.has(name)) words[name] = rounded(fact)
  }
  return hasWords(key) ? say(key, words) : key
}

/** What keeps a step out: the reason of a rule, or the name of a case. */
function keptBy(id: string): string {
  const key = id.startsWith('case.') ? `${id}.label` : `rule.${id}`
  return hasWords(key) ? say(key) : id.replace(/^case\./, '').replaceAll('_', ' ')
}

/** Why something is not met at the end. */
export function problemSentence(problem: Problem, name: string): string {
  const { rule, products, names } = problem.facts
  const facts = {
    ...problem.facts,
    ...(typeof rule === 'string' ? { rule: keptBy(rule) } : {}),
    ...(Array.isArray(products) ? { products: products.map(productWords) } : {}),
    ...(Array.isArray(names) ? { names: missingLabels(names) } : {}),
  }
  return sentence({ ...problem, facts, path: problem.path.length > 0 ? problem.path : [name] })
}

/** Why a rule is kept, and what of it this notebook changed. */
export function ruleWords({ changes }: Reader, rule: string): string {
  const changed = Object.entries(changes).filter(([key]) => key.startsWith(`${rule}.`))
  const reason = say(`rule.${rule}`)
  if (changed.length === 0) return reason
  const values = changed.map(([key, value]) => say('rule.changed_value', { value: ruleValueLabel(key), to: value }))
  return say('rule.changed', { reason, values })
}

/** The name of a value of the rules. */
export function ruleValueLabel(key: string): string {
  const own = `rule_value.${key}`
  return hasWords(own) ? say(own) : key
}

export function quantityLabel(reader: Reader, quantity: string): string {
  return labelOf(quantity, reader.catalog.quantities.get(quantity)?.row)
}

/** A value that stands beside a step, whatever its kind. */
export function shownWords(reader: Reader, quantity: string, value: Value): string {
  if (typeof value === 'number') return quantityWords(reader, quantity, value)
  const key = `choice.${quantity}.${value}`
  return hasWords(key) ? say(key) : String(value)
}

const AMOUNTS = new Set(['amount', 'rest', 'pack'])
const TARGETS = new Set(['target', 'most', 'least'])
/** these choose between one and many */
const COUNTS = new Set(['whole', 'days', 'round'])

export function productWords(product: string): string {
  const own = `plan.product.${product}`
  return say(hasWords(own) ? own : `choice.step_product.${product}`)
}

/** A product with the strength on its label. */
export function labelledWords({
  product,
  strength,
  basis,
}: Pick<Step, 'strength' | 'basis'> & { product: string }): string {
  if (strength === undefined || basis === undefined) return productWords(product)
  const counts = say(`choice.step_strength_basis.${basis}`)
  return say('page.plan.labelled', { product: productWords(product), strength, counts })
}

/** A value of a quantity with its unit, as the reader has them. */
export function quantityWords(reader: Reader, quantity: string, value: number): string {
  const row = reader.catalog.quantities.get(quantity)?.row
  if (!row) return rounded(value)
  const unit = reader.unit(quantity)
  return `${formatValue(value, row.unit, unit, decimalsOf(row))} ${unitWords(unit)}`.trim()
}

function readingWords(reader: Reader, quantity: string): string {
  const label = labelOf(quantity, reader.catalog.quantities.get(quantity)?.row)
  const value = reader.water.get(quantity)
  return typeof value === 'number' ? `${label} ${quantityWords(reader, quantity, value)}` : label
}

/** Shown units of an amount, large to small: the first of which there is at least one is used. */
const SHOWN: Readonly<Record<Profile, Readonly<Record<Amount['unit'], readonly (readonly [string, number])[]>>>> = {
  metric: {
    kg: [
      ['kg', 1],
      ['g', 0.001],
    ],
    L: [
      ['L', 1],
      ['mL', 0.001],
    ],
    'm³': [
      ['m³', 1],
      ['L', 0.001],
    ],
  },
  us: {
    kg: [
      ['lb', 0.45359237],
      ['oz wt', 0.028349523125],
    ],
    L: [
      ['US gal', 3.785411784],
      ['US fl oz', 0.0295735295625],
    ],
    'm³': [['US gal', 0.003785411784]],
  },
}

/** Under so many of the large unit an amount is said in both: 3 lb 7 oz wt. */
const IN_TWO = 10

/** A hair up, so that 2 kg, which is 2000.0000000001 g, does not come out as 1999. */
const HAIR = 1e-6

/** An amount, never rounded up: what is added must not be more than was worked out. */
export function amountWords(value: number, unit: Amount['unit'], profile: Profile): string {
  const units = SHOWN[profile][unit]
  const [code, size] = units.find(([, one]) => value >= one * (1 - HAIR)) ?? units.at(-1) ?? [unit, 1]
  const small = units[units.findIndex(([other]) => other === code) + 1]
  if (profile === 'us' && small && value < IN_TWO * size) {
    const large = Math.floor(value / size + HAIR)
    const rest = Math.max(0, value - large * size)
    if (rest < small[1] * 0.005) return inUnit(large, code)
    return say('page.amount.two', { large: inUnit(large, code), small: inUnit(rest / small[1], small[0]) })
  }
  return inUnit(value / size, code, profile === 'us' ? 5 : unit === 'm³' ? 4 : 3)
}

/** So many figures, at most two of them after the point. */
function inUnit(value: number, code: string, figures = 5): string {
  const step = 10 ** Math.max(-2, Math.floor(Math.log10(Math.max(value, 1e-9))) - figures + 1)
  const floored = Math.floor(value / step + HAIR * Math.max(1, value / step)) * step
  return `${numberText(Number(floored.toPrecision(6)), { maximumFractionDigits: 2 })} ${unitWords(code)}`
}

function rounded(value: number): string {
  return numberText(Number(value.toPrecision(3)), { maximumFractionDigits: 2 })
}

/** A price as a figure; in which money is the reader's to know. */
export function money(value: number): string {
  return numberText(value, { minimumFractionDigits: 2, maximumFractionDigits: 2 })
}
