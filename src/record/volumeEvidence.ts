import { isFailure } from '../chemistry/failure'
import { massAsRead, RISES_BY_MASS, type RisesByMass } from '../chemistry/massAsRead'
import { PRODUCT_IDS, type ProductId, STRENGTH_BASES } from '../chemistry/products'
import { volumeFromRise } from '../chemistry/volumeFromRise'
import type { Notebook } from '../notebook/notebook'
import type { Addition } from '../notebook/record'
import type { ErrorOf } from './errorOf'
import { dayOf, instant, isAfter } from './instant'
import type { Interval } from './interval'
import { type Measured, measuredOf } from './measured'

/** What one retest after known additions says of the pool's volume, m³. */
export interface VolumeEvidence extends Interval {
  readonly quantity: RisesByMass
  readonly before: Measured
  readonly after: Measured
  readonly additions: readonly Addition[]
}

/**
 * Days between two tests beyond which they say nothing of the volume: splash, backwash, rain and filling have changed the water by
 * then. Common practice, no source.
 */
export const LONGEST_DAYS = 14

/** Salt and stabilizer are bought as good as pure; of all else the label has to say what is in it. */
const PURE: ReadonlySet<string> = new Set([
  'salt',
  'cyanuric_acid',
  'boric_acid',
  'borax_decahydrate',
  'borax_pentahydrate',
])

/**
 * Every pair of tests, one after the other, between which something was added that shows in a reading by its mass alone. A
 * pair is left out where water was renewed in between, where an addition cannot be counted (no strength, an unknown product
 * counts as nothing), where the dates do not tell whether it came before the second test, and where more than 14 days passed.
 */
export function volumeEvidence(
  notebook: Pick<Notebook, 'samples' | 'additions'>,
  errorOf: ErrorOf,
): readonly VolumeEvidence[] {
  const byDay = daysOf(Object.values(notebook.additions))
  return RISES_BY_MASS.flatMap((quantity) => {
    const tests = measuredOf(notebook).filter(({ figures }) => figures.has(quantity))
    return tests.flatMap((after, i) => {
      const before = tests[i - 1]
      return before === undefined ? [] : evidence(quantity, before, after, byDay, errorOf)
    })
  })
}

function evidence(
  quantity: RisesByMass,
  before: Measured,
  after: Measured,
  byDay: ReadonlyMap<string, readonly Addition[]>,
  errorOf: ErrorOf,
): readonly VolumeEvidence[] {
  const days = (instant(after.date) - instant(before.date)) / 86_400_000
  if (!(days > 0 && days <= LONGEST_DAYS)) return []
  const near = daysFrom(before.date, Math.ceil(days) + 1).flatMap((day) => byDay.get(day) ?? [])
  // what was added on the day of the first test was added because of it
  const since = near.filter(({ date }) => isAfter(date, before.date) !== false)
  if (since.some(({ date }) => isAfter(after.date, date) === null)) return []
  const between = since.filter(({ date }) => isAfter(after.date, date) === true)
  let least = 0
  let most = 0
  for (const addition of between) {
    const mass = massOf(quantity, addition)
    if (mass === null) return []
    least += mass[0]
    most += mass[1]
  }
  if (!(least > 0)) return []
  const [first, second] = [before, after].map(({ figures, methods }) => {
    const value = figures.get(quantity) ?? Number.NaN
    return { value, error: errorOf(quantity, value, methods.get(quantity)) }
  })
  if (first?.error === undefined || second?.error === undefined) return []
  const volume = volumeFromRise(quantity, [least, most], first.value, second.value, first.error + second.error)
  if (isFailure(volume)) return []
  return [{ quantity, before, after, additions: between, low: volume[0], high: volume[1] }]
}

/** Null where it cannot be said what the addition did to the reading. */
function massOf(quantity: RisesByMass, addition: Addition): readonly [number, number] | null {
  const { product, amount, unit } = addition
  if (product === 'water' || unit === 'm³') return null
  const id = PRODUCT_IDS.find((one): one is ProductId => one === product)
  if (id === undefined) return [0, 0]
  const strength = addition.strength ?? (PURE.has(id) ? 100 : undefined)
  const basis = STRENGTH_BASES.find((one) => one === (addition.basis ?? 'mass_percent'))
  if (strength === undefined || basis === undefined) return bringsNone(quantity, id) ? [0, 0] : null
  const mass = massAsRead(quantity, id, amount, unit, strength, basis)
  return isFailure(mass) ? null : mass
}

function bringsNone(quantity: RisesByMass, id: ProductId): boolean {
  const one = massAsRead(quantity, id, 1, 'kg', 10, 'mass_percent')
  return !isFailure(one) && one[1] === 0
}

function daysOf(additions: readonly Addition[]): ReadonlyMap<string, readonly Addition[]> {
  const days = new Map<string, Addition[]>()
  for (const addition of additions) {
    const day = dayOf(addition.date)
    const others = days.get(day)
    if (others) others.push(addition)
    else days.set(day, [addition])
  }
  return days
}

/** So many days from the day of a date, as dates are written. */
function daysFrom(date: string, count: number): readonly string[] {
  const start = Date.parse(`${dayOf(date)}T00:00Z`)
  return Array.from({ length: count }, (_, i) => new Date(start + i * 86_400_000).toISOString().slice(0, 10))
}
