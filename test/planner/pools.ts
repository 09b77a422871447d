import fc from 'fast-check'
import type { Values } from './bench'

/** A reading to its last digit, as a kit or a person gives it. */
const within = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((hundredths) => hundredths / 100)
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 6 })

/** Invented pools: readings anywhere that a test kit may give, targets that a pool may have, products by the label. */
export const pools: fc.Arbitrary<Values> = fc
  .record({
    volume: within(0.8, 400),
    spread: fc.constantFrom(0, 0.02, 0.1, 0.3),
    ph: maybe(within(6.6, 8.6)),
    temperature: within(5, 36),
    free_chlorine: maybe(within(0, 14)),
    combined: maybe(within(0, 1.5)),
    total_alkalinity: maybe(within(40, 250)),
    calcium_hardness: maybe(within(40, 600)),
    cyanuric_acid: maybe(within(0, 180)),
    salt: maybe(within(0, 6000)),
    borate: maybe(within(0, 60)),
    chlorine_demand: maybe(within(0.3, 5)),
    shell: fc.constantFrom('vinyl', 'fibreglass', 'painted', 'plaster', 'tile'),
    shell_age: maybe(within(1, 4000)),
    setting: fc.constantFrom('indoor', 'outdoor'),
    pump_flow: maybe(within(2, 40)),
    target_ph: maybe(within(7.2, 7.7)),
    target_total_alkalinity: maybe(within(60, 120)),
    target_free_chlorine: maybe(within(1, 5)),
    target_calcium_hardness: maybe(within(150, 350)),
    target_cyanuric_acid: maybe(within(20, 60)),
    target_salt: maybe(within(2900, 3300)),
    bag_mass: maybe(fc.constantFrom(10, 18.14, 25)),
    copper: maybe(within(0, 0.5)),
    chlorine_product: fc.constantFrom('sodium_hypochlorite', 'calcium_hypochlorite', 'dichlor'),
    fill: maybe(fc.constant(true)),
  })
  .map(({ spread, combined, fill, chlorine_product, ...given }) => ({
    ...given,
    volume_low: given.volume * (1 - spread),
    volume_high: given.volume * (1 + spread),
    total_chlorine:
      given.free_chlorine === undefined || combined === undefined ? undefined : given.free_chlorine + combined,
    water_body: 'pool',
    use: 'private',
    sanitizer: 'chlorine',
    cell_salt_low: 2700,
    cell_salt_high: 3400,
    acid_product: 'hydrochloric_acid',
    acid_strength: 31.45,
    acid_strength_basis: 'mass_percent',
    chlorine_product,
    ...LABELS[chlorine_product],
    calcium_product: 'calcium_chloride',
    calcium_strength: 77,
    calcium_strength_basis: 'mass_percent',
    ...(fill ? FILL : {}),
  }))

const LABELS: Readonly<Record<string, Values>> = {
  sodium_hypochlorite: { chlorine_strength: 12.5, chlorine_strength_basis: 'trade_percent' },
  calcium_hypochlorite: { chlorine_strength: 65, chlorine_strength_basis: 'available_mass_percent' },
  dichlor: { chlorine_strength: 55, chlorine_strength_basis: 'available_mass_percent' },
}
const FILL: Values = {
  fill_ph: 7.7,
  fill_temperature: 14,
  fill_total_alkalinity: 90,
  fill_calcium_hardness: 110,
  fill_salt: 60,
  fill_cyanuric_acid: 0,
}
