/** What two readings say of each other: a sentence beside the one that should be looked at again. */
export interface DeskCheck {
  /** the quantity beside which it stands */
  readonly beside: string
  /** `page.desk.check.<key>` */
  readonly key: string
  /** the quantities that its sentence speaks of */
  readonly of: readonly string[]
}

/** Chlorine leaves a bottle that is older, hours. Common practice, no source. */
const OLD = 2
/** The dyes of the pH and alkalinity tests err above it, mg/L (trade press). */
const DYES_ERR = 10
/** So far apart bottle and pool are not one water, °C. Common practice, no source. */
const WARMED = 5

/**
 * Readings held against each other. A test's own error makes total chlorine read a little under free, so that is doubted only
 * where it is more than 0.2 mg/L (one drop of a titration in 25 mL, from memory).
 *
 * @param value canonical, undefined where it was not taken or is a limit
 */
export function deskChecks(value: (quantity: string) => number | undefined): readonly DeskCheck[] {
  const found: DeskCheck[] = []
  const check = (beside: string, key: string, ...quantities: readonly string[]) => {
    found.push({ beside, key, of: quantities })
  }
  const free = value('free_chlorine')
  const total = value('total_chlorine')
  const calcium = value('calcium_hardness')
  const hardness = value('total_hardness')
  const age = value('sample_age')
  const pool = value('temperature')
  const bottle = value('bottle_temperature')
  if (free !== undefined && total !== undefined && total < free - 0.2 - 1e-9)
    check('total_chlorine', 'total_below_free', 'total_chlorine', 'free_chlorine')
  if (free !== undefined && free > DYES_ERR) check('ph', 'dyes_err', 'free_chlorine')
  if (calcium !== undefined && hardness !== undefined && calcium > hardness)
    check('total_hardness', 'calcium_over_total', 'calcium_hardness', 'total_hardness')
  if (calcium === undefined && hardness !== undefined) check('total_hardness', 'hardness_alone', 'total_hardness')
  if (age !== undefined && age > OLD) check('sample_age', 'old', 'sample_age')
  if (bottle !== undefined && pool === undefined) check('temperature', 'bottle_alone')
  if (bottle !== undefined && pool !== undefined && Math.abs(bottle - pool) > WARMED)
    check('bottle_temperature', 'warmed', 'temperature', 'bottle_temperature')
  return found
}
