import type { Definition, TargetSet } from './definition'

type SetBand = TargetSet['bands'][string][number]

/** What a reader can change of one band of a copy. */
export type BandChange = Partial<Pick<SetBand, 'low' | 'high' | 'source'>>

/** A definition that brings one set of ranges and nothing else. */
export function ownSet(set: TargetSet): Definition {
  return {
    format: 'basinbook-worksheet',
    version: 1,
    id: set.id,
    edition: 1,
    ...(set.label === undefined ? {} : { label: set.label }),
    takes: [],
    targets: [set],
    groups: [],
  }
}

/** The set of a definition that brings one and nothing else; undefined for any other. */
export function setOf(definition: unknown): TargetSet | undefined {
  const of = definition as Partial<Definition> | null
  if (typeof of !== 'object' || of === null || !Array.isArray(of.groups) || of.groups.length > 0) return undefined
  return Array.isArray(of.targets) ? of.targets[0] : undefined
}

/** An id for a copy: small letters of its name, and a number where that is taken. */
export function setId(name: string, taken: ReadonlySet<string>): string {
  const letters = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '')
  const wanted = `ranges_${letters}`.slice(0, 56).replace(/_$/, '')
  for (let number = 1; ; number++) {
    const id = number === 1 ? wanted : `${wanted}_${number}`
    if (!taken.has(id)) return id
  }
}

/** The same bands under another id and name; each says its own source still, and the copy whose it is. */
export function copySet(set: TargetSet, id: string, label: string, from: string): TargetSet {
  const bands = Object.entries(set.bands).map(([quantity, list]) => [
    quantity,
    list.map((band) => ({ ...band, source: band.source ?? set.source })),
  ])
  return { id, label, from, source: set.source, bands: Object.fromEntries(bands) }
}

/** The set with one band changed; an end that is undefined is taken away. */
export function changeBand(set: TargetSet, quantity: string, at: number, change: BandChange): TargetSet {
  const list = (set.bands[quantity] ?? []).map((band, i) => {
    if (i !== at) return band
    const { low, high, ...rest } = { ...band, ...change }
    return { ...rest, ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) }
  })
  return { ...set, bands: { ...set.bands, [quantity]: list } }
}

/** One more band for a quantity, after those that it has: the first whose conditions hold is used. */
export function addBand(set: TargetSet, quantity: string, band: SetBand): TargetSet {
  return { ...set, bands: { ...set.bands, [quantity]: [...(set.bands[quantity] ?? []), band] } }
}

/** The set without one band; a quantity without any goes by the row's own again. */
export function removeBand(set: TargetSet, quantity: string, at: number): TargetSet {
  const left = (set.bands[quantity] ?? []).filter((_, i) => i !== at)
  const { [quantity]: _, ...others } = set.bands
  return { ...set, bands: left.length === 0 ? others : { ...set.bands, [quantity]: left } }
}
