import type { Outline, OutlineQuantity } from '../../worksheet/catalog'
import type { Definition } from '../../worksheet/definition'

/** A row as the page shows it. One quantity can be shown in several worksheets: same cell, two places. */
export interface GridRow {
  /** unique on the page: `<worksheet>/<quantity>` */
  readonly key: string
  readonly worksheet: string
  /** the group's id in its worksheet */
  readonly group: string
  readonly quantity: OutlineQuantity
}

export interface GridGroup {
  readonly id: string
  readonly label: string | undefined
  readonly rows: readonly GridRow[]
}

/** A worksheet's groups with their rows looked up; names that nothing gives were refused when the catalog was built. */
export function groupsOf(definition: Definition, catalog: Outline): readonly GridGroup[] {
  return definition.groups
    .filter((group) => group.hidden !== true)
    .map((group) => ({
      id: group.id,
      label: group.label,
      rows: group.rows.flatMap((row) => {
        const quantity = catalog.quantities.get(typeof row === 'string' ? row : row.name)
        if (!quantity) return []
        return [{ key: `${definition.id}/${quantity.name}`, worksheet: definition.id, group: group.id, quantity }]
      }),
    }))
}

/** Every row of the page from top to bottom. */
export function rowsOf(catalog: Outline): readonly GridRow[] {
  return catalog.worksheets.flatMap((definition) => groupsOf(definition, catalog).flatMap((group) => group.rows))
}
