/** What two readings say of each other: a sentence beside the one that should be looked at again. */
export interface DeskCheck {
  /** the quantity beside which it stands */
  readonly beside: string
  /** `page.desk.check.<key>` */
  readonly key: string
  /** the quantities that its sentence speaks of */
  readonly of: readonly string[]
  /** Enter stays in the field until it is kept: a figure so far off has another unit, or stands in another's place */
  readonly asks?: true
}

/** Chlorine leaves a bottle that is older, hours. Common practice, no source. */
const OLD = 2
/** The dyes of the pH and alkalinity tests err above it, mg/L (trade press). */
const DYES_ERR = 10
/** Less salt than fill water brings is hardly a reading where a cell lives on it, mg/L: 2.7 is g/L. None at all is a new pool. */
const HARDLY_SALT = 100
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
  return [...found, ...cellChecks(value)]
}

function cellChecks(value: (quantity: string) => number | undefined): readonly DeskCheck[] {
  const found: DeskCheck[] = []
  const [low, high] = [value('cell_salt_low'), value('cell_salt_high')]
  const salt = value('salt')
  const hasCell = low !== undefined || high !== undefined || value('cell_output') !== undefined
  if (low !== undefined && high !== undefined && low >= high)
    found.push({ beside: 'cell_salt_high', key: 'window_turned', of: ['cell_salt_low', 'cell_salt_high'], asks: true })
  if (hasCell && salt !== undefined && salt > 0 && salt < HARDLY_SALT)
    found.push({ beside: 'salt', key: 'hardly_salt', of: ['salt'], asks: true })
  return found
}
