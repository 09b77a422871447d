import type { Fact } from '../words/problem'
import { hasWords, say } from '../words/say'
import type { Outline } from '../worksheet/catalog'
import { labelInside, labelOf } from './labelOf'

/** Facts of any problem that are the name of a quantity the sentence speaks of. */
const SPOKEN: ReadonlySet<string> = new Set(['quantity', 'parameter'])

/** Facts of single problems that name quantities; everywhere else a name is told as somebody wrote it. */
const NAMED: ReadonlySet<string> = new Set([
  'missing.names',
  'units_flagged.name',
  'formula_refused.name',
  'row_in_use.name',
  'row_in_use.users',
  'row_at_end.name',
  'worksheet_in_use.users',
])

/** A fact of a problem as the page says it: quantities by their labels, models by their authors. */
export function factWord(catalog: Outline, code: string, name: string, fact: Fact): Fact {
  if (SPOKEN.has(name)) return typeof fact === 'string' ? called(catalog, fact, labelInside) : fact
  if (code === 'mixed_models') return modelWord(fact)
  if (!NAMED.has(`${code}.${name}`)) return fact
  const by = name === 'names' ? labelInside : labelOf
  if (typeof fact === 'string') return called(catalog, fact, by)
  return Array.isArray(fact) ? fact.map((one: string) => called(catalog, one, by)) : fact
}

/** `salt|chloride` is any one of them. What is no quantity, such as a scenario's cell, stays as it is written. */
function called(catalog: Outline, names: string, by: typeof labelOf): string {
  return names
    .split('|')
    .map((name) => {
      const row = catalog.quantities.get(name)?.row
      return row || hasWords(`quantity.${name}.label`) ? by(name, row) : name
    })
    .join(say('page.or'))
}

function modelWord(fact: Fact): Fact {
  const key = `choice.hocl_model.${fact}`
  return hasWords(key) ? say(key) : fact
}
