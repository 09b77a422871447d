import type { Notebook, Profile } from '../../notebook/notebook'

/** Countries where pools are measured in US gallons, pounds and °F: all others have metric units. */
const US_UNITS: ReadonlySet<string | undefined> = new Set(['US', 'LR', 'MM'])

/** The example's id: it is of one country, whoever looks at it. */
const EXAMPLE = 'little-heron'

/**
 * The units in which a new notebook begins: those of the one that is open, as the same desk measures in them; beside the
 * example, or beside nothing, those of the reader's country. A language without a country says nothing of gallons.
 * @param tag the reader's locale
 */
export function profileFor(open: Pick<Notebook, 'id' | 'profile'> | undefined, tag: string): Profile {
  if (open !== undefined && open.id !== EXAMPLE) return open.profile
  return US_UNITS.has(regionOf(tag)) ? 'us' : 'metric'
}

function regionOf(tag: string): string | undefined {
  try {
    return new Intl.Locale(tag).region
  } catch {
    return undefined
  }
}
