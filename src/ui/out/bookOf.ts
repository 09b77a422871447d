import type { SheetBook } from '../../out/sheet'
import { say } from '../../words/say'
import type { Definition } from '../../worksheet/definition'
import { sheetOf } from './sheetOf'
import { sourcesOf } from './sourcesOf'
import type { View } from './view'

/** Worksheets with some scenarios as one spreadsheet. */
export function bookOf(
  view: View,
  definitions: readonly Definition[],
  scenarios: readonly string[],
  language: string,
): SheetBook {
  return {
    title: view.notebook().name,
    language,
    sheets: definitions.map((definition) => sheetOf(view, definition, scenarios)),
    sources: sourcesOf(view, definitions, scenarios),
    words: {
      quantity: say('page.col.quantity'),
      name: say('page.margin.formula'),
      unit: say('page.col.unit'),
      formula: say('out.col.formula'),
      functions: say('page.title.functions'),
      sample: say('out.col.sample'),
      sources: say('out.sources'),
    },
  }
}
