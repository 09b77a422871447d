import { hasValue, type Outcome } from '../../engine/outcome'
import { namesIn } from '../../notebook/formulaNames'
import { isProblem } from '../../words/problem'
import type { Outline } from '../../worksheet/catalog'
import { isScenario } from '../../worksheet/nameKey'
import { parseFormula } from '../../worksheet/parse'
import { unitWords } from '../unitWords'

/** Digits enough to work a step out again by hand; the engine itself works with all of them. */
const DIGITS = 6

/**
 * A formula's text with the values in place of the names, as it is worked out: in the notebook's own units, each with its
 * unit. A name that has no value stays, and so does the output of a solve. Null where no name has a value.
 * @param outcomeOf what stands under a name: of the same scenario where `of` is null, else of the scenario that it names
 */
export function formulaWithNumbers(
  text: string,
  catalog: Pick<Outline, 'quantities'>,
  outcomeOf: (of: string | null, quantity: string) => Outcome | undefined,
): string | null {
  const formula = parseFormula(text)
  if (isProblem(formula)) return null
  let written = ''
  let done = 0
  for (const node of namesIn(formula.tree)) {
    if (node.of !== null && !isScenario(node)) continue
    const outcome = outcomeOf(node.of, node.name)
    if (!hasValue(outcome)) continue
    const unit = unitWords(catalog.quantities.get(node.name)?.row.unit ?? '1')
    written += text.slice(done, node.from) + figure(outcome.value, unit)
    done = node.to
  }
  return done === 0 ? null : written + text.slice(done)
}

function figure(value: number | string | boolean, unit: string): string {
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE'
  if (typeof value === 'string') return `"${value}"`
  return `${String(Number(value.toPrecision(DIGITS))).replace('-', '−')} ${unit}`.trim()
}
