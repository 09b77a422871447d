import { LOCKED } from '../../src/functions/registry'
import { sentence } from '../../src/words/say'
import { buildCatalog, isCatalog } from '../../src/worksheet/buildCatalog'
import type { Catalog } from '../../src/worksheet/catalog'
import type { Definition } from '../../src/worksheet/definition'

/** A worksheet small enough to reckon in the head: two readings, a declared default, a check, a locked function. */
export const small: Definition = {
  format: 'basinbook-worksheet',
  version: 1,
  id: 'small',
  edition: 1,
  takes: [],
  groups: [
    {
      id: 'all',
      rows: [
        { name: 'a', unit: 'm³', input: 'number', accept: [0, 10] },
        { name: 'b', unit: 'm³', input: 'number', accept: [0, 10] },
        { name: 'b_used', unit: 'm³', formula: 'b', when_missing: { of: 'b', value: 3, source: 'by hand' } },
        {
          name: 'total',
          unit: 'm³',
          formula: 'a + b_used',
          checks: [{ notice: 'disagree:total', when: 'total > 10' }],
        },
        { name: 'hours', unit: 'h', formula: 'TURNOVER_TIME(a; total)' },
        { name: 'either', unit: 'm³', formula: 'DEFAULT(b; a)' },
      ],
    },
  ],
}

export function smallCatalog(): Catalog {
  const catalog = buildCatalog([{ definition: small, file: 'small.json', shipped: true }], LOCKED)
  if (!isCatalog(catalog)) throw new Error(catalog.map(sentence).join('\n'))
  return catalog
}
