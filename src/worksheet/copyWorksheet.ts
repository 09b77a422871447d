import type { Definition, Row } from './definition'
import { renamedDefinition } from './renamedDefinition'

/** What a definition leaves to the catalogue of words, for a copy that has to say it itself. */
export interface CopiedWords {
  readonly label: string
  readonly help: string
  readonly labelOf: (row: Row) => string
  readonly helpOf: (row: Row) => string
  readonly groupLabel: (group: string) => string
}

/**
 * A worksheet of one's own with the rows of another under new names (`lsi` → `my_lsi`); its formulas read the new rows,
 * and quantities of other worksheets as before. A contract name goes on meaning the shipped row.
 * @param isTaken names of quantities, solves and worksheets that are there
 */
export function copyWorksheet(
  definition: Definition,
  words: CopiedWords,
  isTaken: (name: string) => boolean,
): Definition {
  const names = new Map<string, string>()
  const own = definition.groups.flatMap(({ rows }) =>
    rows.flatMap((row) => (typeof row === 'string' ? [] : [row.name])),
  )
  for (const name of [...own, ...(definition.solves ?? []).map(({ id }) => id)]) {
    const given = [...names.values()]
    names.set(
      name,
      freeName(name, (wanted) => isTaken(wanted) || given.includes(wanted)),
    )
  }
  // The sets of ranges are chosen by id, for all worksheets together.
  const { targets: _, $schema: __, ...rest } = definition
  const worded: Definition = {
    ...rest,
    id: freeName(definition.id, isTaken),
    edition: 1,
    label: words.label,
    ...(words.help !== '' && { help: words.help }),
    groups: definition.groups.map((group) => ({
      ...group,
      label: words.groupLabel(group.id),
      rows: group.rows.map((row) => (typeof row === 'string' ? row : withWords(row, words))),
    })),
  }
  return renamedDefinition(worded, names)
}

function withWords(row: Row, { labelOf, helpOf }: CopiedWords): Row {
  const help = helpOf(row)
  return { ...row, label: labelOf(row), ...(help !== '' && { help }) }
}

const LONGEST = 64

function freeName(name: string, isTaken: (name: string) => boolean): string {
  for (let number = 1; ; number++) {
    const ending = number === 1 ? '' : `_${number}`
    const wanted = `my_${name}`.slice(0, LONGEST - ending.length) + ending
    if (!isTaken(wanted)) return wanted
  }
}
