import { functions } from './functions'
import { headless } from './headless'
import { notices } from './notices'
import { page } from './page'
import { problems } from './problems'
import { problemsFunctions } from './problems-functions'
import { problemsIntake } from './problems-intake'
import { problemsNotebook } from './problems-notebook'
import { problemsUnits } from './problems-units'
import { problemsWorksheet } from './problems-worksheet'
import { quantitiesPool } from './quantities-pool'
import { quantitiesSample } from './quantities-sample'
import { quantitiesSaturation } from './quantities-saturation'
import { units } from './units'

/** Every sentence, label and message in English. Another language is one more folder with the same keys. */
export const en = {
  ...headless,
  ...notices,
  ...page,
  ...problems,
  ...problemsFunctions,
  ...problemsIntake,
  ...problemsNotebook,
  ...problemsUnits,
  ...problemsWorksheet,
  ...quantitiesPool,
  ...quantitiesSample,
  ...quantitiesSaturation,
  ...functions,
  ...units,
} as const
