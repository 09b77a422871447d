import { createAside } from './aside'
import { createNaming } from './fraction'
import { isBesideSamples } from './notASample'
import { numberIn } from './numbers'
import type { CsvRecord } from './records'
import { spelling } from './spelling'
import type { Lookup, Table } from './table'

/** A column, or an analyte of a long or transposed file, with the cells of it that were looked at. */
export interface RawColumn {
  readonly kind: 'column' | 'analyte'
  readonly index: number
  readonly heading: string
  /** from a row or column of units */
  readonly unit: string | null
  readonly texts: readonly string[]
  /** of results without a unit: the one unit that the analyte has in other rows, and the results there */
  readonly elsewhere?: { readonly unit: string; readonly texts: readonly string[] }
}

const MOST_ANALYTES = 500

/** The table's columns and analytes as they stand, before anything is understood of them. */
export function rawColumns(records: readonly CsvRecord[], table: Table, look: Lookup): readonly RawColumn[] {
  return table.shape === 'transposed' ? downwards(records, table, look) : across(records, table, look)
}

function across(records: readonly CsvRecord[], table: Table, look: Lookup): readonly RawColumn[] {
  const headings = records[table.header]?.cells ?? []
  const units = table.units === null ? [] : (records[table.units]?.cells ?? [])
  // limits and means among the samples tell nothing of their units
  const aside = createAside((role) => headings.findIndex((heading) => look(heading) === role))
  const data = records
    .slice((table.units ?? table.header) + 1)
    .filter(({ cells, broken }) => broken !== true && aside(cells) === null)
  const columns = headings.map((heading, index): RawColumn => {
    const unit = (units[index] ?? '').trim().replace(/^[[(](.*)[\])]$/, '$1')
    return {
      kind: 'column',
      index,
      heading: heading.trim(),
      unit: unit === '' ? null : unit,
      texts: filled(data, index),
    }
  })
  return table.shape === 'long' ? [...columns, ...analytes(data, headings, look)] : columns
}

function analytes(data: readonly CsvRecord[], headings: readonly string[], look: Lookup): readonly RawColumn[] {
  const place = (role: string) => headings.findIndex((heading) => look(heading) === role)
  const [name, fraction, unit] = [place('analyte'), place('fraction'), place('unit')]
  const nameOf = createNaming(look.known)
  const result = place('result') === -1 ? place('result_text') : place('result')
  const found = new Map<string, { heading: string; unit: string | null; index: number; texts: string[] }>()
  for (const { row, cells } of data) {
    const heading = nameOf((cells[name] ?? '').trim(), (cells[fraction] ?? '').trim())
    const measured = (cells[unit] ?? '').trim()
    if (heading === '') continue
    const key = analyteKey(heading, measured)
    const known = found.get(key)
    if (known === undefined && found.size >= MOST_ANALYTES) continue
    const one = known ?? { heading, unit: measured === '' ? null : measured, index: row, texts: [] }
    one.texts.push(cells[result] ?? '')
    found.set(key, one)
  }
  return [...found.values()].flatMap((one): RawColumn[] => {
    const siblings = [...found.values()].filter((other) => other.heading === one.heading && other.unit !== null)
    const [only, other] = siblings
    if (one.unit !== null || only === undefined || other !== undefined) return [{ kind: 'analyte', ...one }]
    // a result "not detected" often has no unit: it is in the unit of the others
    const numbers = one.texts.some((text) => numberIn(text) !== null)
    return numbers ? [{ kind: 'analyte', ...one, elsewhere: { unit: only.unit ?? '', texts: only.texts } }] : []
  })
}

/** Two units of one analyte are two things to understand. */
export function analyteKey(heading: string, unit: string): string {
  return `${heading}\n${unit}`
}

function downwards(records: readonly CsvRecord[], table: Table, look: Lookup): readonly RawColumn[] {
  const names = records[table.header]?.cells ?? []
  return records.flatMap(({ row, cells, broken }, i): RawColumn[] => {
    const heading = (cells[table.labels] ?? '').trim()
    if (broken === true || heading === '' || (i < table.header && look(heading) !== 'date')) return []
    const unit = table.unitColumn === null ? '' : (cells[table.unitColumn] ?? '').trim()
    const texts = cells.filter((_, at) => at >= table.firstSample && !isBesideSamples((names[at] ?? '').trim()))
    return [
      { kind: i === table.header ? 'column' : 'analyte', index: row, heading, unit: unit === '' ? null : unit, texts },
    ]
  })
}

function filled(data: readonly CsvRecord[], index: number): readonly string[] {
  return data.flatMap(({ cells }) => (cells[index] === undefined || cells[index] === '' ? [] : [cells[index] ?? '']))
}

const METALS = new Set(
  'magnesium mg sodium na potassium k natrium kalium sodio potasio potassium k magnesio'.split(' '),
)
/** Words by which a table is in French, so that TAC and TA in it are titres. */
const FRENCH =
  /\b(thca|titre|chlore|durete|cyanurique|isocyanurique|stabilisant|conductivite|echantillon|piscine|bassin|prelevement|resultat|parametre|unite)\b/

/** What all headings together say about each one; see `Beside`. */
export function besideOf(
  raw: readonly RawColumn[],
  look: Lookup,
): { ions: boolean; french: boolean; bySample: boolean } {
  const names = raw.map(({ heading }) => spelling(heading.replace(/[[(].*$/, '').replace(/\s\S*\/\S*$/, '')))
  const portal = names.some((name) =>
    ['characteristicname', 'result characteristic', 'determinand label'].includes(name),
  )
  return {
    ions: portal || names.some((name) => METALS.has(name)),
    french: names.some((name) => FRENCH.test(name)),
    bySample: samplesTogether(raw, look),
  }
}

/** Whether a long file's rows change the analyte from row to row, as they do where each sample's results stand together. */
function samplesTogether(raw: readonly RawColumn[], look: Lookup): boolean {
  const names = raw.find(({ kind, heading }) => kind === 'column' && look(heading) === 'analyte')?.texts ?? []
  const changes = names.filter((name, i) => i > 0 && name !== names[i - 1]).length
  return changes * 4 >= names.length
}
