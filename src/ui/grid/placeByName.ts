import type { Notebook } from '../../notebook/notebook'
import { inOrder } from '../../notebook/order'
import { readUnit } from '../../units/readUnit'
import { locale } from '../../words/locale'
import { type Problem, problem } from '../../words/problem'
import { say } from '../../words/say'
import type { OutlineQuantity } from '../../worksheet/catalog'
import { labelOf } from '../labelOf'
import { unitWords } from '../unitWords'
import type { Copied } from './copyBlock'
import type { Strangers } from './pasteReport'
import type { Field, Placed } from './planPaste'
import { readChoice } from './readChoice'

/** What of a table found its rows and scenarios, and what did not. */
export interface ByName {
  readonly places: readonly Placed[]
  /** fields that say what stands in their cell already: a formula, or what follows the baseline, stays one */
  readonly same: number
  readonly strangers: Strangers
}

export interface NameScope {
  readonly notebook: Notebook
  /** the rows of the grid: what only other pages show cannot be meant */
  readonly rows: readonly OutlineQuantity[]
  /** the unit that a row is shown in */
  readonly unit: (quantity: string) => string
  /** what is copied of a cell now */
  readonly stands: (scenario: string, quantity: OutlineQuantity) => string
}

/** Columns before those of the scenarios: the row's label and its unit. */
const LEAD = 2

/** Whether a table begins with the headings that we write over one that is copied with names and units. */
export function hasOurHeadings([head = []]: readonly (readonly string[])[]): boolean {
  const [quantity, unit] = head.map(plain)
  return head.length > LEAD && quantity === say('page.col.quantity') && unit === say('page.col.unit')
}

/**
 * The fields of a table with our headings, each at the row and the scenario that it names, its number in the unit that is written beside it.
 * @param ours the same cells as this notebook copied them, where they are its own
 */
export function placeByName(
  [head = [], ...lines]: readonly (readonly string[])[],
  ours: readonly (readonly Copied[])[] | null,
  scope: NameScope,
): ByName {
  const scenarioIds = new Map(inOrder(scope.notebook).map(({ id, name }) => [plain(name), id]))
  const rows = byLabel(scope.rows)
  const places: Placed[] = []
  const [lostRows, lostScenarios] = [new Set<string>(), new Set<string>()]
  let [same, lost] = [0, 0]
  lines.forEach(([name = '', written = '', ...fields], down) => {
    const label = plain(name)
    const meant = meantBy(rows.get(label) ?? [], { written, fields, copied: ours?.[down]?.[0]?.quantity }, scope)
    const [quantity] = meant
    fields.forEach((text, across) => {
      const heading = plain(head[LEAD + across] ?? '')
      const scenario = scenarioIds.get(heading)
      if (!quantity || scenario === undefined) {
        // a spreadsheet copies the empty cells beside and under a table with it
        if (plain(text) === '') return
        lost++
        if (!quantity) lostRows.add(label)
        if (scenario === undefined) lostScenarios.add(heading)
        return
      }
      const field: Field = ours?.[down]?.[across] ?? text
      if (meant.some((row) => isThere(text, written, row, scenario, scope))) same++
      else places.push({ field, quantity, scenario, unit: unitAmong(meant, written, label, scope) })
    })
  })
  return { places, same, strangers: { rows: [...lostRows], scenarios: [...lostScenarios], fields: lost } }
}

function byLabel(all: readonly OutlineQuantity[]): ReadonlyMap<string, readonly OutlineQuantity[]> {
  const rows = new Map<string, OutlineQuantity[]>()
  // a quantity stands in every worksheet that shows it
  for (const quantity of new Set(all)) {
    const label = plain(labelOf(quantity.name, quantity.row))
    rows.set(label, [...(rows.get(label) ?? []), quantity])
  }
  return rows
}

/** Of several rows with one label the one that was copied, else the one that is shown in this unit, or alone can hold what is written; all where nothing tells them apart. */
function meantBy(
  named: readonly OutlineQuantity[],
  line: { readonly written: string; readonly fields: readonly string[]; readonly copied: string | undefined },
  scope: NameScope,
): readonly OutlineQuantity[] {
  const same = named.filter(({ name }) => name === line.copied)
  const shown = named.filter((row) => isShownIn(line.written, row, scope))
  const holding = named.filter((row) => line.fields.every((field) => plain(field) === '' || canHold(row, field)))
  return [same, shown, holding].find(({ length }) => length === 1) ?? named
}

function canHold({ name, row }: OutlineQuantity, field: string): boolean {
  if (!('input' in row) || row.input !== 'choice') return /\d/.test(field)
  const choice = readChoice(plain(field), name, row.choices)
  return choice?.kind === 'choice' && row.choices.includes(choice.id)
}

function unitAmong(
  meant: readonly OutlineQuantity[],
  written: string,
  label: string,
  scope: NameScope,
): string | Problem {
  const [quantity] = meant
  // worked-out rows are left as they are, whichever of them it is
  if (!quantity || (meant.length > 1 && !meant.every(({ formula }) => formula)))
    return problem('pasted_several', [], { found: label })
  if (isShownIn(written, quantity, scope)) return scope.unit(quantity.name)
  return readUnit(plain(written), quantity.row.unit, { profile: scope.notebook.profile, quantity: quantity.name })
}

function isShownIn(written: string, { name }: OutlineQuantity, { unit }: NameScope): boolean {
  return plain(written) === unitWords(unit(name))
}

function isThere(
  field: string,
  written: string,
  quantity: OutlineQuantity,
  scenario: string,
  scope: NameScope,
): boolean {
  return isShownIn(written, quantity, scope) && reads(field, scope.stands(scenario, quantity))
}

/** The same text, or the same number with other zeros at its end. */
function reads(field: string, stands: string): boolean {
  const [a, b] = [field, stands].map((text) => plain(text).replace(locale().decimal, '.'))
  return a === b || (a !== '' && b !== '' && Number(a) === Number(b))
}

/** Without the apostrophe that keeps a spreadsheet from running a text, and without blanks at the ends. */
function plain(text: string): string {
  return text.trim().replace(/^'/, '')
}
