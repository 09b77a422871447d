import { unit } from './unit'

/** How a reader sees values unless a row says otherwise. */
export type Profile = 'metric' | 'us'

/** Canonical units that US readers see in another; all that are not here stay as they are. */
const US: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '°C': '°F',
    m: 'ft',
    cm: 'in',
    'm²': 'ft²',
    'm³': 'US gal',
    // a canonical litre measures products (the water is in m³), and their jugs and cups are marked in fluid ounces
    L: 'US fl oz',
    kg: 'lb',
    'kg/day': 'lb/day',
    'm³/h': 'US gal/min',
    'L/day': 'US gal/day',
    'm/s': 'mph',
    'mm/day': 'in/day',
    'mg/L/day': 'ppm/day',
  }),
)

/** The unit in which a profile shows a quantity of this canonical unit; a code that is not known stays itself. */
export function displayUnit(canonical: string, profile: Profile): string {
  if (profile === 'metric') return canonical
  const known = unit(canonical)
  if (known?.dimension === 'concentration') return canonical.replace(/^mg\/L/, 'ppm')
  return US.get(canonical) ?? canonical
}
