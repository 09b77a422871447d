import { isProblem } from '../../src/words/problem'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Catalog } from '../../src/worksheet/catalog'
import { isDefinition, readDefinition } from '../../src/worksheet/readDefinition'

/** Labels of their own, so that no sentence here changes with the words of the shipped rows. */
const labelled = <T extends { readonly name: string }>(row: T) => ({ ...row, label: `The ${row.name}` })

const number = (name: string, unit: string, accept: [number, number], rest: object = {}) => ({
  name,
  unit,
  input: 'number',
  accept,
  ...rest,
})

/** Three small worksheets that stand for the shipped ones: what matters here is which quantity belongs to which. */
const DEFINITIONS = [
  {
    id: 'pool',
    rows: [
      { name: 'shell', unit: 'choice', input: 'choice', choices: ['vinyl', 'plaster'] },
      { name: 'setting', unit: 'choice', input: 'choice', choices: ['indoor', 'outdoor'], default: 'outdoor' },
      number('diameter', 'm', [0.1, 200]),
      { name: 'volume', unit: 'm³', formula: 'diameter ^ 2' },
    ],
  },
  {
    id: 'sample',
    rows: [
      number('ph', 'pH', [0, 14]),
      number('temperature', '°C', [-2, 60]),
      number('salt', 'mg/L as NaCl', [0, 360_000]),
      { name: 'salt_used', unit: 'mg/L as NaCl', formula: 'salt' },
    ],
  },
  {
    id: 'saturation',
    takes: ['ph'],
    rows: [number('target_lsi', '1', [-3, 3], { default: 0 }), { name: 'lsi', unit: '1', formula: 'ph - 7.5' }],
  },
]

export const catalog: Catalog = build()

function build(): Catalog {
  const sources = DEFINITIONS.map(({ id, rows, takes = [] }) => {
    const file = `${id}.json`
    const json = {
      format: 'basinbook-worksheet',
      version: 1,
      id,
      edition: 1,
      takes,
      groups: [{ id: 'all', rows: rows.map(labelled) }],
    }
    const definition = readDefinition(json, file)
    if (!isDefinition(definition)) throw new Error(JSON.stringify(definition))
    return { definition, file, shipped: true }
  })
  const built = buildCatalog(sources, [])
  if (!isCatalog(built) || isProblem(built)) throw new Error(JSON.stringify(built))
  return built
}
